namespace Plumbmark.Engine.Adjustment;

/// <summary>Two points that mirror each other across the centre line: a hint for start values, never an observation.</summary>
/// <param name="Left">The point on the car's own left (y positive).</param>
/// <param name="Right">Its partner on the right.</param>
public readonly record struct MirrorPair(string Left, string Right);
