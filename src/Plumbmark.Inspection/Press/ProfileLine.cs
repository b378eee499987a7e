namespace Plumbmark.Inspection.Press;

/// <summary>Readings along one line of a part: gaps under a straightedge or heights above a table.</summary>
/// <param name="Name">Which line: "top flange", "outer edge".</param>
/// <param name="Plane">Whether the line shows the bend that the ram works on, or a bend across it.</param>
/// <param name="Edge">What the readings are measured from.</param>
/// <param name="Gaps">The readings, in any order.</param>
public sealed record ProfileLine(string Name, BendPlane Plane, MeasuredFrom Edge, IReadOnlyList<ProfileGap> Gaps);
