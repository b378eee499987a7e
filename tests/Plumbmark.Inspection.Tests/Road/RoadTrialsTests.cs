using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.FaultyRoads;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>The straight-line reckoning of uncertainty beside trials drawn at random, and where the two part.</summary>
public class RoadTrialsTests
{
    [Theory]
    [InlineData(DemoRoad.Fault.BentMount)]
    [InlineData(DemoRoad.Fault.WrongLever)]
    public void LinearAndTrials_AgreeOnTheDemosFaults(DemoRoad.Fault fault)
    {
        // JCGM 101:2008, clause 8, at one significant digit.
        var answer = RoadInspection.Of(DemoRoad.Car(fault), MeasuredPlaces.None, trials: 20_000);
        Assert.NotEmpty(answer.Trials);
        Assert.All(answer.Trials, t => Assert.True(t.Agrees, t.ToString()));
    }

    [Fact]
    public void LinearAndTrials_AgreeOnTheShippedDemo_OnceTheBowIsCounted()
    {
        // Nobody has measured the demo's track rods: within 3 mm the wheels stand anywhere in 2.8 degrees of toe, and a wheel centre that swings about its king-pin comes inward either way.
        // Slopes cannot show that: the front track's mean lies a tenth of u below its value, and without the bow both ends miss the trials by more than the clause allows.
        var answer = RoadInspection.Of(DemoCar.File(), trials: 20_000, withTurns: true);
        Assert.NotEmpty(answer.Trials);
        Assert.All(answer.Trials, t => Assert.True(t.Agrees, t.ToString()));
        // The outer wheel's turn, the least linear of all, is tried too, and its bow is counted.
        Assert.Equal(2, answer.Trials.Count(t => t.Kind == FigureKind.ToeOutOnTurns));
        Assert.All(answer.Figures.Where(f => f.Kind == FigureKind.ToeOutOnTurns), f => Assert.NotEqual(0, f.Bow));
        var track = answer.Figures.Single(f => f.Kind == FigureKind.FrontTrack);
        var tried = answer.Trials.Single(t => t.Kind == FigureKind.FrontTrack);
        Assert.InRange(track.Bow, -0.1e-3, -0.05e-3);
        Assert.True(Math.Abs(tried.LinearLow - track.Bow - tried.TriedLow) > tried.Tolerance);
    }

    [Fact]
    public void LinearAndTrials_DisagreeWhereTheRoadIsBent_AndThatIsFlagged()
    {
        // A lower pivot unsure by an inch: the joint then swings along an arc, which no slope shows.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var parts = car.Road!.Parts.Select(p => p is { Part: CornerPart.LowerRear, Side: Side.Left } ? p with { Sigma = Inch(1) } : p);
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = [.. parts] } }, MeasuredPlaces.None, trials: 20_000);
        Assert.False(answer.Trials.Single(t => t is { Kind: FigureKind.Camber, Side: Side.Left }).Agrees);
        Assert.True(answer.Trials.Single(t => t is { Kind: FigureKind.Camber, Side: Side.Right }).Agrees);
        Assert.Contains("do NOT agree; go by the trials", RoadText.Of(answer, RoadDisplay.Of(car)), StringComparison.Ordinal);
    }

    [Fact]
    public void SharedUncertainty_CancelsInTheSplit()
    {
        // Both pivots unsure by 2 mm together (the floor's own tilt, say): each camber is unsure, their difference hardly.
        RoadFigure Split(double shared)
        {
            var car = DemoRoad.Car(DemoRoad.Fault.None);
            var measured = MeasuredPlaces.Of(
                [new("K.L", 1, 0.4, 0), new("K.R", 1, -0.4, 0)],
                new double[,]
                {
                    { 4e-6, shared },
                    { shared, 4e-6 },
                }
            );
            var parts = car.Road!.Parts.Where(p => p.Part != CornerPart.UpperFront).ToList();
            var unmeasured = new UnmeasuredAllowance(Inch(0.0001m), null, null);
            var road = car.Road with { Parts = parts, Unmeasured = unmeasured };
            return RoadInspection.Of(car with { Road = road }, measured).Figures.Single(f => f.Kind == FigureKind.CamberSplit);
        }

        // Outboard on the left and inboard on the right: what they share in the car's axes counts opposite on the two sides.
        Assert.True(Split(-4e-6).U < 0.5 * Split(0).U);
        Assert.True(Split(4e-6).U > 1.3 * Split(0).U);
    }
}
