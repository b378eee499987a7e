using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>A view with left on the left: the frame in the middle, the names in a lane on each side, the legend below.</summary>
internal static class FloorBetweenLanes
{
    private const double Header = 26;

    public static Picture Draw(
        FloorView view,
        CarFile car,
        FloorAnswer answer,
        FloorDrawingOptions options,
        IReadOnlyList<Seen> seen,
        string title
    )
    {
        var left = PointLabels.LaneWidth(seen, isLeft: true, options.TallestFrame);
        var right = PointLabels.LaneWidth(seen, isLeft: false, options.TallestFrame);
        var box = new Spot(left, Header);
        var (figure, fitted) = Figure.Fit(seen, box, options.Width - left - right, options.TallestFrame, FloorWords.LimitMetres(answer));
        var scene = new FloorScene(car, answer, options, view, seen, figure);
        // A wide short frame still needs room for its labels.
        var height = Math.Min(options.TallestFrame, Math.Max(fitted, PointLabels.HeightFor(seen)));
        scene = scene with { Figure = figure with { Origin = figure.Origin.Moved(0, (height - fitted) / 2) } };

        var labels = new PointLabels(scene, Header, Header + height);
        var shapes = new List<Shape>();
        shapes.AddRange(CentreLine(scene, Header + height));
        shapes.AddRange(ReadingLines.Measured(scene));
        shapes.AddRange(FrameLines.Draw(scene));
        shapes.AddRange(ReadingLines.Next(scene));
        shapes.AddRange(ReadingLines.Doubted(scene));
        shapes.AddRange(seen.Select(s => PointShapes.Draw(scene, labels, s)));
        var bottom = Header + height + 4;
        if (options.HasLegend)
        {
            var (legend, end) = new Legend(scene, labels.LeftOut).Draw(bottom + 4);
            shapes.AddRange(legend);
            bottom = end;
        }

        return new Picture(options.Width, bottom, title, FloorWords.Describe(scene), shapes);
    }

    private static IEnumerable<Shape> CentreLine(FloorScene scene, double bottom)
    {
        var x = scene.Figure.At(0, 0).X;
        yield return new Shape.Line(new Spot(x, Header), new Spot(x, bottom), Palette.Centre);
        Spot[] arrow = [new(x - 4, Header), new(x, Header - 8), new(x + 4, Header)];
        yield return new Shape.Path(arrow, true, Palette.Rule);
        var up = scene.View == FloorView.Plan ? "front" : "up";
        yield return new Shape.Words(new Spot(x, 12), up, Palette.Remark, Anchor.Middle);
        yield return new Shape.Words(new Spot(2, 12), "left", Palette.Remark);
        yield return new Shape.Words(new Spot(scene.Options.Width - 2, 12), "right", Palette.Remark, Anchor.End);
    }
}
