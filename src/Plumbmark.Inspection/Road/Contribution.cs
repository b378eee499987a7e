namespace Plumbmark.Inspection.Road;

/// <summary>How much one part or place contributes to a figure's difference from its drawing. Radians or metres, as the figure.</summary>
/// <param name="What">The part or place.</param>
/// <param name="Side">On which side.</param>
/// <param name="Amount">The contribution.</param>
/// <param name="U">Its standard uncertainty.</param>
public sealed record Contribution(CornerPart What, Side Side, double Amount, double U);
