namespace Plumbmark.Inspection.Floor;

/// <summary>Points whose place the readings leave open.</summary>
/// <param name="Points">The points that float together.</param>
/// <param name="Sentence">What floats and which reading would tie it.</param>
public sealed record FloatingGroup(IReadOnlyList<string> Points, string Sentence);
