using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>A point is told to be out of the plumb line's reach, or in it again; and it is brought down another way.</summary>
internal static class ObstructedChanges
{
    public static IResult Tell(CarRequest request) =>
        request.Car.File.Frame.Point(request.Part("point")) is { } point
            ? request.Keep(
                AddressOf(request, point.Id),
                new Act.PointDrawn(point with { CannotDrop = request.Field("cannot-drop") == "yes" })
            )
            : Show.NotFound(Say("points.none-such"));

    public static IResult BringDown(CarRequest request)
    {
        var faults = new FieldFaults();
        if (ObstructedView.Of(request, faults) is not { } view)
        {
            return Show.NotFound(Say("points.none-such"));
        }

        var way = request.Field("way");
        var units = request.Car.File.Units;
        var dx = way == "offset" ? request.RequiredLength("dx", units, faults, LengthSign.MayBeNegative) : null;
        var dy = way == "offset" ? request.RequiredLength("dy", units, faults, LengthSign.MayBeNegative) : null;
        var standOff = way == "bar" ? request.RequiredLength("stand-off", units, faults) : null;
        if (way is not ("offset" or "midpoint" or "bar"))
        {
            faults.Add("way", Say("obstructed.fault.way"));
        }

        if (faults.Any)
        {
            return Show.Again<ObstructedPage>(ObstructedView.Of(request, faults)!);
        }

        // The marks' names depend on the points there are at that very moment.
        return request.Keep(
            AddressOf(request, view.Point.Id),
            car => Acts(car, view.Point, way, (dx ?? Length.Zero, dy ?? Length.Zero), standOff ?? Length.Zero)
        );
    }

    private static string AddressOf(CarRequest request, string point) => request.Address($"points/{Uri.EscapeDataString(point)}/drop");

    private static IReadOnlyList<Act> Acts(OpenCar car, FramePoint point, string way, (Length Dx, Length Dy) step, Length standOff)
    {
        var names = MarkNames(car, point.Id).Take(2).ToList();
        var reading = ReadingNames.Next(car);
        var first = MarkAt(point, names[0], way == "offset" ? (-step.Dx, -step.Dy) : null);
        var second = MarkAt(point, names[1], null);
        IReadOnlyList<FramePoint> marks = way == "offset" ? [first] : [first, second];
        IndirectWay how = way switch
        {
            "offset" => new IndirectWay.Offset(names[0], step.Dx, step.Dy),
            "bar" => new IndirectWay.Bar(names[0], names[1], standOff),
            _ => new IndirectWay.Midpoint(names[0], names[1]),
        };
        return
        [
            new Act.PointDrawn(point with { CannotDrop = true }),
            .. marks.Select(m => new Act.PointDrawn(m)),
            new Act.ReadingTaken(new Reading.Indirect(reading, point.Id, how)),
        ];
    }

    /// <summary>A mark of its own on the floor: A.L has Aa.L, Ab.L and so on. It carries nothing and has no partner.</summary>
    private static FramePoint MarkAt(FramePoint point, string name, (Length Dx, Length Dy)? step)
    {
        var sketch = point.Sketch ?? point.Nominal;
        var place = sketch is { X: { } x, Y: { } y }
            ? new Place(x + (step?.Dx ?? Length.Zero), y + (step?.Dy ?? Length.Zero), Length.Zero)
            : null;
        return new FramePoint(name, Sketch: place, Label: Say("obstructed.mark-label", point.Id));
    }

    private static IEnumerable<string> MarkNames(OpenCar car, string point)
    {
        var dot = point.LastIndexOf('.');
        var (stem, side) = dot < 0 ? (point, "") : (point[..dot], point[dot..]);
        return Enumerable
            .Range(0, 26 * 26)
            .Select(i => i < 26 ? $"{(char)('a' + i)}" : $"{(char)('a' + (i / 26) - 1)}{(char)('a' + (i % 26))}")
            .Select(letter => $"{stem}{letter}{side}")
            .Where(name => car.File.Frame.Point(name) is null);
    }
}
