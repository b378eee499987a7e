namespace Plumbmark.Engine.Linkage;

/// <summary>
/// How a car stands on its four wheels: wheelbase of each side, tracks, set-back, thrust line and what of them shows as dog-tracking. Angles are positive to the left
/// (anticlockwise from above, ISO 8855); x along the frame's centre line.
/// </summary>
public sealed record CarStance
{
    private CarStance() { }

    /// <summary>Wheelbase of the left side, along the centre line, metres.</summary>
    public required double LeftWheelbaseMetres { get; init; }

    /// <summary>Wheelbase of the right side, along the centre line, metres.</summary>
    public required double RightWheelbaseMetres { get; init; }

    /// <summary>Track of the front wheels at their centres, square to the centre line, metres.</summary>
    public required double FrontTrackMetres { get; init; }

    /// <summary>Track of the rear wheels at their centres, metres.</summary>
    public required double RearTrackMetres { get; init; }

    /// <summary>
    /// The angle of the front wheel centres' line from square to the centre line, radians; positive when the left wheel stands ahead of the right (the right is set back).
    /// </summary>
    public required double FrontSetBackRadians { get; init; }

    /// <summary>The same for the rear wheel centres.</summary>
    public required double RearSetBackRadians { get; init; }

    /// <summary>The direction in which the rear wheels together roll, from the centre line, radians, positive to the left.</summary>
    public required double ThrustRadians { get; init; }

    /// <summary>How far left of the frame's centre line the middle between the front wheels lies, metres.</summary>
    public required double FrontOffsetMetres { get; init; }

    /// <summary>How far left of the frame's centre line the middle between the rear wheels lies, metres.</summary>
    public required double RearOffsetMetres { get; init; }

    /// <summary>
    /// Dog-tracking: rolling straight along the thrust line, how far left of the front pair's tracks the rear pair's run, metres, middles compared.
    /// </summary>
    public required double DogTrackMetres { get; init; }

    /// <summary>The stance of four wheels.</summary>
    public static CarStance Of(in WheelStance frontLeft, in WheelStance frontRight, in WheelStance rearLeft, in WheelStance rearRight)
    {
        // A wheel's heading is -toe-in on the left and +toe-in on the right; the thrust line halves the two rear ones.
        var thrust = 0.5 * (rearRight.ToeInRadians - rearLeft.ToeInRadians);
        var (front, rear) = (0.5 * (frontLeft.Centre + frontRight.Centre), 0.5 * (rearLeft.Centre + rearRight.Centre));
        var (sine, cosine) = Math.SinCos(thrust);
        var toRear = rear - front;
        return new()
        {
            LeftWheelbaseMetres = frontLeft.Centre.X - rearLeft.Centre.X,
            RightWheelbaseMetres = frontRight.Centre.X - rearRight.Centre.X,
            FrontTrackMetres = frontLeft.Centre.Y - frontRight.Centre.Y,
            RearTrackMetres = rearLeft.Centre.Y - rearRight.Centre.Y,
            FrontSetBackRadians = SetBack(frontLeft.Centre, frontRight.Centre),
            RearSetBackRadians = SetBack(rearLeft.Centre, rearRight.Centre),
            ThrustRadians = thrust,
            FrontOffsetMetres = front.Y,
            RearOffsetMetres = rear.Y,
            DogTrackMetres = (cosine * toRear.Y) - (sine * toRear.X),
        };
    }

    private static double SetBack(Vector3 left, Vector3 right) => Math.Atan2(left.X - right.X, left.Y - right.Y);
}
