namespace Plumbmark.Inspection.Press;

/// <summary>Where the travel of a bite is read.</summary>
public enum TravelPlace
{
    /// <summary>By a gauge on the part: only the part's own give is in it.</summary>
    Part,

    /// <summary>At the ram: saddles, blocks and frame give as well.</summary>
    Ram,
}
