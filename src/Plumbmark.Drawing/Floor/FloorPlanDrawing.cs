using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>The frame from above: front up the page, the car's own left on the left. It draws with nothing but sketches, or without them.</summary>
public static class FloorPlanDrawing
{
    /// <summary>The plan view of a frame and of what its readings say so far.</summary>
    public static Picture Of(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null)
    {
        options ??= new FloorDrawingOptions();
        var seen = FloorPlaces.Of(car, answer).Select(p => Seen.In(FloorView.Plan, p)).OfType<Seen>().ToList();
        var title = $"Plan view of {FloorWords.NameOf(car)}";
        return seen.Count == 0
            ? FloorWords.Empty(options, title, "No points yet. Add points, and the frame is drawn here.")
            : FloorBetweenLanes.Draw(FloorView.Plan, car, answer, options, seen, title);
    }
}
