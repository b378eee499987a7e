using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>The frame from behind, as from the driver's seat: the car's own left on the left. Lines across that are not parallel are a twist.</summary>
public static class FloorEndDrawing
{
    /// <summary>The end view of a frame and of what its readings say so far.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var seen = FloorHeights.In(FloorView.End, car, answer);
        var title = $"View from behind of {FloorWords.NameOf(car)}";
        return seen.Count == 0
            ? FloorHeights.NoneYet(options, title)
            : FloorBetweenLanes.Draw(FloorView.End, car, answer, options, seen, title);
    }
}
