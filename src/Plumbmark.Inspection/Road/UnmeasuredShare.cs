namespace Plumbmark.Inspection.Road;

/// <summary>Something the wheels depend on that nobody has measured: how unsure it leaves a figure.</summary>
/// <param name="What">The part or place.</param>
/// <param name="Side">On which side.</param>
/// <param name="Figure">The figure it leaves most unsure, against that figure's limit.</param>
/// <param name="U">Its share of that figure's standard uncertainty, radians or metres.</param>
public sealed record UnmeasuredShare(CornerPart What, Side Side, FigureKind Figure, double U);
