using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

public class FrontAxleTests
{
    [Fact]
    public void Solve_SteeringMirrored_GivesTheMirroredWheels()
    {
        var axle = FrontAxle.OnRack(Points);
        Assert.True(axle.Solve(0.33, 0.29, 0.02, out var left, out var right).IsReached);
        Assert.True(axle.Solve(0.29, 0.33, -0.02, out var otherLeft, out var otherRight).IsReached);
        Assert.Equal(0, (left.WheelCentre - otherRight.WheelCentre).Norm, 1e-12);
        Assert.Equal(0, (right.SpinAxis - otherLeft.SpinAxis).Norm, 1e-12);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(-20)]
    [InlineData(3)]
    public void InputFor_AnAngle_TurnsThatWheelToIt(double degrees)
    {
        var axle = FrontAxle.OnRack(Points);
        Assert.True(axle.InputFor(0.31, 0.31, Radians(degrees), ofLeftWheel: true, out var input).IsReached);
        Assert.True(axle.Solve(0.31, 0.31, input, out var left, out _).IsReached);
        Assert.Equal(degrees, -Degrees(WheelAngles.Of(left).ToeInRadians), 1e-9);
    }

    [Fact]
    public void InputFor_MoreThanTheLeverAllows_SaysTheTrackRod()
    {
        var reach = FrontAxle.OnRack(Points).InputFor(0.31, 0.31, Radians(120), ofLeftWheel: true, out var input);
        Assert.Equal(ReachLimit.TrackRod, reach.Limit);
        Assert.True(double.IsNaN(input));
    }

    [Fact]
    public void ToeOutOnTurns_OfAPlaneTrapezium_IsTheTextbooks()
    {
        // A flat steering trapezium, uprights vertical: track 1.2, levers 0.15 leaning inward by 18 degrees behind the axle, one straight rod cut by a rack in line with the joints.
        // Ackermann's perfect angles for a wheelbase L: cot outer - cot inner = track / L; a trapezium only comes near, so the solution itself is the check: the two levers' ends
        // and the rack's ends must keep their distances, here solved in the plane by hand with complex numbers' worth of trigonometry.
        var axle = FrontAxle.OnRack(Trapezium());
        Assert.True(axle.InputFor(0.3, 0.3, Radians(-20), ofLeftWheel: false, out var input).IsReached);
        Assert.True(axle.Solve(0.3, 0.3, input, out var left, out var right).IsReached);
        var (inner, outer) = (-Degrees(WheelAngles.Of(right).ToeInRadians), -Degrees(WheelAngles.Of(left).ToeInRadians));
        Assert.Equal(20, inner, 1e-9);
        Assert.Equal(PlaneOuter(20), outer, 1e-8);
        Assert.InRange(-outer, 15, 20);
    }

    [Theory]
    [InlineData(SteeringCarrier.DropArm, SteeringCarrier.Idler)]
    [InlineData(SteeringCarrier.CentreLink, SteeringCarrier.CentreLink)]
    public void Box_WithLikeParallelArms_CarriesTheLinkWithoutTurningIt(SteeringCarrier left, SteeringCarrier right)
    {
        var gear = BoxGear(0.16, left, right);
        var joints = gear.At(0.4);
        Assert.True(joints.Reach.IsReached);
        // A parallelogram: everything on the link moves as the drop arm's end does.
        var move = gear.DropArm.Turned(gear.DropArm.Joint, 0.4) - gear.DropArm.Joint;
        var expected = left == SteeringCarrier.CentreLink ? gear.LeftInner + move : gear.DropArm.Turned(gear.LeftInner, 0.4);
        Assert.Equal(0, (joints.Left - expected).Norm, 1e-12);
        var expectedRight = right == SteeringCarrier.CentreLink ? gear.RightInner + move : gear.Idler.Turned(gear.RightInner, 0.4);
        Assert.Equal(0, (joints.Right - expectedRight).Norm, 1e-12);
    }

    [Fact]
    public void Box_WithUnlikeArms_KeepsTheCentreLinksLength()
    {
        var gear = BoxGear(0.13, SteeringCarrier.CentreLink, SteeringCarrier.CentreLink);
        foreach (var turn in new[] { -0.5, -0.2, 0, 0.3, 0.6 })
        {
            var joints = gear.At(turn);
            Assert.True(joints.Reach.IsReached);
            Assert.Equal(Vector3.Distance(gear.LeftInner, gear.RightInner), Vector3.Distance(joints.Left, joints.Right), 1e-12);
            var drop = gear.DropArm.Turned(gear.DropArm.Joint, turn);
            Assert.Equal(Vector3.Distance(gear.DropArm.Joint, gear.LeftInner), Vector3.Distance(drop, joints.Left), 1e-12);
        }
    }

    [Fact]
    public void Box_BeyondTheCentreLink_SaysSo()
    {
        var gear = BoxGear(0.03, SteeringCarrier.CentreLink, SteeringCarrier.CentreLink);
        var reach = gear.At(1.5).Reach;
        Assert.Equal(ReachLimit.CentreLink, reach.Limit);
        Assert.True(reach.ShortByMetres > 0);
    }

    [Fact]
    public void Rack_OfAnotherPitch_StillMovesBothJointsAlongItsOwnLine()
    {
        var gear = new SteeringGear.Rack(new(-0.15, 0.24, 0.23), new(-0.15, -0.24, 0.22), new Vector3(0, 1, 0.1).Direction);
        var joints = gear.At(0.01);
        Assert.Equal(0.01, Vector3.Distance(gear.LeftInner, joints.Left), 1e-15);
        Assert.Equal(0, ((joints.Left - gear.LeftInner) - (joints.Right - gear.RightInner)).Norm, 1e-15);
    }

    private static SteeringGear.Box BoxGear(double idlerLength, SteeringCarrier left, SteeringCarrier right) =>
        new()
        {
            DropArm = new(new(-0.2, 0.3, 0.25), Vector3.Up, new(-0.36, 0.3, 0.25)),
            Idler = new(new(-0.36 + idlerLength, -0.3, 0.25), Vector3.Up, new(-0.36, -0.3, 0.25)),
            LeftInner = new(-0.37, 0.25, 0.24),
            RightInner = new(-0.37, -0.25, 0.24),
            LeftCarrier = left,
            RightCarrier = right,
        };

    // Uprights vertical at (0, +-0.6); lever ends 0.15 behind, leaning inward 18 degrees; rack ends level with them at y = +-0.2.
    private static CornerPoints Trapezium()
    {
        var (sine, cosine) = Math.SinCos(Radians(18));
        return new()
        {
            UpperFront = new(0.1, 0.3, 0.4),
            UpperRear = new(-0.1, 0.3, 0.4),
            LowerFront = new(0.1, 0.3, 0.2),
            LowerRear = new(-0.1, 0.3, 0.2),
            UpperJoint = new(0, 0.6, 0.4),
            LowerJoint = new(0, 0.6, 0.2),
            TrackRodOuter = new(-0.15 * cosine, 0.6 - (0.15 * sine), 0.3),
            TrackRodInner = new(-0.15 * cosine, 0.2, 0.3),
            WheelCentre = new(0, 0.6, 0.3),
            SpinAxis = Vector3.Left,
        };
    }

    // The plane problem alone: the right wheel turned right by `inner`, its rod moves the rack, the rack moves the left rod.
    private static double PlaneOuter(double inner)
    {
        var (leverAngle, rod) = (Radians(18), 0.4 - (0.15 * Math.Sin(Radians(18))));
        (double X, double Y) End(double side, double turn) =>
            (-0.15 * Math.Cos((side * leverAngle) + turn), (side * 0.6) - (0.15 * Math.Sin((side * leverAngle) + turn)));

        double RackFrom(double side, double turn)
        {
            var (x, y) = End(side, turn);
            var along = Math.Sqrt((rod * rod) - Math.Pow(x + (0.15 * Math.Cos(leverAngle)), 2));
            return y - (side * along) - (side * 0.2);
        }

        var rack = RackFrom(-1, Radians(-inner));
        var (low, high) = (Radians(-40), Radians(0));
        for (var i = 0; i < 200; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = (RackFrom(1, middle) < rack) == (RackFrom(1, low) < rack) ? (middle, high) : (low, middle);
        }

        return Degrees(low);
    }
}
