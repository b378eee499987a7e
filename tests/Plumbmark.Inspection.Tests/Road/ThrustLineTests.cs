using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.FaultyRoads;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>The rear axle turned or moved: thrust line, dog tracking, offset.</summary>
public class ThrustLineTests
{
    [Fact]
    public void HangerAnEighthAhead_TurnsTheThrustLine_AndTheCarDogTracks()
    {
        // Left spring eye 1/8 in forward over eyes 32 in apart: the axle turns to the right by atan(1/8 / 32), and over the wheelbase the rear runs that much to the right of the front.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var parts = car.Road!.Parts.Where(p => p is not { Part: CornerPart.RearEye, Side: Side.Left });
        var eye = new PartDeviation("x", CornerPart.RearEye, Side.Left, [new(PartQuantity.Forward, Inch(0.125m), null)], Inch(0.006m));
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = [.. parts, eye] } }, MeasuredPlaces.None);
        double Value(FigureKind kind) => answer.Figures.Single(f => f.Kind == kind && f.Side is null).Value;
        var turned = Math.Atan(0.125 / 32);
        Assert.Equal(-turned, Value(FigureKind.Thrust), 1e-9);
        var dog = answer.Figures.Single(f => f.Kind == FigureKind.DogTrack);
        // Wheelbase 87 in less half of what the left side lost, seen along the thrust line.
        Assert.Equal(
            -Math.Sin(turned) * (answer.Figures.Where(f => f.Kind == FigureKind.Wheelbase).Average(f => f.Value)),
            dog.Value,
            1e-7
        );
        Assert.Equal((CornerPart.RearEye, Side.Left), (dog.Contributions[0].What, dog.Contributions[0].Side));
        Assert.True(dog.U > 0);
    }

    [Fact]
    public void RearAxleToTheLeft_IsAnOffset_AndDogTracksByAsMuch()
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        PartDeviation Eye(Side side, decimal toTheLeft) =>
            new($"{side}", CornerPart.RearEye, side, [new(PartQuantity.Out, Inch(side == Side.Left ? toTheLeft : -toTheLeft), null)]);
        var parts = car.Road!.Parts.Where(p => p.Part != CornerPart.RearEye);
        PartDeviation[] eyes = [Eye(Side.Left, 0.25m), Eye(Side.Right, 0.25m)];
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = [.. parts, .. eyes] } }, MeasuredPlaces.None);
        Assert.Equal(0.25 * 0.0254, answer.Figures.Single(f => f.Kind == FigureKind.RearOffset).Value, 1e-9);
        Assert.Equal(0.25 * 0.0254, answer.Figures.Single(f => f.Kind == FigureKind.DogTrack).Value, 1e-9);
        Assert.Equal(0, answer.Figures.Single(f => f.Kind == FigureKind.Thrust).Value, 1e-12);
    }
}
