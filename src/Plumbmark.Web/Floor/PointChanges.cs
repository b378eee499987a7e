using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Points are drawn, drawn anew, and rubbed out.</summary>
internal static class PointChanges
{
    public static IResult AddSkeleton(CarRequest request)
    {
        var faults = new FieldFaults();
        if (!int.TryParse(request.Field("skeleton"), out var pairs) || pairs is < FrameSkeleton.FewestPairs or > FrameSkeleton.MostPairs)
        {
            faults.Add("skeleton", Say("point.choose-to-pairs", FrameSkeleton.FewestPairs, FrameSkeleton.MostPairs));
            return Show.Again<PointsPage>(PointsView.Of(request, faults));
        }

        // Only names that are free: drawing a skeleton twice, or over points of one's own, replaces nothing.
        return request.Keep(
            request.Address("points"),
            car =>
                [
                    .. FrameSkeleton
                        .Ladder(pairs, car.File.Units)
                        .Where(p => car.File.Frame.Point(p.Id) is null && (p.Mirror is null || car.File.Frame.Point(p.Mirror) is null))
                        .Select(p => new Act.PointDrawn(p)),
                ]
        );
    }

    public static IResult Add(CarRequest request)
    {
        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("point.a-name"), faults, most: 24);
        var label = request.OptionalText("label", faults, most: 80);
        var role = RoleOf(request, faults);
        var units = request.Car.File.Units;
        var x = request.OptionalLength("x", units, faults, LengthSign.MayBeNegative);
        var half = request.OptionalLength("half", units, faults);
        var points = PointsOf(request.Field("sides"), name, label, role, x, half, faults);
        foreach (var taken in points.Where(p => request.Car.File.Frame.Point(p.Id) is not null))
        {
            faults.Add("name", Say("point.there-is-a-point", taken.Id));
        }

        return faults.Any
            ? Show.Again<PointsPage>(PointsView.Of(request, faults))
            : request.Keep(request.Address("points"), [.. points.Select(p => new Act.PointDrawn(p))]);
    }

    public static IResult DrawAnew(CarRequest request)
    {
        var faults = new FieldFaults();
        if (PointView.Of(request) is not { } view)
        {
            return Show.NotFound(Say("point.there-is-no-such"));
        }

        var label = request.OptionalText("label", faults, most: 80);
        var role = RoleOf(request, faults);
        var drop = request.OptionalLength("drop", request.Car.File.Units, faults);
        var points = view
            .Points.Select(p =>
                p.Point with
                {
                    Label = label,
                    Role = role,
                    DropSigma = drop,
                    Sketch = PlaceOf(request, $"{p.Prefix}-sketch", faults),
                    Nominal = PlaceOf(request, $"{p.Prefix}-book", faults),
                }
            )
            .ToList();
        return faults.Any
            ? Show.Again<PointPage>(PointView.Of(request, faults)!)
            : request.Keep(request.Address("points"), [.. points.Select(p => new Act.PointDrawn(p))]);
    }

    public static IResult Remove(CarRequest request) =>
        PointView.Of(request) is not { } view ? Show.NotFound(Say("point.there-is-no-such"))
        : view.Readings > 0 ? Show.Sorry(Say("point.it-stays"), Say("point.readings-go-to-this"), StatusCodes.Status422UnprocessableEntity)
        : request.Keep(request.Address("points"), [.. view.Points.Select(p => new Act.PointRemoved(p.Point.Id))]);

    private static IReadOnlyList<FramePoint> PointsOf(
        string sides,
        string name,
        string? label,
        PointRole role,
        Length? x,
        Length? half,
        FieldFaults faults
    )
    {
        FramePoint Single(string id, Length? y) =>
            new(id, null, role, x is null && y is null ? null : new Place(x ?? Length.Zero, y, Length.Zero), Label: label);
        switch (sides)
        {
            case "pair":
                return FrameSkeleton.Pair(name, label, role, x, half);
            case "centre":
                return [Single(name, Length.Zero)];
            case "left":
                return [Single($"{name}.L", half)];
            case "right":
                return [Single($"{name}.R", -half)];
            default:
                faults.Add("sides", Say("point.choose-a-pair-or"));
                return [];
        }
    }

    private static PointRole RoleOf(CarRequest request, FieldFaults faults)
    {
        if (RoleWords.Of(request.Field("role")) is { } role)
        {
            return role;
        }

        faults.Add("role", Say("point.choose-what-it-carries"));
        return PointRole.Other;
    }

    private static Place? PlaceOf(CarRequest request, string prefix, FieldFaults faults)
    {
        var units = request.Car.File.Units;
        var x = request.OptionalLength($"{prefix}-x", units, faults, LengthSign.MayBeNegative);
        var y = request.OptionalLength($"{prefix}-y", units, faults, LengthSign.MayBeNegative);
        var z = request.OptionalLength($"{prefix}-z", units, faults, LengthSign.MayBeNegative);
        return x is null && y is null && z is null ? null : new Place(x, y, z);
    }
}
