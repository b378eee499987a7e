namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>One way to bring a point to the floor that the plumb line does not reach.</summary>
/// <param name="Way">offset, midpoint, bar, trammel or move-stand; the first three as the car file names them.</param>
/// <param name="Asks">Exactly the numbers it needs, each in words.</param>
/// <param name="UMetres">Standard uncertainty of the point in plan, each axis, that it leaves.</param>
/// <param name="PlainUMetres">The same for a plain drop.</param>
/// <param name="Sentence">What to do and what it costs.</param>
public sealed record IndirectProposal(string Way, IReadOnlyList<string> Asks, double UMetres, double PlainUMetres, string Sentence);
