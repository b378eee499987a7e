using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>One front corner at ride height for a drawing: places in the car's axes, metres.</summary>
/// <param name="Side">The side.</param>
/// <param name="Drawn">As drawn.</param>
/// <param name="Found">As found; the same as drawn where nothing was found.</param>
/// <param name="LoadedRadiusMetres">Wheel centre to road; null when not told.</param>
public sealed record CornerSketch(Side Side, CornerSketch.Places Drawn, CornerSketch.Places Found, double? LoadedRadiusMetres)
{
    /// <summary>Every place of a corner.</summary>
    /// <param name="UpperFront">Front pivot of the upper arm.</param>
    /// <param name="UpperRear">Rear pivot of the upper arm.</param>
    /// <param name="LowerFront">Front pivot of the lower arm.</param>
    /// <param name="LowerRear">Rear pivot of the lower arm.</param>
    /// <param name="UpperJoint">Upper outer joint.</param>
    /// <param name="LowerJoint">Lower outer joint.</param>
    /// <param name="TrackRodInner">Inner joint of the track rod.</param>
    /// <param name="TrackRodOuter">Joint on the lever.</param>
    /// <param name="WheelCentre">Wheel centre.</param>
    /// <param name="SpinAxis">The wheel's axis, unit, outboard.</param>
    public sealed record Places(
        Vector3 UpperFront,
        Vector3 UpperRear,
        Vector3 LowerFront,
        Vector3 LowerRear,
        Vector3 UpperJoint,
        Vector3 LowerJoint,
        Vector3 TrackRodInner,
        Vector3 TrackRodOuter,
        Vector3 WheelCentre,
        Vector3 SpinAxis
    );
}
