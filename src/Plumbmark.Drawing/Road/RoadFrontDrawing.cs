using Plumbmark.Drawing.Pictures;
using Plumbmark.Engine;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

/// <summary>The front suspension seen from behind, so that the car's own left is on the left: arms, uprights, wheels, the road and the roll centre.</summary>
public static class RoadFrontDrawing
{
    private const double TyreWidthMetres = 0.16;
    private const double UsualRadiusMetres = 0.31;
    private const double Above = 22;
    private const double Tallest = 230;

    /// <summary>The view of an answer.</summary>
    public static Picture Of(RoadAnswer answer, RoadDrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(answer);
        options ??= new RoadDrawingOptions();
        var Title = Texts.Say("drawing.road-front.front-suspension-from-behind");
        return answer.Sketches.Count == 0
            ? RoadLegend.Empty(options, Title, Texts.Say("drawing.road-front.nothing-to-draw-yet-the"))
            : Draw(answer, options, Title);
    }

    private static Picture Draw(RoadAnswer answer, RoadDrawingOptions options, string title)
    {
        var outlines = answer.Sketches.SelectMany(c => Wheel(c, c.Drawn.SpinAxis, c.Drawn.WheelCentre));
        var (view, height) = Elevation.Fit(answer.Sketches, p => (-p.Y, p.Z), new Spot(0, Above), options.Width, Tallest, outlines);
        var shapes = new List<Shape>
        {
            new Shape.Words(new Spot(2, 12), Texts.Say("drawing.road-front.left"), Palette.Name),
            new Shape.Words(new Spot(options.Width - 2, 12), Texts.Say("drawing.road-front.right"), Palette.Name, Anchor.End),
        };
        shapes.AddRange(Ground(answer, view, options));
        foreach (var corner in answer.Sketches)
        {
            var name = RoadNames.Of(corner.Side);
            var drawn = Wheel(corner, corner.Drawn.SpinAxis, corner.Drawn.WheelCentre).Select(view.At).ToList();
            var axis = corner.Drawn.SpinAxis + (view.Times * (corner.Found.SpinAxis - corner.Drawn.SpinAxis));
            var centre = corner.Drawn.WheelCentre + (view.Times * (corner.Found.WheelCentre - corner.Drawn.WheelCentre));
            var found = Wheel(corner, axis.Direction, centre).Select(view.At).ToList();
            shapes.Add(
                new Shape.Group(
                    $"drawn-{name}",
                    Texts.Say("drawing.road-front.side-as-drawn", name),
                    [.. view.Links(corner, true, Palette.Should), new Shape.Path(drawn, true, Palette.Should)]
                )
            );
            shapes.Add(
                new Shape.Group(
                    $"found-{name}",
                    Texts.Say("drawing.road-front.side-as-found", name),
                    [.. view.Links(corner, false, Palette.Frame), new Shape.Path(found, true, Palette.Frame)]
                )
            );
        }

        var remarks = view.Times > 1 ? new[] { Texts.Say("drawing.road-front.deviations-drawn-times", view.Times) } : [];
        var (legend, bottom) = RoadLegend.Draw(
            Above + height,
            options,
            remarks,
            (Palette.Frame, Texts.Say("drawing.road-front.as-found")),
            (Palette.Should, Texts.Say("drawing.road-front.as-drawn"))
        );
        return new Picture(options.Width, bottom, title, $"{answer.Headline} {string.Join(' ', remarks)}", [.. shapes, .. legend]);
    }

    private static IEnumerable<Shape> Ground(RoadAnswer answer, Elevation view, RoadDrawingOptions options)
    {
        if (answer.Sketches.FirstOrDefault(s => s.LoadedRadiusMetres is not null) is not { LoadedRadiusMetres: { } radius } corner)
        {
            yield break;
        }

        var road = view.At(new(0, 0, corner.Drawn.WheelCentre.Z - radius));
        yield return new Shape.Line(new Spot(4, road.Y), new Spot(options.Width - 4, road.Y), Palette.Rule);
        foreach (var ground in answer.Ground.Where(g => double.IsFinite(g.RollCentre)).Take(1))
        {
            var centre = view.At(new(0, 0, corner.Drawn.WheelCentre.Z - radius + ground.RollCentreDrawn));
            yield return new Shape.Circle(centre, 3.5, Palette.Ring);
            yield return new Shape.Words(centre.Moved(7, 4), Texts.Say("drawing.road-front.roll-centre"), Palette.Remark);
        }
    }

    // The tyre's outline in the plane across the car: corners of a rectangle along the wheel's plane.
    private static IEnumerable<Vector3> Wheel(CornerSketch corner, Vector3 spin, Vector3 centre)
    {
        var across = new Vector3(0, spin.Y, spin.Z).Direction;
        var down = Vector3.Cross(Vector3.Forward, across);
        var radius = corner.LoadedRadiusMetres ?? UsualRadiusMetres;
        foreach (var (a, d) in new[] { (-0.5, -1.0), (0.5, -1.0), (0.5, 1.0), (-0.5, 1.0) })
        {
            yield return centre + (a * TyreWidthMetres * across) + (d * radius * down);
        }
    }
}
