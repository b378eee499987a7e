namespace Plumbmark.Engine.Linkage;

/// <summary>The loose parts of one front corner: two arms, the upright with its lever, and the track rod. Not where the frame holds them; that is <see cref="CornerFrame"/>.</summary>
public sealed record CornerParts
{
    /// <summary>The upper arm.</summary>
    public required ArmShape Upper { get; init; }

    /// <summary>The lower arm.</summary>
    public required ArmShape Lower { get; init; }

    /// <summary>The upright, its steering lever and the wheel's axis.</summary>
    public required UprightShape Upright { get; init; }

    /// <summary>The track rod between its joints' centres, metres.</summary>
    public required double TrackRodMetres { get; init; }

    /// <summary>Which of the two ways the arms can meet: +1 or -1, the sign of the upper joint's turn about the upper pivot line from the lower joint.</summary>
    public required int UpperBranch { get; init; }

    /// <summary>Which side of the track rod's line the lever lies: +1 or -1.</summary>
    public required int LeverBranch { get; init; }

    /// <summary>How far the lower joint lies above the wheel centre as drawn, metres; only a first guess for the solution uses it.</summary>
    public required double LowerJointAboveWheelMetres { get; init; }

    /// <summary>The parts that make up a drawing.</summary>
    public static CornerParts Of(CornerPoints drawn)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        var upper = ArmShape.Between(drawn.UpperMake, drawn.UpperFront, drawn.UpperRear, drawn.UpperJoint);
        var lower = ArmShape.Between(drawn.LowerMake, drawn.LowerFront, drawn.LowerRear, drawn.LowerJoint);
        var upperPath = ArmPath.Of(upper, drawn.UpperFront, drawn.UpperRear);
        var pin = (drawn.LowerFront - drawn.LowerRear).Direction;
        var span = Vector3.Distance(drawn.UpperJoint, drawn.LowerJoint);
        var (k, _) = SteeringAxis.Of((drawn.UpperJoint - drawn.LowerJoint).Direction, pin, drawn.LowerEnd.OffsetMetres / span);
        var lever = Vector3.Across(drawn.TrackRodOuter - drawn.UpperJoint, k);
        var rod = Vector3.Across(drawn.TrackRodInner - drawn.UpperJoint, k);
        return new()
        {
            Upper = upper,
            Lower = lower,
            Upright = UprightShape.Between(drawn),
            TrackRodMetres = Vector3.Distance(drawn.TrackRodInner, drawn.TrackRodOuter),
            UpperBranch = SignOf(
                Vector3.Dot(upperPath.Axis, Vector3.Cross(drawn.LowerJoint - upperPath.Centre, drawn.UpperJoint - upperPath.Centre))
            ),
            LeverBranch = SignOf(Vector3.Dot(k, Vector3.Cross(rod, lever))),
            LowerJointAboveWheelMetres = drawn.LowerJoint.Z - drawn.WheelCentre.Z,
        };
    }

    private static int SignOf(double value) => value < 0 ? -1 : 1;
}
