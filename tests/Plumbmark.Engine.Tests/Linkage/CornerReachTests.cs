using Plumbmark.Engine.Linkage;
using static Plumbmark.Engine.Tests.Linkage.ReferenceCorner;

namespace Plumbmark.Engine.Tests.Linkage;

public class CornerReachTests
{
    [Theory]
    [InlineData(0.30)]
    [InlineData(-0.45)]
    [InlineData(5)]
    public void At_BeyondTheArms_SaysWhichPartRunsOut(double travel)
    {
        var reach = Limit(Corner.Of(Points), Points.WheelCentre.Z + travel, Points.TrackRodInner);
        Assert.Contains(reach.Limit, new[] { ReachLimit.LowerArm, ReachLimit.UpperArm });
        Assert.True(reach.ShortByMetres > 0);
    }

    [Fact]
    public void At_RackBeyondTheLever_SaysTheTrackRod()
    {
        var reach = Limit(Corner.Of(Points), Points.WheelCentre.Z, Points.TrackRodInner - (0.4 * Vector3.Left));
        Assert.Equal(ReachLimit.TrackRod, reach.Limit);
        Assert.True(reach.ShortByMetres > 0.01);
    }

    [Fact]
    public void At_UpperArmFarTooShort_SaysTheUpperArm()
    {
        var parts = CornerParts.Of(Points);
        var corner = new Corner(CornerFrame.Of(Points), parts with { Upper = parts.Upper.Changed(-0.11, -0.11) });
        var reach = Limit(corner, Points.WheelCentre.Z, Points.TrackRodInner);
        Assert.Equal(ReachLimit.UpperArm, reach.Limit);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void At_NotANumber_IsRefused(double height) =>
        Assert.Equal(ReachLimit.NotANumber, Limit(Corner.Of(Points), height, Points.TrackRodInner).Limit);

    [Fact]
    public void Solve_UpToTheLimitOfTravel_StandsAndThenStops()
    {
        // Walk up until nothing stands; every height below must stand, and the walk must end.
        var corner = Corner.Of(Points);
        var (low, high) = (0.0, 0.4);
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            var stands = corner.Solve(Points.WheelCentre.Z + middle, Points.TrackRodInner, out _).IsReached;
            (low, high) = stands ? (middle, high) : (low, middle);
        }

        Assert.InRange(low, 0.1, 0.3);
        for (var share = 0.0; share < 1; share += 0.01)
        {
            Assert.True(corner.Solve(Points.WheelCentre.Z + (share * low), Points.TrackRodInner, out _).IsReached);
        }
    }

    private static Reach Limit(Corner corner, double height, Vector3 inner) =>
        corner.At(height, inner).Match(s => throw new Xunit.Sdk.XunitException($"stands: {s}"), r => r);
}
