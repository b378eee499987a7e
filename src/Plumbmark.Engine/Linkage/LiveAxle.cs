namespace Plumbmark.Engine.Linkage;

/// <summary>
/// A live axle on two leaf springs: each spring's fixed eye places its end of the axle fore and aft, the two springs together place it sideways. The swinging shackle at the other
/// end places nothing. Car axes, metres.
/// </summary>
/// <remarks>Assumes springs stiff sideways and both ends of the axle at ride height; the axle is straight unless the toe of its wheels says otherwise.</remarks>
public sealed record LiveAxle
{
    /// <summary>The left spring's fixed eye on the frame.</summary>
    public required Vector3 LeftEye { get; init; }

    /// <summary>The right spring's fixed eye on the frame.</summary>
    public required Vector3 RightEye { get; init; }

    /// <summary>How far the axle's centre line lies from the left fixed eye along the car at ride height, metres; positive behind the eye.</summary>
    public required double LeftEyeToAxleMetres { get; init; }

    /// <summary>The same on the right.</summary>
    public required double RightEyeToAxleMetres { get; init; }

    /// <summary>How far above the fixed eyes the axle's centre line lies at ride height, metres.</summary>
    public double AxleAboveEyeMetres { get; init; }

    /// <summary>Track at the wheel centres, metres.</summary>
    public required double TrackMetres { get; init; }

    /// <summary>Toe-in of the left wheel to the axle itself, radians; not zero when the casing is bent.</summary>
    public double LeftToeInRadians { get; init; }

    /// <summary>Toe-in of the right wheel to the axle itself, radians.</summary>
    public double RightToeInRadians { get; init; }

    /// <summary>Camber of both wheels, radians.</summary>
    public double CamberRadians { get; init; }

    /// <summary>Both rear wheels at ride height.</summary>
    public (WheelStance Left, WheelStance Right) Stand()
    {
        var left = LeftEye + new Vector3(-LeftEyeToAxleMetres, 0, AxleAboveEyeMetres);
        var right = RightEye + new Vector3(-RightEyeToAxleMetres, 0, AxleAboveEyeMetres);
        var (middle, along) = (0.5 * (left + right), (left - right).Direction);
        // An axle whose left end stands ahead points its wheels to the right: more toe-in on the left, less on the right.
        var skew = Math.Atan2(along.X, along.Y);
        return (
            new(middle + (0.5 * TrackMetres * along), CamberRadians, skew + LeftToeInRadians),
            new(middle - (0.5 * TrackMetres * along), CamberRadians, RightToeInRadians - skew)
        );
    }
}
