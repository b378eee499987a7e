namespace Plumbmark.Inspection.Floor;

/// <summary>What a deviation is counted from.</summary>
public enum DeviationFrom
{
    /// <summary>The book's figure for the point.</summary>
    Nominal,

    /// <summary>The mean of a pair mirrored about the centre line: half of each difference is given to each side.</summary>
    Symmetry,
}
