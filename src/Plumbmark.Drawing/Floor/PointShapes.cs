using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>All that is drawn of one point: its ring, its shift, its mark and its label, as one thing to tap.</summary>
internal static class PointShapes
{
    // 24 px is the least target of WCAG 2.2, 2.5.8; a gloved thumb needs more.
    private const double TouchRadius = 17;

    // A ring larger than this would cover the neighbours; the remark below the drawing tells that it is left out.
    private const double LargestRing = 40;

    // A smaller one would lie hidden under the mark.
    private const double SmallestRing = 7;

    public static Shape Draw(FloorScene scene, IPointLabels labels, Seen seen)
    {
        var at = scene.Figure.Drawn(seen);
        var should = scene.Figure.Should(seen);
        var shapes = new List<Shape>();
        shapes.AddRange(labels.Draw(seen));
        if (Ring(scene, seen) is { } ring)
        {
            shapes.Add(ring);
        }

        if (seen.DeviationMetres * scene.Figure.UnitsPerMetre * scene.Figure.Times > 1)
        {
            shapes.Add(new Shape.Line(should.Moved(-3, 0), should.Moved(3, 0), Palette.Rule));
            shapes.Add(new Shape.Line(should.Moved(0, -3), should.Moved(0, 3), Palette.Rule));
            shapes.Add(new Shape.Line(should, at, Palette.Shift));
        }

        if (scene.Options.Picked?.Contains(seen.Id) == true)
        {
            shapes.Add(new Shape.Circle(at, 13, Palette.Picked));
        }

        shapes.AddRange(PointSigns.Draw(PointSigns.Of(seen), at));
        var title = Title(scene, seen);
        if (scene.Options.HrefOf is not { } hrefOf)
        {
            return new Shape.Group("point", title, shapes);
        }

        shapes.Insert(0, new Shape.Circle(at, TouchRadius, Palette.Touch));
        return new Shape.Link(hrefOf(seen.Id), seen.Id, title, shapes);
    }

    public static bool IsTooUnsureToRing(FloorScene scene, Seen seen) =>
        seen.Spread is { } spread && spread.Ellipse95().AlongMetres * scene.Figure.UnitsPerMetre * scene.Figure.Times > LargestRing;

    public static bool HasRing(FloorScene scene, Seen seen) => Ring(scene, seen) is not null;

    private static Shape? Ring(FloorScene scene, Seen seen)
    {
        if (seen.Spread is not { } spread || scene.View != FloorView.Plan || IsTooUnsureToRing(scene, seen))
        {
            return null;
        }

        var (along, across, turn) = spread.Ellipse95();
        var scale = scene.Figure.UnitsPerMetre * scene.Figure.Times;
        // Up the page is y down in the picture, so the turn changes its sign.
        return along * scale < SmallestRing
            ? null
            : new Shape.Ellipse(scene.Figure.Drawn(seen), along * scale, across * scale, -turn * 180 / Math.PI, Palette.Ring);
    }

    private static string Title(FloorScene scene, Seen seen)
    {
        var label = seen.Placed.Point.Label is { } name ? $" ({name})" : "";
        var picked = scene.Options.Picked?.Contains(seen.Id) == true ? Texts.Say("drawing.point-shapes.picked") : "";
        return $"{seen.Id}{label}: {PointSigns.Words(PointSigns.Of(seen))}{picked}";
    }
}
