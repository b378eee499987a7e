using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>The frame from the car's left: front to the left. The right side is seen through the left one, dashed.</summary>
public static class FloorSideDrawing
{
    private const double Above = 34;
    private const double Below = 20;

    // Room for the deviations above and below the frame, as far as the drawing may be tall.
    private const double MostReach = 48;
    private const double LeastReach = 22;

    /// <summary>The side view of a frame and of what its readings say so far.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var seen = FloorPlaces.Of(car, answer).Select(p => Seen.In(FloorView.Side, p)).OfType<Seen>().ToList();
        var title = Texts.Say("drawing.floor-side.side-view-of", FloorWords.NameOf(car));
        var NoneYet = Texts.Say("drawing.floor-side.no-heights-yet-take-the");
        return seen.Count == 0 ? FloorWords.Empty(options, title, NoneYet) : Draw(car, answer, options, seen, title);
    }

    private static Picture Draw(CarFile car, FloorAnswer answer, FloorDrawingOptions options, IReadOnlyList<Seen> seen, string title)
    {
        var reach = Math.Clamp(options.TallestFrame * 0.4, LeastReach, MostReach);
        var box = new Figure.Box(new Spot(0, Above), options.Width, options.TallestFrame, reach, ShowsCentre: false);
        var (figure, height) = Figure.Fit(seen, box, FloorWords.RangeMetres(answer, options));
        var scene = new FloorScene(car, answer, options, FloorView.Side, seen, figure);
        var bottom = Above + height + Below;
        var labels = new SideLabels(scene, Above, Above + height);
        var shapes = new List<Shape>
        {
            new Shape.Words(new Spot(2, 12), "← front", Palette.Remark),
            new Shape.Words(
                new Spot(options.Width - 2, 12),
                Texts.Say("drawing.floor-side.left-side-above-right-side"),
                Palette.Remark,
                Anchor.End
            ),
        };
        shapes.AddRange(FrameLines.Draw(scene));
        shapes.AddRange(seen.Select(s => PointShapes.Draw(scene, labels, s)));
        var (legend, end) = new Legend(scene, labels.LeftOut).Draw(bottom);
        shapes.AddRange(legend);
        return new Picture(options.Width, end, title, FloorWords.Describe(scene), shapes);
    }
}
