using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>What stands below a drawing: the exaggeration, a rule to measure by, and the signs that occur in it.</summary>
internal sealed class Legend(FloorScene scene, int namesLeftOut)
{
    private const double Row = 20;
    private const double LineRow = 16;
    private readonly List<Shape> _shapes = [];

    /// <summary>The shapes and where they end.</summary>
    public (IReadOnlyList<Shape> Shapes, double Bottom) Draw(double top)
    {
        var y = top + 10;
        foreach (var line in Remarks().SelectMany(r => Wrapped.Lines(r, Palette.Remark, scene.Options.Width - 4)))
        {
            _shapes.Add(new Shape.Words(new Spot(2, y), line, Palette.Remark));
            y += LineRow;
        }

        if (!scene.Options.HasLegend)
        {
            return (_shapes, y);
        }

        return Signs(y, across: 2);
    }

    /// <summary>The signs alone, so many side by side, and where they end.</summary>
    public (IReadOnlyList<Shape> Shapes, double Bottom) Signs(double top, int across)
    {
        var signs = scene.Seen.Select(PointSigns.Of).Distinct().Order().ToList();
        var entries = signs.Select(s => (Action<Spot>)(at => Sign(at, s))).Concat(Lines()).ToList();
        for (var i = 0; i < entries.Count; i++)
        {
            entries[i](new Spot(2 + (i % across * scene.Options.Width / across), top + (i / across * Row) + 4));
        }

        return (_shapes, top + ((entries.Count + across - 1) / across * Row) + 2);
    }

    private IEnumerable<string> Remarks()
    {
        var measured = scene.Seen.Where(s => s.IsMeasured).ToList();
        if (measured.Any(s => s.DeviationMetres > 0))
        {
            yield return Texts.Say("drawing.legend.deviations-drawn-times", scene.Figure.Times);
        }

        if (scene.View == FloorView.Plan && measured.Count > 0)
        {
            if (measured.Exists(s => PointShapes.HasRing(scene, s)))
            {
                yield return Texts.Say("drawing.legend.ring-where-the-point-is", scene.Figure.Times);
            }

            var unsure = measured.Count(s => PointShapes.IsTooUnsureToRing(scene, s));
            if (unsure > 0)
            {
                yield return Texts.Say("drawing.legend.not-sure-enough-for-a", Points(unsure));
            }
        }

        var listed = scene.Seen.Count(s => s.Placed.Source == PlaceSource.Listed);
        if (listed > 0)
        {
            yield return listed == scene.Seen.Count
                ? Texts.Say("drawing.legend.no-places-sketched-yet-the")
                : Texts.Say("drawing.legend.without-a-place-drawn-behind", Points(listed));
        }

        if (scene.View != FloorView.Plan && scene.Car.Frame.Points.Count > scene.Seen.Count)
        {
            yield return Texts.Say("drawing.legend.without-a-height-yet", Points(scene.Car.Frame.Points.Count - scene.Seen.Count));
        }

        if (namesLeftOut > 0)
        {
            yield return Texts.Say("drawing.legend.names-left-out-for-want", namesLeftOut);
        }
    }

    private static string Points(int count) => count == 1 ? "1 point" : Texts.Say("drawing.legend.points", count);

    private IEnumerable<Action<Spot>> Lines()
    {
        if (scene.Seen.Any(s => s.DeviationMetres > 0))
        {
            yield return at =>
                Line(
                    at,
                    Palette.Frame,
                    scene.View == FloorView.Side ? Texts.Say("drawing.legend.left-side-as-it-is") : Texts.Say("drawing.legend.as-it-is")
                );
            yield return at => Line(at, Palette.Should, Texts.Say("drawing.legend.as-it-should-be"));
        }

        if (scene.View == FloorView.Side)
        {
            yield return at => Line(at, Palette.FarSide, Texts.Say("drawing.legend.right-side"));
            yield break;
        }

        if (scene.Answer.Suspects.Count > 0)
        {
            yield return at => Line(at, Palette.Doubted, Texts.Say("drawing.legend.doubted-reading"));
        }

        if (scene.Answer.Next.Count > 0)
        {
            yield return at => Line(at, Palette.Next, Texts.Say("drawing.legend.next-best-reading"));
        }
    }

    private void Sign(Spot at, PointSign sign)
    {
        _shapes.AddRange(PointSigns.Draw(sign, at.Moved(11, 0)));
        _shapes.Add(new Shape.Words(at.Moved(26, 4), PointSigns.Words(sign), Palette.Note));
    }

    private void Line(Spot at, Ink ink, string words)
    {
        _shapes.Add(new Shape.Line(at, at.Moved(22, 0), ink));
        _shapes.Add(new Shape.Words(at.Moved(26, 4), words, Palette.Note));
    }
}
