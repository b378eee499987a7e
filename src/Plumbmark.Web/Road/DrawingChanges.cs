using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>The suspension is drawn, or drawn anew.</summary>
internal static class DrawingChanges
{
    public static IResult Front(CarRequest request)
    {
        var faults = new FieldFaults();
        var act = FormAct.Read(request, request.Car.File.Units, "road-described", "road.front", RoadFields.Front, [], faults);
        return act is Act.RoadDescribed { Drawing.Front: { } front }
            ? Keep(request, section => section with { Front = front })
            : Show.Again<DrawingPage>(DrawingView.Front(request, faults));
    }

    public static IResult Rear(CarRequest request)
    {
        var faults = new FieldFaults();
        var view = DrawingView.Rear(request, faults);
        var act = FormAct.Read(
            request,
            request.Car.File.Units,
            "road-described",
            "road.rear",
            view.Fields,
            [("kind", view.RearKind!)],
            faults
        );
        return act is Act.RoadDescribed { Drawing.Rear: { } rear }
            ? Keep(request, section => section with { Rear = rear })
            : Show.Again<DrawingPage>(DrawingView.Rear(request, faults));
    }

    /// <summary>Keeps the section with one thing changed; the rest is taken from the car as it stands at that moment.</summary>
    public static IResult Keep(CarRequest request, Func<RoadSection, RoadSection> change, string thenShow = "road") =>
        request.Keep(request.Address(thenShow), car => [new Act.RoadDescribed(change(SectionOf(car)))]);

    private static RoadSection SectionOf(OpenCar car) => (car.File.Road ?? RoadSection.Empty) with { Parts = [], Wheels = [] };
}
