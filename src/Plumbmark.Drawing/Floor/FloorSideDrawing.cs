using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>The frame from the car's left: front to the left. The right side is seen through the left one, dashed.</summary>
public static class FloorSideDrawing
{
    private const double Lane = 30;

    /// <summary>The side view of a frame and of what its readings say so far.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var seen = FloorHeights.In(FloorView.Side, car, answer);
        var title = $"Side view of {FloorWords.NameOf(car)}";
        return seen.Count == 0 ? FloorHeights.NoneYet(options, title) : Draw(car, answer, options, seen, title);
    }

    private static Picture Draw(CarFile car, FloorAnswer answer, FloorDrawingOptions options, IReadOnlyList<Seen> seen, string title)
    {
        var limit = FloorWords.LimitMetres(answer);
        var corner = new Spot(0, Lane);
        var (figure, height) = Figure.Fit(seen, corner, options.Width, options.TallestFrame, limit, showsCentre: false);
        var scene = new FloorScene(car, answer, options, FloorView.Side, seen, figure);
        var bottom = Lane + height + Lane;
        var labels = new SideLabels(scene, Lane, Lane + height);
        var shapes = new List<Shape>
        {
            new Shape.Words(new Spot(2, 12), "← front", Palette.Remark),
            new Shape.Words(new Spot(options.Width - 2, 12), "left side above, right side below", Palette.Remark, Anchor.End),
        };
        shapes.AddRange(FrameLines.Draw(scene));
        shapes.AddRange(seen.Select(s => PointShapes.Draw(scene, labels, s)));
        if (options.HasLegend)
        {
            var (legend, end) = new Legend(scene, labels.LeftOut).Draw(bottom);
            shapes.AddRange(legend);
            bottom = end;
        }

        return new Picture(options.Width, bottom, title, FloorWords.Describe(scene), shapes);
    }
}
