namespace Plumbmark.Engine.Linkage;

/// <summary>
/// Both front corners and the steering between them. Heights and steering go in, both wheels come out. Each corner is in its own-side axes (the right one mirrored); the gear is in the
/// car's axes, and a positive steer angle is to the left (ISO 8855).
/// </summary>
/// <param name="Left">The left corner, own-side axes (which are the car's).</param>
/// <param name="Right">The right corner, own-side axes (y to the car's right).</param>
/// <param name="Gear">The steering gear, car axes.</param>
public sealed record FrontAxle(Corner Left, Corner Right, SteeringGear Gear)
{
    // A steering angle is asked to a millionth of a degree at most; 1e-12 rad leaves room.
    private const double SteerToleranceRadians = 1e-12;
    private const int MostSteps = 60;

    /// <summary>An axle whose right side is the mirror image of its left, on a rack.</summary>
    public static FrontAxle OnRack(CornerPoints left)
    {
        ArgumentNullException.ThrowIfNull(left);
        var corner = Corner.Of(left);
        return new(corner, Corner.Of(left), SteeringGear.Rack.Between(left.TrackRodInner, left.TrackRodInner.Mirrored));
    }

    /// <summary>Both wheels at their heights for one steering input.</summary>
    /// <param name="leftHeightMetres">z of the left wheel centre, metres.</param>
    /// <param name="rightHeightMetres">z of the right wheel centre, metres.</param>
    /// <param name="input">The gear's input (see <see cref="SteeringGear.At"/>).</param>
    /// <param name="left">The left position, own-side axes.</param>
    /// <param name="right">The right position, own-side axes.</param>
    public Reach Solve(double leftHeightMetres, double rightHeightMetres, double input, out CornerState left, out CornerState right)
    {
        var joints = Gear.At(input);
        (left, right) = (default, default);
        if (!joints.Reach.IsReached)
        {
            return joints.Reach;
        }

        var reach = Left.Solve(leftHeightMetres, joints.Left, out left);
        return reach.IsReached ? Right.Solve(rightHeightMetres, joints.Right.Mirrored, out right) : reach;
    }

    /// <summary>The steering input that turns one wheel to an angle, by the secant method.</summary>
    /// <param name="leftHeightMetres">z of the left wheel centre, metres.</param>
    /// <param name="rightHeightMetres">z of the right wheel centre, metres.</param>
    /// <param name="steerRadians">The wheel's heading, positive to the left.</param>
    /// <param name="ofLeftWheel">Whether the left wheel is meant; otherwise the right one.</param>
    /// <param name="input">The input; not a number when the wheel cannot turn so far.</param>
    public Reach InputFor(double leftHeightMetres, double rightHeightMetres, double steerRadians, bool ofLeftWheel, out double input)
    {
        // Only the wheel that is asked for is solved on the way: it is half the work, and the other one does not change the answer.
        double Miss(double at, out Reach reach)
        {
            var joints = Gear.At(at);
            if (!joints.Reach.IsReached)
            {
                reach = joints.Reach;
                return double.NaN;
            }

            CornerState state;
            reach = ofLeftWheel
                ? Left.Solve(leftHeightMetres, joints.Left, out state)
                : Right.Solve(rightHeightMetres, joints.Right.Mirrored, out state);
            return ((ofLeftWheel ? -1 : 1) * WheelAngles.Of(state).ToeInRadians) - steerRadians;
        }

        var (a, b) = (0.0, Gear is SteeringGear.Rack ? 1e-3 : 1e-2);
        var missA = Miss(a, out var atStart);
        if (!atStart.IsReached)
        {
            input = double.NaN;
            return atStart;
        }

        var last = default(Reach);
        for (var step = 0; step < MostSteps; step++)
        {
            var missB = Miss(b, out var reach);
            if (!reach.IsReached)
            {
                (last, b) = (reach, 0.5 * (a + b));
                continue;
            }

            if (Math.Abs(missB) <= SteerToleranceRadians)
            {
                input = b;
                return default;
            }

            (a, b, missA) = (b, b - (missB * (b - a) / (missB - missA)), missB);
        }

        input = double.NaN;
        return last.IsReached ? new(ReachLimit.TrackRod, double.NaN) : last;
    }
}
