namespace Plumbmark.Inspection.Floor.Round;

/// <summary>One line of a measuring round: what to measure, not yet what was measured.</summary>
/// <param name="Number">Its place in the round, from 1.</param>
/// <param name="Kind">How it is measured.</param>
/// <param name="From">Where a length or a rise starts; the point itself for a height or a drop.</param>
/// <param name="To">Where a length or a rise ends; null for a height or a drop.</param>
public sealed record RoundLine(int Number, RoundKind Kind, string From, string? To);
