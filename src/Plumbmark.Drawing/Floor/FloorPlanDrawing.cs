using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>The frame from above: front up the page, the car's own left on the left. It draws with nothing but sketches, or without them.</summary>
public static class FloorPlanDrawing
{
    private const double Header = 26;

    /// <summary>The plan view of a frame and of what its readings say so far.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var seen = FloorPlaces.Of(car, answer).Select(p => Seen.In(FloorView.Plan, p)).OfType<Seen>().ToList();
        var title = Texts.Say("drawing.floor-plan.plan-view-of", FloorWords.NameOf(car));
        return seen.Count == 0
            ? FloorWords.Empty(options, title, Texts.Say("drawing.floor-plan.no-points-yet-add-points"))
            : Draw(car, answer, options, seen, title);
    }

    /// <summary>The signs of that drawing explained in a strip, to stand across a page.</summary>
    /// <param name="car">The car.</param>
    /// <param name="answer">What its readings say.</param>
    /// <param name="width">How wide the strip is, picture units.</param>
    public static Picture Signs(CarFile car, FloorAnswer answer, double width)
    {
        const double Widest = 158; // the longest words with their sign, and a gap
        var seen = FloorPlaces.Of(car, answer).Select(p => Seen.In(FloorView.Plan, p)).OfType<Seen>().ToList();
        var scene = new FloorScene(
            car,
            answer,
            new FloorDrawingOptions(Width: width),
            FloorView.Plan,
            seen,
            new Figure(new Spot(0, 0), 1, 1)
        );
        var (shapes, bottom) = new Legend(scene, namesLeftOut: 0).Signs(8, Math.Max(1, (int)(width / Widest)));
        return new Picture(width, bottom, "Signs", "", shapes);
    }

    private static Picture Draw(CarFile car, FloorAnswer answer, FloorDrawingOptions options, IReadOnlyList<Seen> seen, string title)
    {
        var left = PointLabels.LaneWidth(seen, isLeft: true, options.TallestFrame);
        var right = PointLabels.LaneWidth(seen, isLeft: false, options.TallestFrame);
        var box = new Figure.Box(new Spot(left, Header), options.Width - left - right, options.TallestFrame);
        var (figure, fitted) = Figure.Fit(seen, box, FloorWords.RangeMetres(answer, options));
        var scene = new FloorScene(car, answer, options, FloorView.Plan, seen, figure);
        // A wide short frame still needs room for its labels.
        var height = Math.Min(options.TallestFrame, Math.Max(fitted, PointLabels.HeightFor(seen)));
        scene = scene with { Figure = figure with { Origin = figure.Origin.Moved(0, (height - fitted) / 2) } };

        var labels = new PointLabels(scene, Header, Header + height);
        var shapes = new List<Shape>();
        shapes.AddRange(CentreLine(scene, Header + height));
        shapes.AddRange(ReadingLines.Measured(scene));
        shapes.AddRange(FrameLines.Draw(scene));
        var taken = labels.Patches.ToList();
        shapes.AddRange(ReadingLines.Next(scene, taken));
        shapes.AddRange(ReadingLines.Doubted(scene, taken));
        shapes.AddRange(seen.Select(s => PointShapes.Draw(scene, labels, s)));
        var bottom = Header + height + 4;
        var (legend, end) = new Legend(scene, labels.LeftOut).Draw(bottom + 4);
        shapes.AddRange(legend);
        return new Picture(options.Width, end, title, FloorWords.Describe(scene), shapes);
    }

    private static IEnumerable<Shape> CentreLine(FloorScene scene, double bottom)
    {
        var x = scene.Figure.At(0, 0).X;
        yield return new Shape.Line(new Spot(x, Header), new Spot(x, bottom), Palette.Centre);
        Spot[] arrow = [new(x - 4, Header), new(x, Header - 8), new(x + 4, Header)];
        yield return new Shape.Path(arrow, true, Palette.Rule);
        yield return new Shape.Words(new Spot(x, 12), Texts.Say("drawing.floor-plan.front"), Palette.Remark, Anchor.Middle);
        yield return new Shape.Words(new Spot(2, 12), Texts.Say("drawing.floor-plan.left"), Palette.Remark);
        yield return new Shape.Words(
            new Spot(scene.Options.Width - 2, 12),
            Texts.Say("drawing.floor-plan.right"),
            Palette.Remark,
            Anchor.End
        );
    }
}
