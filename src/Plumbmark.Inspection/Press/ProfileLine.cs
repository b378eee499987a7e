using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>Readings along one line of a part: gaps under a straightedge or heights above a table.</summary>
/// <param name="Name">Which line: "top flange", "outer edge".</param>
/// <param name="Plane">Whether the line shows the bend that the ram works on, or a bend across it.</param>
/// <param name="Edge">What the readings are measured from.</param>
/// <param name="Gaps">The readings, in any order.</param>
public sealed record ProfileLine(string Name, BendPlane Plane, MeasuredFrom Edge, IReadOnlyList<ProfileGap> Gaps);

/// <summary>One reading along a line.</summary>
/// <param name="At">Place along the part, from one end.</param>
/// <param name="Gap">Gap or height there.</param>
public sealed record ProfileGap(Length At, Length Gap);

/// <summary>The plane in which a line can show a bend.</summary>
public enum BendPlane
{
    /// <summary>In the direction of the ram.</summary>
    Ram,

    /// <summary>Across it.</summary>
    Side,
}

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
