namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>What a reading may have been meant to be: the same reading with another value, kind or other points.</summary>
/// <param name="Kind">The slip that turns the one into the other.</param>
/// <param name="Believed">The reading as it should have been entered; its name is that of the reading it stands for.</param>
/// <param name="Weight">How likely this meaning is beside others of its kind: 1, or less for a slip that does not suit the tool.</param>
public sealed record Alternative(BlunderKind Kind, Observation Believed, double Weight = 1);
