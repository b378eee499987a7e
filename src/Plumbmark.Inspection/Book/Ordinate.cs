namespace Plumbmark.Inspection.Book;

/// <summary>What a figure for a single point is counted from.</summary>
public enum Ordinate
{
    /// <summary>How far behind the page's front datum; negative ahead of it.</summary>
    Station,

    /// <summary>How far from the centre line, on the point's own side.</summary>
    Side,

    /// <summary>Above the page's height datum; negative below it.</summary>
    Height,
}
