namespace Plumbmark.Inspection.Road;

/// <summary>How much one part or place contributes to a figure's difference from its drawing. Radians or metres, as the figure.</summary>
/// <param name="What">The part or place; null for a rear pick-up.</param>
/// <param name="RearPlace">For the rear: 0 a spring's eye or an arm's inner pivot, 1 an arm's outer pivot; null for the front.</param>
/// <param name="Side">On which side.</param>
/// <param name="Amount">The contribution.</param>
/// <param name="U">Its standard uncertainty.</param>
public sealed record Contribution(CornerPart? What, int? RearPlace, Side Side, double Amount, double U);
