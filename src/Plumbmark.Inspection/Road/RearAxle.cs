using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// The rear suspension ready to compute with: complete places in own-side axes for each side, metres. Its two pick-ups a side are a spring's eye (and nothing), or an arm's inner and
/// outer pivot.
/// </summary>
internal abstract record RearAxle
{
    private RearAxle() { }

    /// <summary>Both rear wheels, in the car's axes.</summary>
    /// <param name="theta">Everything found minus drawn (<see cref="RoadParameters"/>).</param>
    public abstract (Reach Reach, WheelStance Left, WheelStance Right) Stand(ReadOnlySpan<double> theta);

    private static Vector3 Moved(Vector3 drawn, ReadOnlySpan<double> theta, Side side, int place)
    {
        var at = RoadParameters.RearStart(side) + (3 * place);
        return drawn + new Vector3(theta[at], theta[at + 1], theta[at + 2]);
    }

    internal sealed record Live(Vector3 LeftEye, Vector3 RightEye, double EyeToAxleMetres, double AxleAboveEyeMetres, double TrackMetres)
        : RearAxle
    {
        public override (Reach Reach, WheelStance Left, WheelStance Right) Stand(ReadOnlySpan<double> theta)
        {
            var (left, right) = new LiveAxle
            {
                LeftEye = Moved(LeftEye, theta, Side.Left, 0),
                RightEye = Moved(RightEye, theta, Side.Right, 0).Mirrored,
                LeftEyeToAxleMetres = EyeToAxleMetres,
                RightEyeToAxleMetres = EyeToAxleMetres,
                AxleAboveEyeMetres = AxleAboveEyeMetres,
                TrackMetres = TrackMetres,
            }.Stand();
            return (default, left, right);
        }
    }

    internal sealed record Trailing(
        (Vector3 Inner, Vector3 Outer) Left,
        (Vector3 Inner, Vector3 Outer) Right,
        Vector3 WheelCentre,
        Vector3 SpinAxis
    ) : RearAxle
    {
        public override (Reach Reach, WheelStance Left, WheelStance Right) Stand(ReadOnlySpan<double> theta)
        {
            var reach = Arm(Left, theta, Side.Left).Solve(WheelCentre.Z, out var left);
            var other = Arm(Right, theta, Side.Right).Solve(WheelCentre.Z, out var right);
            return (reach.IsReached ? other : reach, left, right with { Centre = right.Centre.Mirrored });
        }

        private TrailingArm Arm((Vector3 Inner, Vector3 Outer) drawn, ReadOnlySpan<double> theta, Side side) =>
            TrailingArm.Of(
                drawn.Inner,
                drawn.Outer,
                WheelCentre,
                SpinAxis,
                Moved(drawn.Inner, theta, side, 0),
                Moved(drawn.Outer, theta, side, 1)
            );
    }
}
