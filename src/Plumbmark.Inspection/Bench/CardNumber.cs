namespace Plumbmark.Inspection.Bench;

/// <summary>A number found on a part. Cast numbers often differ from catalogue numbers, so it is evidence of the type and not proof.</summary>
/// <param name="Text">The number as it stands there.</param>
/// <param name="How">How it got there.</param>
public sealed record CardNumber(string Text, NumberMark How = NumberMark.Unknown);
