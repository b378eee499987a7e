using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>An adjuster is described, described anew, or struck out.</summary>
internal static class AdjusterChanges
{
    public static IResult Keep(CarRequest request)
    {
        var faults = new FieldFaults();
        // A track rod moves no pivot: what stands in those two fields is left out.
        var fields =
            request.Field("kind") == "trackRod" ? RoadFields.Adjuster.Where(f => f.Name is not ("at" or "direction")) : RoadFields.Adjuster;
        var act = FormAct.Read(request, request.Car.File.Units, "road-described", "road.adjusters[]", [.. fields], [], faults);
        if (act is not Act.RoadDescribed { Drawing.Adjusters: [var adjuster] })
        {
            return Show.Again<AdjustersPage>(AdjustersView.Of(request, faults));
        }

        return DrawingChanges.Keep(
            request,
            section => section with { Adjusters = [.. section.Adjusters.Where(a => a.Id != adjuster.Id), adjuster] },
            "road/adjusters"
        );
    }

    public static IResult Remove(CarRequest request)
    {
        var id = request.Part("adjuster");
        return DrawingChanges.Keep(
            request,
            section => section with { Adjusters = [.. section.Adjusters.Where(a => a.Id != id)] },
            "road/adjusters"
        );
    }
}
