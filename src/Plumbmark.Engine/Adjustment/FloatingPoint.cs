namespace Plumbmark.Engine.Adjustment;

/// <summary>A point that can move while all readings stay as they are and the reference points stand still.</summary>
/// <param name="Point">The point's name.</param>
/// <param name="InPlan">Its place in plan is not determined, wholly or along one direction.</param>
/// <param name="InHeight">Its height is not determined.</param>
public sealed record FloatingPoint(string Point, bool InPlan, bool InHeight);
