namespace Plumbmark.Engine.Adjustment;

/// <summary>What held the network in place.</summary>
/// <remarks>
/// Each free motion is removed by an inner constraint: the points are placed on the sketch as well as a rigid motion can (no scale), and
/// the covariance has the smallest trace over the coordinates of all determined points. Distances, angles, height differences and every
/// other quantity that the readings can tell do not depend on that choice.
/// </remarks>
/// <param name="FreeMotions">The motions that no reading and no fixed point settles; empty when the datum is complete.</param>
/// <param name="MirrorIsAssumed">
/// The readings fit the mirror image just as well, and neither sketch nor signed reading tells which it is.
/// </param>
public sealed record DatumReport(IReadOnlyList<DatumMotion> FreeMotions, bool MirrorIsAssumed);
