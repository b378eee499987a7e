using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.FaultyRoads;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>Stories four and six, and the eighth of an inch that does no harm, told apart by what they do on the road. All invented.</summary>
public class RoadInspectionTests
{
    [Fact]
    public void AsDrawn_IsTrue()
    {
        var answer = Of(DemoRoad.Fault.None);
        Assert.Equal(Verdict.True, answer.Verdict);
        Assert.Empty(answer.Missing);
        Assert.All(answer.Figures, f => Assert.Equal(f.Drawn, f.Value, 1e-12));
        Assert.All(answer.Settings, s => Assert.True(s.IsRestored));
    }

    [Fact]
    public void BentMount_PutsCastorOut_AndTheAdjustersCannotCureIt()
    {
        var answer = Of(DemoRoad.Fault.BentMount);
        Assert.Equal(Verdict.Out, answer.Verdict);
        Assert.Contains("cannot cure", answer.Headline, StringComparison.Ordinal);
        var castor = Figure(answer, FigureKind.Castor, Side.Right);
        Assert.Equal(Verdict.Out, castor.Verdict);
        // The ball joint swings forward on the skewed pivots: about a degree of castor, a third of camber (the shape of story 6).
        Assert.InRange((castor.Value - castor.Drawn) / Minute, -75, -50);
        Assert.InRange((Figure(answer, FigureKind.Camber, Side.Right) is var c ? c.Value - c.Drawn : 0) / Minute, 15, 35);
        var main = castor.Contributions[0];
        Assert.Equal((CornerPart.LowerRear, Side.Right), (main.What, main.Side));
        Assert.True(Math.Abs(castor.Contributions.Sum(x => x.Amount) - (castor.Value - castor.Drawn)) < 0.2 * Minute);
        var right = answer.Settings.Single(s => s.Side == Side.Right);
        Assert.False(right.IsRestored);
        Assert.True(right.Angles.Single(a => a.Kind == FigureKind.Castor).LeftOver < -20 * Minute);
        Assert.Equal(Verdict.True, Figure(answer, FigureKind.Castor, Side.Left).Verdict);
    }

    [Fact]
    public void WrongLever_PutsBumpSteerOutOnOneSide_AndNothingElse()
    {
        var answer = Of(DemoRoad.Fault.WrongLever);
        Assert.Equal(Verdict.Out, answer.Verdict);
        var wrong = answer.Figures.Where(f => f.Verdict == Verdict.Out).ToList();
        Assert.Equal((FigureKind.BumpSteer, Side.Left), (wrong.Single().Kind, wrong.Single().Side!.Value));
        Assert.Equal(CornerPart.Lever, wrong[0].Contributions[0].What);
        Assert.Equal(Verdict.True, Figure(answer, FigureKind.Camber, Side.Left).Verdict);
        Assert.Contains("Nothing here adjusts bump steer", answer.Headline, StringComparison.Ordinal);
    }

    [Fact]
    public void HarmlessEighth_IsTrueOnTheRoad()
    {
        var answer = Of(DemoRoad.Fault.HarmlessEighth);
        Assert.Equal(Verdict.True, answer.Verdict);
        var wheelbase = Figure(answer, FigureKind.Wheelbase, Side.Left);
        Assert.Equal(0.125 * 0.0254, wheelbase.Value - wheelbase.Drawn, 1e-9);
        Assert.Equal(0, answer.Figures.Single(f => f.Kind == FigureKind.Thrust).Value, 1e-12);
    }

    [Fact]
    public void PartsFromTheBench_AreTaken_UntilTheRoadIsToldItself()
    {
        // The demo's left lever is the early one, its pad 1.418 in high where this car's late one has 1.20; the right one's is 1.203.
        var road = DemoRoad.Car(DemoRoad.Fault.None);
        var parts = road.Road!.Parts.Where(p => p.Part != CornerPart.Lever).ToList();
        var car = road with { Parts = DemoCar.File().Parts, Tools = DemoCar.File().Tools, Road = road.Road with { Parts = parts } };
        var bump = Figure(RoadInspection.Of(car, MeasuredPlaces.None), FigureKind.BumpSteer, Side.Left);
        var told = Figure(Of(DemoRoad.Fault.WrongLever), FigureKind.BumpSteer, Side.Left);
        Assert.Equal((CornerPart.Lever, Side.Left), (bump.Contributions[0].What, bump.Contributions[0].Side));
        Assert.Equal(0.218 / 0.22, bump.Contributions[0].Amount / told.Contributions[0].Amount, 0.005);
        Assert.Equal(Verdict.Out, bump.Verdict);
        var answer = RoadInspection.Of(car, MeasuredPlaces.None);
        Assert.Contains(
            answer.Assumed,
            a =>
                a.StartsWith(
                    "Taken from the bench: left steering lever up +0.22 in, Lever, left against the late lever",
                    StringComparison.Ordinal
                )
        );
        // Told on the Road as right, the bench's own is left aside.
        var right = new PartDeviation("x", CornerPart.Lever, Side.Left, [new(PartQuantity.Up, Inch(0), null)], Inch(0.006m));
        var told2 = RoadInspection.Of(car with { Road = car.Road! with { Parts = [.. parts, right] } }, MeasuredPlaces.None);
        Assert.Equal(Verdict.True, Figure(told2, FigureKind.BumpSteer, Side.Left).Verdict);
    }

    [Fact]
    public void WantOfKnowledge_CallsNothingOut()
    {
        // Every place sure to an inch only: hardly any angle is likely to be within half a degree, and none is shown to be beyond.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var parts = car.Road!.Parts.Select(p => p with { Sigma = Inch(1), SigmaAngle = Angle.FromDegrees(9) });
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = [.. parts] } }, MeasuredPlaces.None);
        Assert.Contains(answer.Figures, f => f.ProbabilityWithin < 0.05);
        Assert.DoesNotContain(answer.Figures, f => f.Verdict == Verdict.Out);
        Assert.Equal(Verdict.CannotTellYet, answer.Verdict);
    }

    [Fact]
    public void FloorsDeviations_AreTaken_OutboardOnEitherSide()
    {
        // Both lower rear pivots 2 mm to the car's LEFT: outboard on the left, inboard on the right.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var measured = MeasuredPlaces.Of(
            [new("C.L", 1, 14.5 * 0.0254, 0.002), new("C.R", 1, -14.5 * 0.0254, 0.002)],
            new double[,]
            {
                { 1e-6, 0 },
                { 0, 1e-6 },
            }
        );
        var parts = car.Road!.Parts.Where(p => p.Part != CornerPart.LowerRear).ToList();
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = parts } }, measured);
        var (left, right) = (Figure(answer, FigureKind.Camber, Side.Left), Figure(answer, FigureKind.Camber, Side.Right));
        Assert.True(left.Value < left.Drawn);
        Assert.True(right.Value > right.Drawn);
        Assert.Equal(left.Value - left.Drawn, right.Drawn - right.Value, Minute); // the arcs bend by half a minute
        Assert.Contains(answer.Assumed, a => a.Contains("is not measured fore and aft and in height", StringComparison.Ordinal));
    }

    [Fact]
    public void WithoutBookPlaces_TheMeanOfBothSidesStands_AndIsSaid()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var points = car.Frame.Points.Select(p => p.Id.StartsWith('K') ? p with { Nominal = null } : p).ToList();
        var measured = MeasuredPlaces.Of(
            [
                new("K.L", 0, 91 * 0.0254, 0),
                new("K.L", 1, 16.6 * 0.0254, 0.1 * 0.0254),
                new("K.L", 2, 17.5 * 0.0254, 0),
                new("K.R", 0, 91 * 0.0254, 0),
                new("K.R", 1, -16.4 * 0.0254, 0.1 * 0.0254),
                new("K.R", 2, 17.5 * 0.0254, 0),
            ],
            new double[6, 6]
        );
        var parts = car.Road!.Parts.Where(p => p.Part != CornerPart.UpperFront).ToList();
        var answer = RoadInspection.Of(car with { Frame = new Frame(points, null), Road = car.Road with { Parts = parts } }, measured);
        Assert.Contains(answer.Assumed, a => a.Contains("the mean of both sides stands for the drawing", StringComparison.Ordinal));
        var (left, right) = (Figure(answer, FigureKind.Camber, Side.Left), Figure(answer, FigureKind.Camber, Side.Right));
        Assert.Equal(left.Drawn, right.Drawn, 1e-12);
        Assert.True(left.Value > left.Drawn && right.Value < right.Drawn);
    }

    [Fact]
    public void OverTravelAndSteer_EveryAngleIsThere()
    {
        var answer = Of(DemoRoad.Fault.None);
        var curve = answer.FoundCurves[Side.Left];
        var ride = curve.MinBy(p => Math.Abs(p.TravelMetres))!;
        Assert.Equal(Figure(answer, FigureKind.KingPin, Side.Left).Value, ride.KingPin, 1e-9);
        var ground = answer.Ground.Single(g => g.Side == Side.Left);
        Assert.Equal(ground.ScrubRadius, ride.ScrubRadiusMetres!.Value, 1e-9);
        Assert.Equal(ground.Trail, ride.TrailMetres!.Value, 1e-9);
        Assert.Equal(ground.RollCentre, ride.RollCentreMetres!.Value, 1e-9);
        Assert.True(curve[^1].KingPin != curve[0].KingPin && curve[^1].TrailMetres != curve[0].TrailMetres);
        // With castor the inner wheel, swung outboard, leans out at the top; the outer one, swung inboard, leans in.
        var turn = answer.Turns.Single(t => Math.Abs(t.Inner - RoadKinematics.InnerTurnRadians) < 1e-9).ToTheLeft!;
        Assert.True(turn.InnerCamber > ride.Camber && turn.OuterCamber < ride.Camber);
    }

    [Fact]
    public void OnlyTheWheelsOut_SaysNothingOfACureWorkedOutFromTheFrame()
    {
        // Frame and parts are as drawn, and nothing needs setting; the left wheel leans three degrees all the same.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        WheelReading[] wheels =
        [
            new WheelReading.Level("l", WheelPlace.FrontLeft, Angle.FromDegrees(3.5m)),
            new WheelReading.Level("m", WheelPlace.FrontLeft, Angle.FromDegrees(3.5m)) { HalfTurn = true },
        ];
        var answer = RoadInspection.Of(car with { Road = car.Road! with { Wheels = wheels } }, MeasuredPlaces.None);
        Assert.All(answer.Settings, s => Assert.True(s.IsRestored));
        Assert.Equal("Out: front left camber.", answer.Headline);
    }
}
