using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Floor.Levelling;

namespace Plumbmark.Inspection.Tests.Floor.Levelling;

/// <summary>The floor as a surface: a plane where it is one, and through every place read where it is not.</summary>
public class FloorSurfaceTests
{
    [Fact]
    public void APlaneFloor_IsThatPlaneEverywhere()
    {
        var floor = FloorSurface.Through([At(0, 0, 0), At(2, 0, -20), At(0, 1, 5), At(2, 1, -15), At(1, 0.5, -7.5)])!;
        Assert.Equal(-0.01, floor.SlopeForward, 1e-12);
        Assert.Equal(0.005, floor.SlopeLeft, 1e-12);
        Assert.Equal((-0.01 * 1.7) + (0.005 * 0.2), floor.At(1.7, 0.2), 1e-9);
    }

    // Shepard 1968: an inverse-distance surface passes through every place read.
    [Fact]
    public void AHollow_IsMetAtEveryPlaceRead()
    {
        FloorHeight[] places = [At(0, 0, 0), At(2, 0, -20), At(0, 1, 5), At(2, 1, -15), At(1, 0.5, -30)];
        var floor = FloorSurface.Through(places)!;
        Assert.All(places, p => Assert.Equal(p.Height.Metres, floor.At(p.X.Metres, p.Y.Metres), 2e-5)); // within 0.02 mm: a place is a millimetre wide
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void TooFewPlaces_OrAllOnOneLine_AreNoFloor(int places) =>
        Assert.Null(FloorSurface.Through([.. Enumerable.Range(0, places).Select(i => At(i, 2 * i, i))]));

    private static FloorHeight At(double x, double y, double millimetres) =>
        new(
            Length.FromMillimetres((decimal)(x * 1000)),
            Length.FromMillimetres((decimal)(y * 1000)),
            Length.FromMillimetres((decimal)millimetres)
        );
}
