using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

/// <summary>The road of the demo car with one fault, and one figure of its answer.</summary>
internal static class FaultyRoads
{
    public const double Minute = Math.PI / 180 / 60;

    public static RoadAnswer Of(DemoRoad.Fault fault) => RoadInspection.Of(DemoRoad.Car(fault), MeasuredPlaces.None);

    public static RoadFigure Figure(RoadAnswer answer, FigureKind kind, Side side) =>
        answer.Figures.Single(f => f.Kind == kind && f.Side == side);
}
