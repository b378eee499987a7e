using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

/// <summary>One front corner seen from its own outside: the steering axis' lean, its trail on the road, and the wheel. Front is always to the left, so the right side is seen through the car.</summary>
public static class RoadSideDrawing
{
    private const double UsualRadiusMetres = 0.31;
    private const double Above = 22;
    private const double Tallest = 250;
    private const int CircleSpots = 48;

    /// <summary>The view of one side of an answer.</summary>
    public static Picture Of(RoadAnswer answer, Side side, RoadDrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(answer);
        options ??= new RoadDrawingOptions();
        var title = Texts.Say(
            "drawing.road-side.front-wheel-from-the-side",
            side == Side.Left ? Texts.Say("drawing.road-side.left") : Texts.Say("drawing.road-side.right")
        );
        return answer.Sketches.FirstOrDefault(s => s.Side == side) is { } corner
            ? Draw(answer, corner, options, title)
            : RoadLegend.Empty(options, title, Texts.Say("drawing.road-side.nothing-to-draw-yet-the"));
    }

    private static Picture Draw(RoadAnswer answer, CornerSketch corner, RoadDrawingOptions options, string title)
    {
        var radius = corner.LoadedRadiusMetres ?? UsualRadiusMetres;
        var centre = corner.Drawn.WheelCentre;
        Vector3[] outline = [centre + new Vector3(radius, 0, radius), centre - new Vector3(radius, 0, radius)];
        var (view, height) = Elevation.Fit([corner], p => (-p.X, p.Z), new Spot(0, Above), options.Width, Tallest, outline);
        var road = centre.Z - radius;
        var shapes = new List<Shape>
        {
            new Shape.Words(new Spot(2, 12), "← front", Palette.Remark),
            new Shape.Path(Circle(view.At(centre), radius * view.UnitsPerMetre), true, Palette.FarSide),
            new Shape.Line(new Spot(4, view.At(new(0, 0, road)).Y), new Spot(options.Width - 4, view.At(new(0, 0, road)).Y), Palette.Rule),
            new Shape.Line(view.At(new(centre.X, 0, road)), view.At(centre), Palette.Leader),
        };
        shapes.Add(
            new Shape.Group(
                "drawn",
                Texts.Say("drawing.road-side.as-drawn"),
                [.. view.Links(corner, true, Palette.Should), Axis(view, corner.Drawn, corner.Drawn, road, Palette.Should)]
            )
        );
        shapes.Add(
            new Shape.Group(
                "found",
                Texts.Say("drawing.road-side.as-found"),
                [.. view.Links(corner, false, Palette.Frame), Axis(view, corner.Drawn, corner.Found, road, Palette.Centre)]
            )
        );
        var castor = answer.Figures.FirstOrDefault(f => f.Kind == FigureKind.Castor && f.Side == corner.Side);
        string[] remarks =
        [
            .. castor is null
                ? []
                : new[] { Texts.Say("drawing.road-side.castor-drawn", RoadDisplay.Signed(castor.Value), RoadDisplay.Signed(castor.Drawn)) },
            .. view.Times > 1 ? [Texts.Say("drawing.road-side.deviations-drawn-times", view.Times)] : Array.Empty<string>(),
        ];
        var (legend, bottom) = RoadLegend.Draw(
            Above + height,
            options,
            remarks,
            (Palette.Frame, Texts.Say("drawing.road-side.as-found")),
            (Palette.Should, Texts.Say("drawing.road-side.as-drawn")),
            (Palette.Centre, Texts.Say("drawing.road-side.steering-axis-to-the-road"))
        );
        return new Picture(options.Width, bottom, title, string.Join(' ', remarks), [.. shapes, .. legend]);
    }

    // The steering axis from above the upper joint down to the road.
    private static Shape.Line Axis(Elevation view, CornerSketch.Places drawn, CornerSketch.Places found, double road, Ink ink)
    {
        var upper = drawn.UpperJoint + (view.Times * (found.UpperJoint - drawn.UpperJoint));
        var lower = drawn.LowerJoint + (view.Times * (found.LowerJoint - drawn.LowerJoint));
        var along = upper - lower;
        Vector3 At(double height) => lower + (((height - lower.Z) / along.Z) * along);
        return new(view.At(At(upper.Z + 0.05)), view.At(At(road)), ink);
    }

    private static List<Spot> Circle(Spot centre, double radius) =>
        [
            .. Enumerable
                .Range(0, CircleSpots)
                .Select(i => 2 * Math.PI * i / CircleSpots)
                .Select(a => new Spot(centre.X + (radius * Math.Cos(a)), centre.Y + (radius * Math.Sin(a)))),
        ];
}
