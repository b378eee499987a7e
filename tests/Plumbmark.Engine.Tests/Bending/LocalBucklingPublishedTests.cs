using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>The buckling strain against the slenderness classes of EN 1993-1-1:2005, table 5.2 (read) for 235 MPa, where its ε = 1.</summary>
public class LocalBucklingPublishedTests
{
    private static readonly Steel s_s235 = new(210e9, 235e6);

    [Theory]
    [InlineData(PlateSupport.OneEdgeFree, 9, 14)]
    [InlineData(PlateSupport.HeldBothEdges, 33, 42)]
    [InlineData(PlateSupport.Web, 72, 124)]
    [InlineData(PlateSupport.TubeWall, 50, 90)]
    public void Class1StrainsWellPastYield_AndBeyondClass3ItBucklesAboutYield(PlateSupport support, double class1, double class3)
    {
        // Class 1 may form a hinge that turns (several yield strains); the class 3 limit is where a wall just reaches yield.
        Assert.InRange(LocalBuckling.StrainRatio(Wall(class1, support), s_s235), 1.7, 15);
        Assert.InRange(LocalBuckling.StrainRatio(Wall(class3, support), s_s235), 0.8, 1.7);
        Assert.True(
            LocalBuckling.StrainRatio(Wall(2 * class3, support), s_s235) < LocalBuckling.StrainRatio(Wall(class3, support), s_s235)
        );
    }

    /// <summary>EN 1993-1-5, 4.4: λ = (b/t)/(28.4·ε·√k); from memory.</summary>
    [Theory]
    [InlineData(PlateSupport.OneEdgeFree, 0.43)]
    [InlineData(PlateSupport.HeldBothEdges, 4.0)]
    [InlineData(PlateSupport.Web, 23.9)]
    public void Slenderness_IsTheStandardsFormula(PlateSupport support, double k) =>
        Assert.Equal(30 / (28.4 * Math.Sqrt(k)), LocalBuckling.Slenderness(Wall(30, support), s_s235), 0.005);

    [Fact]
    public void StockyWall_IsCappedAtFifteenYieldStrains() =>
        Assert.Equal(15, LocalBuckling.StrainRatio(Wall(3, PlateSupport.OneEdgeFree), s_s235));

    [Fact]
    public void FirstWallToBuckle_IsTheSlenderest()
    {
        var first = LocalBuckling.First(CrossSection.Box(0.06, 0.03, 0.002), s_s235);
        Assert.Equal("ram-side face", first!.Value.Plate.Name);
        Assert.Null(LocalBuckling.First(CrossSection.Round(0.02), s_s235));
    }

    private static PlateElement Wall(double widthOverThickness, PlateSupport support) =>
        new("wall", widthOverThickness * 0.002, 0.002, support);
}
