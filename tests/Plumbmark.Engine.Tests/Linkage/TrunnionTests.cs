using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

/// <summary>A trunnion at the lower end: an offset pin, a thread, and all pivot lines parallel to the car as such a design needs.</summary>
public class TrunnionTests
{
    private static readonly CornerPoints s_drawn = Points with
    {
        UpperFront = Millimetres(110, 330, 415),
        UpperRear = Millimetres(-130, 330, 415),
        LowerFront = Millimetres(160, 250, 190),
        LowerRear = Millimetres(-180, 250, 190),
        UpperJoint = Millimetres(0, 560, 440),
        LowerJoint = Millimetres(0, 600, 170),
        LowerEnd = new(0.018, 0),
    };

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.05, 0)]
    [InlineData(-0.05, 0.03)]
    public void At_AnyPosition_KeepsTheSteeringAxisItsOffsetFromThePin(double travel, double rack)
    {
        var state = Stand(Corner.Of(s_drawn), s_drawn.WheelCentre.Z + travel, s_drawn.TrackRodInner + (rack * Vector3.Left));
        var toPin = state.LowerJoint - state.UpperJoint;
        var foot = state.UpperJoint + (Vector3.Dot(toPin, state.SteeringAxis) * state.SteeringAxis);
        // Outboard of the pin by the offset, square to pin and axis.
        Assert.Equal(0.018, (foot - state.LowerJoint).Norm, 1e-13);
        Assert.True(foot.Y > state.LowerJoint.Y);
        Assert.Equal(0, Vector3.Dot(state.SteeringAxis, Vector3.Forward), 1e-13);
        Assert.Equal(Vector3.Distance(s_drawn.UpperJoint, s_drawn.LowerJoint), toPin.Norm, 1e-13);
    }

    [Fact]
    public void At_DrawnHeight_IsTheDrawing()
    {
        var state = Stand(Corner.Of(s_drawn), s_drawn.WheelCentre.Z);
        Assert.Equal(0, (state.WheelCentre - s_drawn.WheelCentre).Norm, 1e-12);
        Assert.Equal(0, (state.SpinAxis - s_drawn.SpinAxis).Norm, 1e-12);
    }

    [Fact]
    public void OffsetOfNothing_IsABallJoint()
    {
        var ball = Stand(Corner.Of(s_drawn with { LowerEnd = default }), s_drawn.WheelCentre.Z + 0.04);
        var almost = Stand(Corner.Of(s_drawn with { LowerEnd = new(1e-12, 0) }), s_drawn.WheelCentre.Z + 0.04);
        Assert.Equal(0, (ball.WheelCentre - almost.WheelCentre).Norm, 1e-10);
        Assert.Equal(WheelAngles.Of(ball).ToeInRadians, WheelAngles.Of(almost).ToeInRadians, 1e-10);
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(-0.025)]
    public void Thread_CreepsByItsLeadTimesTheTurn(double rack)
    {
        // An upright axis, so that the turn about it is the change of toe; 2.1 mm per turn is a 12 threads-per-inch screw.
        const double Lead = 0.0254 / 12;
        var upright = s_drawn with { UpperJoint = Millimetres(0, 600, 440), LowerEnd = new(0, Lead) };
        var state = Stand(Corner.Of(upright), upright.WheelCentre.Z, upright.TrackRodInner + (rack * Vector3.Left));
        var turn = Radians(0.15) - WheelAngles.Of(state).ToeInRadians;
        var grown = Vector3.Distance(state.UpperJoint, state.LowerJoint) - Vector3.Distance(upright.UpperJoint, upright.LowerJoint);
        Assert.True(Math.Abs(turn) > 0.1);
        // The growth tilts the axis by less than 1e-3 rad: its square is what is left over.
        Assert.Equal(Lead * turn / (2 * Math.PI), grown, 1e-8);
    }

    [Fact]
    public void PerMetreOfTravel_WithOffset_IsTheSlope()
    {
        const double Step = 1e-5;
        var corner = Corner.Of(s_drawn);
        var height = s_drawn.WheelCentre.Z + 0.03;
        var (here, up, down) = (Stand(corner, height), Stand(corner, height + Step), Stand(corner, height - Step));
        var slope = (1 / (2 * Step)) * (up.SpinAxis - down.SpinAxis);
        Assert.Equal(0, (slope - Vector3.Cross(here.PerMetreOfTravel.Angular, here.SpinAxis)).Norm, 1e-7);
    }

    [Fact]
    public void Sensitivity_ByDifferences_IsThatOfTheBallJointWhenNothingIsOffset()
    {
        var amounts = new double[CornerSensitivity.ParameterCount];
        var (exact, near) = (CornerVariation.Of(Points, amounts), CornerVariation.Of(Points with { LowerEnd = new(1e-12, 0) }, amounts));
        var state = Stand(exact.Corner, Points.WheelCentre.Z + 0.02);
        var (a, b) = (exact.SensitivityAt(state), near.SensitivityAt(Stand(near.Corner, Points.WheelCentre.Z + 0.02)));
        for (var i = 0; i < CornerSensitivity.ParameterCount; i++)
        {
            Assert.Equal(a.Camber[i], b.Camber[i], 1e-6);
            Assert.Equal(a.ToeIn[i], b.ToeIn[i], 1e-6);
            Assert.Equal(a.Castor[i], b.Castor[i], 1e-6);
            Assert.Equal(a.WheelForward[i], b.WheelForward[i], 1e-6);
        }
    }
}
