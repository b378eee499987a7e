namespace Plumbmark.Inspection.Press;

/// <summary>Something that must be answered before the press plans.</summary>
/// <param name="Topic">Which field of the car file answers it.</param>
/// <param name="Sentence">The question.</param>
public sealed record GateQuestion(string Topic, string Sentence);
