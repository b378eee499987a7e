namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The places of one front corner as drawn, all at ride height with the steering straight ahead, in own-side axes: x forward, y outboard, z up, metres.
/// A left corner's own-side axes are the car's; a right corner is given by its mirror image (<see cref="Mirrored"/>).
/// </summary>
public sealed record CornerPoints
{
    /// <summary>Front pivot of the upper arm.</summary>
    public required Vector3 UpperFront { get; init; }

    /// <summary>Rear pivot of the upper arm.</summary>
    public required Vector3 UpperRear { get; init; }

    /// <summary>Front pivot of the lower arm.</summary>
    public required Vector3 LowerFront { get; init; }

    /// <summary>Rear pivot of the lower arm.</summary>
    public required Vector3 LowerRear { get; init; }

    /// <summary>Upper outer joint; always a ball joint, and always on the steering axis.</summary>
    public required Vector3 UpperJoint { get; init; }

    /// <summary>Lower outer joint: the ball joint's centre, or the middle of the trunnion's pin.</summary>
    public required Vector3 LowerJoint { get; init; }

    /// <summary>Inner joint of the track rod.</summary>
    public required Vector3 TrackRodInner { get; init; }

    /// <summary>Outer joint of the track rod, on the steering lever.</summary>
    public required Vector3 TrackRodOuter { get; init; }

    /// <summary>Wheel centre.</summary>
    public required Vector3 WheelCentre { get; init; }

    /// <summary>The wheel's axis, a unit direction pointing outboard.</summary>
    public required Vector3 SpinAxis { get; init; }

    /// <summary>Ball joint or trunnion at the lower end; <c>default</c> is a ball joint.</summary>
    public LowerEnd LowerEnd { get; init; }

    /// <summary>How the upper arm is made.</summary>
    public ArmMake UpperMake { get; init; }

    /// <summary>How the lower arm is made.</summary>
    public ArmMake LowerMake { get; init; }

    /// <summary>The corner of the other side of a car that is the same on both sides; own-side axes make the two identical only if they are drawn so.</summary>
    public CornerPoints Mirrored() =>
        this with
        {
            UpperFront = UpperFront.Mirrored,
            UpperRear = UpperRear.Mirrored,
            LowerFront = LowerFront.Mirrored,
            LowerRear = LowerRear.Mirrored,
            UpperJoint = UpperJoint.Mirrored,
            LowerJoint = LowerJoint.Mirrored,
            TrackRodInner = TrackRodInner.Mirrored,
            TrackRodOuter = TrackRodOuter.Mirrored,
            WheelCentre = WheelCentre.Mirrored,
            SpinAxis = SpinAxis.Mirrored,
        };

    /// <summary>The wheel axis of a wheel that stands with these angles, unit direction pointing outboard (own-side axes).</summary>
    /// <param name="camberRadians">Positive with the top outward.</param>
    /// <param name="toeInRadians">Positive with the front of the wheel nearer the car.</param>
    public static Vector3 SpinAxisOf(double camberRadians, double toeInRadians)
    {
        var (sinCamber, cosCamber) = Math.SinCos(camberRadians);
        var (sinToe, cosToe) = Math.SinCos(toeInRadians);
        return new(cosCamber * sinToe, cosCamber * cosToe, -sinCamber);
    }
}
