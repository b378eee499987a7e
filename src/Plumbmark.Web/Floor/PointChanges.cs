using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>Points are drawn, drawn anew, and rubbed out.</summary>
internal static class PointChanges
{
    public static IResult AddSkeleton(CarRequest request)
    {
        var faults = new FieldFaults();
        if (!int.TryParse(request.Field("skeleton"), out var pairs) || pairs is < FrameSkeleton.FewestPairs or > FrameSkeleton.MostPairs)
        {
            faults.Add("skeleton", $"Choose {FrameSkeleton.FewestPairs} to {FrameSkeleton.MostPairs} pairs.");
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
        var name = request.RequiredText("name", "a name", faults, most: 24);
        var label = request.OptionalText("label", faults, most: 80);
        var role = RoleOf(request, faults);
        var units = request.Car.File.Units;
        var x = request.OptionalLength("x", units, faults, LengthSign.MayBeNegative);
        var half = request.OptionalLength("half", units, faults);
        var points = PointsOf(request.Field("sides"), name, label, role, x, half, faults);
        foreach (var taken in points.Where(p => request.Car.File.Frame.Point(p.Id) is not null))
        {
            faults.Add("name", $"There is a point {taken.Id} already; every point needs a name of its own.");
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
            return Show.NotFound("There is no such point on this frame.");
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
        PointView.Of(request) is not { } view ? Show.NotFound("There is no such point on this frame.")
        : view.Readings > 0
            ? Show.Sorry(
                "It stays",
                "Readings go to this point, so it is not rubbed out. Nothing was changed.",
                StatusCodes.Status422UnprocessableEntity
            )
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
                faults.Add("sides", "Choose a pair, or one point on the centre line, on the left or on the right.");
                return [];
        }
    }

    private static PointRole RoleOf(CarRequest request, FieldFaults faults)
    {
        if (RoleWords.Of(request.Field("role")) is { } role)
        {
            return role;
        }

        faults.Add("role", "Choose what it carries.");
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
