using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>What the Road takes from the Floor.</summary>
public class PlacesOfFloorTests
{
    [Fact]
    public void Of_TheDemoCar_AreTheFloorsOwnDeviations()
    {
        var car = DemoCar.File();
        var (places, floor) = (PlacesOfFloor.Of(car), FloorInspection.Of(car));
        foreach (var point in floor.Points)
        {
            Assert.Equal(point.Deviation?.DxMetres, places.Deviation(point.Id, 0));
            Assert.Equal(point.Deviation?.DyMetres, places.Deviation(point.Id, 1));
            Assert.Equal(point.Deviation?.DzMetres, places.Deviation(point.Id, 2));
        }
    }

    [Fact]
    public void Symmetry_SharesItsUncertaintyBetweenTheSides()
    {
        // Half a stagger to each side: what the left point is ahead the right one is behind, and equally unsure.
        var places = PlacesOfFloor.Of(DemoCar.File());
        var (left, right) = (("C.L", 0), ("C.R", 0));
        Assert.Equal(places.Covariance(left, left), -places.Covariance(left, right), 1e-15);
        Assert.Equal(places.Covariance(left, left), places.Covariance(right, right), 1e-15);
        Assert.True(places.Covariance(left, left) > 0);
    }

    [Fact]
    public void ACarWithoutReadings_HasNoPlaces() =>
        Assert.Null(PlacesOfFloor.Of(CarFile.Named("x", Engine.Lengths.LengthUnit.Inch)).Value("A.L", 0));

    [Fact]
    public void TheDemoCarsRoad_UsesTheFloor_AndFindsTheWrongLever()
    {
        // The lower pivots come from the Floor's readings, the levers from the owner's plate; the upper pivots nobody has measured.
        // The one inch that was not subtracted is taken back first.
        var demo = DemoCar.File();
        var readings = demo.Readings.Select(r =>
            r is Reading.Plan { From: "B.R", To: "E.L" } ? r with { Withdrawn = "started at 1 in" } : r
        );
        var answer = RoadInspection.Of(demo with { Readings = [.. readings] });
        Assert.Contains(answer.Assumed, a => a.Contains("mean of both sides stands for the drawing", StringComparison.Ordinal));
        var steer = answer.Figures.Single(f => f is { Kind: FigureKind.BumpSteer, Side: Side.Left });
        Assert.Equal(CornerPart.Lever, steer.Contributions[0].What);
        var other = answer.Figures.Single(f => f is { Kind: FigureKind.BumpSteer, Side: Side.Right });
        Assert.True(steer.ProbabilityWithin < other.ProbabilityWithin);
        Assert.All(answer.Settings, s => Assert.Null(s.IsRestored));
        Assert.NotEmpty(answer.Unmeasured);
        var camber = answer.Figures.Single(f => f is { Kind: FigureKind.Camber, Side: Side.Right });
        Assert.Contains(camber.Contributions, c => c.What is CornerPart.LowerFront or CornerPart.LowerRear);
    }
}
