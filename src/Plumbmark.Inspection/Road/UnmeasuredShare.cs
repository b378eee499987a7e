namespace Plumbmark.Inspection.Road;

/// <summary>Something the wheels depend on that nobody has measured: how unsure it leaves a figure.</summary>
/// <param name="What">The part or place; null for a rear pick-up.</param>
/// <param name="RearPlace">For the rear: 0 a spring's eye or an arm's inner pivot, 1 an arm's outer pivot; null for the front.</param>
/// <param name="Side">On which side.</param>
/// <param name="Figure">The figure it leaves most unsure, against that figure's limit.</param>
/// <param name="U">Its share of that figure's standard uncertainty, radians or metres.</param>
public sealed record UnmeasuredShare(CornerPart? What, int? RearPlace, Side Side, FigureKind Figure, double U);
