using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>Shape factors that handbooks print; the two-decimal ones are on public pages, further digits are own computation from the closed forms.</summary>
public class CrossSectionPublishedTests
{
    private const double Close = 1e-6;

    [Fact]
    public void Rectangle_HasShapeFactorOneAndAHalf() => Assert.Equal(1.5, CrossSection.Rectangle(0.02, 0.03).ShapeFactor, Close);

    [Fact]
    public void Round_HasSixteenOverThreePi() => Assert.Equal(16 / (3 * Math.PI), CrossSection.Round(0.025).ShapeFactor, Close);

    [Theory]
    [InlineData(0.5, 1.584476)]
    [InlineData(0.8, 1.403209)]
    [InlineData(0.9, 1.337784)]
    [InlineData(0.95, 1.305315)]
    [InlineData(0.9999, 1.273240)] // the thin-wall limit 4/π
    public void Tube_MatchesTheClosedForm(double insideOverOutside, double shapeFactor)
    {
        var tube = CrossSection.Tube(0.04, 0.02 * (1 - insideOverOutside));
        Assert.Equal(shapeFactor, tube.ShapeFactor, insideOverOutside > 0.99 ? 1e-4 : Close); // four nines is not yet the limit
    }

    [Fact]
    public void Diamond_HasTwo()
    {
        var diamond = CrossSection.OfStrips([new(0, 0.02, 0, 0.04), new(0.02, 0.04, 0.04, 0)]);
        Assert.Equal(2, diamond.ShapeFactor, Close);
    }

    [Fact]
    public void Channel_100x50x3x3_OnItsStrongAxis() => // own computation
        Assert.Equal(1.159055, CrossSection.Channel(0.05, 0.1, 0.003, 0.003).ShapeFactor, Close);

    [Fact]
    public void I_OfTheSameSizes_HasTheSameShapeFactorAsTheChannel() =>
        Assert.Equal(1.159055, CrossSection.I(0.05, 0.1, 0.003, 0.003).ShapeFactor, Close);

    [Fact]
    public void Box_80x40x3() => // own computation; 80 deep
        Assert.Equal(1.249991, CrossSection.Box(0.04, 0.08, 0.003).ShapeFactor, Close);

    /// <summary>A hat against sums over its five plates written out by hand (own computation).</summary>
    [Fact]
    public void Hat_MatchesSumsOverItsPlates()
    {
        // Crown 40, depth 30, feet 15 beyond the legs, gauge 2 mm: feet 34 x 2 at y 1, legs 4 x 26 at y 15, crown 40 x 2 at y 29.
        double[] area = [34 * 2, 4 * 26, 40 * 2];
        double[] height = [1, 15, 29];
        double[] own = [34 * 8 / 12.0, 4 * 26 * 26 * 26 / 12.0, 40 * 8 / 12.0];
        var centroid = area.Zip(height, (a, y) => a * y).Sum() / area.Sum();
        var second = Enumerable.Range(0, 3).Sum(i => own[i] + (area[i] * (height[i] - centroid) * (height[i] - centroid)));
        var hat = CrossSection.Hat(0.04, 0.03, 0.015, 0.002);
        Assert.Equal(area.Sum() * 1e-6, hat.AreaSquareMetres, 1e-15);
        Assert.Equal(centroid * 1e-3, hat.CentroidMetres, 1e-12);
        Assert.Equal(second * 1e-12, hat.SecondMomentQuarticMetres, 1e-20);
    }

    [Fact]
    public void Round_OfStrips_ApproachesTheClosedForm()
    {
        const int Slices = 4000;
        var strips = Enumerable
            .Range(0, Slices)
            .Select(i =>
            {
                double Chord(double y) => 2 * Math.Sqrt(Math.Max(0, (0.01 * 0.01) - ((y - 0.01) * (y - 0.01))));
                var (low, high) = (0.02 * i / Slices, 0.02 * (i + 1) / Slices);
                return new SectionPiece.Strip(low, high, Chord(low), Chord(high));
            });
        var sliced = CrossSection.OfStrips([.. strips]);
        var round = CrossSection.Round(0.02);
        Assert.Equal(1, sliced.AreaSquareMetres / round.AreaSquareMetres, 1e-5); // chords lie inside the circle
        Assert.Equal(1, sliced.SecondMomentQuarticMetres / round.SecondMomentQuarticMetres, 3e-5);
        Assert.Equal(round.ShapeFactor, sliced.ShapeFactor, 3e-5);
    }

    [Theory]
    [InlineData(0, 0.03)]
    [InlineData(0.02, -1)]
    [InlineData(double.NaN, 0.03)]
    public void ASizeThatIsNotPositive_IsRefused(double width, double depth) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CrossSection.Rectangle(width, depth));

    [Fact]
    public void WallsThatLeaveNoHollow_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CrossSection.Tube(0.02, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => CrossSection.Box(0.02, 0.04, 0.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => CrossSection.Hat(0.02, 0.004, 0.01, 0.002));
    }
}
