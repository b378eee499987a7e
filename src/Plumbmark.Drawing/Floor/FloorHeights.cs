using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>What the two views of heights share: only points whose height is known are drawn, the others are named.</summary>
internal static class FloorHeights
{
    public static IReadOnlyList<Seen> In(FloorView view, CarFile car, FloorAnswer answer) =>
        [.. FloorPlaces.Of(car, answer).Select(p => Seen.In(view, p)).OfType<Seen>()];

    public static Picture NoneYet(FloorDrawingOptions options, string title) =>
        FloorWords.Empty(
            options,
            title,
            "No heights yet. Take the height of both points of a pair in front and of a pair at the rear, and twist shows here."
        );
}
