namespace Plumbmark.Inspection.Press;

/// <summary>What the readings along a line are measured from.</summary>
public enum MeasuredFrom
{
    /// <summary>A straightedge across the hollow side: the gap is largest at the bend.</summary>
    Hollow,

    /// <summary>A straightedge on the crown side: it rocks on the bend, and the gaps are at the ends.</summary>
    Crown,

    /// <summary>A table, with the crown up: heights.</summary>
    Table,
}
