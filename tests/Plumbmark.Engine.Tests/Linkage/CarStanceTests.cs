using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

public class CarStanceTests
{
    private const double Inch = 0.0254;

    [Fact]
    public void LiveAxle_OneEyeAnEighthForward_PointsTheThrustLineAway()
    {
        // "Spring hanger 1/8 in fore/aft over 40 in: thrust 0.18 deg, front crabs 0.28 in per wheelbase" (common practice, own computation: wheelbase 88 in).
        var (left, right) = Axle(leftEyeForward: 0.125 * Inch).Stand();
        var stance = CarStance.Of(At(88, 24), At(88, -24), left, right);
        Assert.Equal(-0.18, Degrees(stance.ThrustRadians), 0.005);
        Assert.Equal(-0.28, stance.DogTrackMetres / Inch, 0.0055); // 0.2748 is printed 0.28
        Assert.Equal(0.18, Degrees(stance.RearSetBackRadians), 0.005);
        // The axle line leans, so the shorter side of the car is the left one.
        Assert.Equal(-0.125 * 48 / 40, (stance.LeftWheelbaseMetres - stance.RightWheelbaseMetres) / Inch, 1e-3);
    }

    [Fact]
    public void LiveAxle_Square_DrivesStraight()
    {
        var (left, right) = Axle(0).Stand();
        var stance = CarStance.Of(At(88, 24), At(88, -24), left, right);
        Assert.Equal(0, stance.ThrustRadians, 1e-15);
        Assert.Equal(0, stance.DogTrackMetres, 1e-15);
        Assert.Equal(88 * Inch, stance.LeftWheelbaseMetres, 1e-12);
        Assert.Equal(48 * Inch, stance.RearTrackMetres, 1e-12);
    }

    [Fact]
    public void SetBack_AQuarterInchAtOneFrontWheel_IsThreeTenthsOfADegree()
    {
        // "Wheelbase L/R 1/4 in at one front wheel: ~0.3 deg set-back" on a 48 in track (common practice, own computation).
        var stance = CarStance.Of(At(88, 24), At(87.75, -24), At(0, 24), At(0, -24));
        Assert.Equal(0.3, Degrees(stance.FrontSetBackRadians), 0.005);
    }

    [Fact]
    public void Of_TheMirroredCar_IsTheMirroredStance()
    {
        WheelStance[] wheels =
        [
            At(88, 24),
            At(87.8, -24.2),
            new(new(0, 24.5 * Inch, 0), 0, 0.004),
            new(new(0.003, -24 * Inch, 0), 0, -0.001),
        ];
        var stance = CarStance.Of(wheels[0], wheels[1], wheels[2], wheels[3]);
        var mirrored = CarStance.Of(Mirror(wheels[1]), Mirror(wheels[0]), Mirror(wheels[3]), Mirror(wheels[2]));
        Assert.Equal(stance.ThrustRadians, -mirrored.ThrustRadians, 1e-15);
        Assert.Equal(stance.FrontSetBackRadians, -mirrored.FrontSetBackRadians, 1e-15);
        Assert.Equal(stance.DogTrackMetres, -mirrored.DogTrackMetres, 1e-15);
        Assert.Equal(stance.RearOffsetMetres, -mirrored.RearOffsetMetres, 1e-15);
        Assert.Equal(stance.LeftWheelbaseMetres, mirrored.RightWheelbaseMetres, 1e-15);
    }

    [Fact]
    public void TrailingArm_AtTheDrawnHeight_IsTheDrawing()
    {
        var stance = Stand(Arm(default, default), 0.3);
        Assert.Equal(0, (stance.Centre - s_wheel).Norm, 1e-12);
        Assert.Equal(-1, Degrees(stance.CamberRadians), 1e-10);
        Assert.Equal(0.2, Degrees(stance.ToeInRadians), 1e-10);
    }

    [Fact]
    public void TrailingArm_RisingOnASweptPivotLine_LeansInAndKeepsItsRadius()
    {
        var arm = Arm(default, default);
        var (low, high) = (Stand(arm, 0.25), Stand(arm, 0.38));
        Assert.True(high.CamberRadians < low.CamberRadians);
        Assert.Equal(Vector3.Distance(s_inner, s_wheel), Vector3.Distance(s_inner, high.Centre), 1e-12);
        Assert.Equal(Vector3.Distance(s_outer, s_wheel), Vector3.Distance(s_outer, low.Centre), 1e-12);
    }

    [Fact]
    public void TrailingArm_OuterPivotForward_TurnsTheWheelAsThePivotLine()
    {
        // Turning the pivot line by a small angle about the vertical turns a wheel at the pivots' own height by the same angle, to first order.
        var drawnWheel = s_wheel with
        {
            Z = s_inner.Z,
        };
        var moved = TrailingArm.Of(
            s_inner,
            s_outer,
            drawnWheel,
            CornerPoints.SpinAxisOf(0, 0),
            s_inner,
            s_outer + new Vector3(0.001, 0, 0)
        );
        var stance = Stand(moved, s_inner.Z);
        var line = s_outer - s_inner;
        var turn = (0.001 * line.Y) / ((line.X * line.X) + (line.Y * line.Y));
        Assert.Equal(turn, stance.ToeInRadians, 2e-5);
        Assert.Equal(0, stance.CamberRadians, 2e-5);
    }

    [Fact]
    public void TrailingArm_HigherThanItsLength_SaysSo()
    {
        var reach = Arm(default, default).Solve(2, out _);
        Assert.Equal(ReachLimit.LowerArm, reach.Limit);
        Assert.True(reach.ShortByMetres > 1);
    }

    private static readonly Vector3 s_inner = new(0.28, 0.15, 0.28);
    private static readonly Vector3 s_outer = new(0.38, 0.45, 0.28);
    private static readonly Vector3 s_wheel = new(0, 0.6, 0.3);

    private static TrailingArm Arm(Vector3 innerBy, Vector3 outerBy) =>
        TrailingArm.Of(s_inner, s_outer, s_wheel, CornerPoints.SpinAxisOf(Radians(-1), Radians(0.2)), s_inner + innerBy, s_outer + outerBy);

    private static WheelStance Stand(TrailingArm arm, double height)
    {
        Assert.True(arm.Solve(height, out var stance).IsReached);
        return stance;
    }

    private static WheelStance At(double xInches, double yInches) => new(new(xInches * Inch, yInches * Inch, 0), 0, 0);

    private static WheelStance Mirror(WheelStance wheel) => wheel with { Centre = wheel.Centre.Mirrored };

    private static LiveAxle Axle(double leftEyeForward) =>
        new()
        {
            LeftEye = new((20 * Inch) + leftEyeForward, 20 * Inch, 0),
            RightEye = new(20 * Inch, -20 * Inch, 0),
            LeftEyeToAxleMetres = 20 * Inch,
            RightEyeToAxleMetres = 20 * Inch,
            TrackMetres = 48 * Inch,
        };
}
