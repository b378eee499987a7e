using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>The bar on two supports past yield: closed form, quadrature of it by hand, and a worked bar.</summary>
public class ThreePointBendPublishedTests
{
    // The worked bar: b 30, h 20, span 600 mm, E 205 GPa, yield 300 MPa (own computation from the closed form).
    private static readonly ThreePointBend s_bar = new(
        new MomentCurvature(CrossSection.Rectangle(0.03, 0.02), new Steel(205e9, 300e6)),
        0.3,
        0.3
    );

    /// <summary>δ/δ_Y = [5 − (3 + f)√(3 − 2f)]/f² of Prager and Hodge (from memory) with its digits from own computation, and the set δ/δ_Y − f.</summary>
    [Theory]
    [InlineData(1.1, 1.10152770, 0.00152770)]
    [InlineData(1.2, 1.21298194, 0.01298194)]
    [InlineData(1.3, 1.34937350, 0.04937350)]
    [InlineData(1.4, 1.54707152, 0.14707152)]
    [InlineData(1.45, 1.70881638, 0.25881638)]
    public void Rectangle_TravelAndSet(double f, double travel, double set)
    {
        Assert.Equal(travel, CentreLoadedRectangle.TravelRatio(f), 1e-8);
        Assert.Equal(set, CentreLoadedRectangle.SetRatio(f), 1e-8);
        Assert.Equal(travel, s_bar.TravelAtLoad(f * s_bar.YieldLoadNewtons) / s_bar.YieldTravelMetres, 1e-7);
    }

    [Fact]
    public void Rectangle_AtCollapse_HasTwentyNinths()
    {
        Assert.Equal(20.0 / 9, CentreLoadedRectangle.TravelRatio(1.5), 1e-12);
        Assert.Equal((20.0 / 9) - 1.5, s_bar.LargestSetMetres / s_bar.YieldTravelMetres, 1e-5);
        Assert.Equal(1.0 / 6, CentreLoadedRectangle.YieldedHalfLengthOverSpan(1.5), 1e-12);
    }

    [Fact]
    public void WorkedBar_YieldAndCollapse()
    {
        Assert.Equal(4000, s_bar.YieldLoadNewtons, 1e-6);
        Assert.Equal(4.390244e-3, s_bar.YieldTravelMetres, 1e-9);
        Assert.Equal(6000, s_bar.CollapseLoadNewtons, 1e-6);
        Assert.Equal(3.1707e-3, s_bar.LargestSetMetres, 1e-6);
        Assert.Equal(double.PositiveInfinity, s_bar.TravelAtLoad(6000.001));
    }

    [Theory]
    [InlineData(0.2e-3, 5172.449, 5.87708e-3)]
    [InlineData(0.5e-3, 5504.262, 6.54126e-3)]
    [InlineData(1.0e-3, 5757.385, 7.31908e-3)]
    [InlineData(2.0e-3, 5951.729, 8.53238e-3)]
    public void WorkedBar_LoadAndTravelForASet(double set, double load, double travel)
    {
        var bite = s_bar.BiteForSet(set);
        Assert.NotNull(bite);
        Assert.Equal(load, bite.LoadNewtons, 0.001);
        Assert.Equal(travel, bite.TravelMetres, 1e-8);
        Assert.Equal(set, bite.SetMetres, 1e-9);
    }

    [Fact]
    public void WorkedBar_FoldsBeforeALargerSet() => Assert.Null(s_bar.BiteForSet(4e-3));

    [Fact]
    public void WorkedBar_HardenedSlightly_TakesALargerSet()
    {
        var hardened = new ThreePointBend(new MomentCurvature(CrossSection.Rectangle(0.03, 0.02), new Steel(205e9, 300e6, 0.01)), 0.3, 0.3);
        Assert.NotNull(hardened.BiteForSet(4e-3));
        Assert.Equal(double.PositiveInfinity, hardened.LargestSetMetres);
    }
}
