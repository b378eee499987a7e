using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>A point of the frame with the place where it is drawn, in metres on the car's axes.</summary>
/// <param name="Point">The point.</param>
/// <param name="XMetres">Forward.</param>
/// <param name="YMetres">To the left of the centre line.</param>
/// <param name="Source">What says so.</param>
/// <param name="Estimate">What the readings tell of it; null when they tell nothing.</param>
/// <param name="Verdict">The worst verdict of the checks on this point or its pair; null when no check has a limit.</param>
internal sealed record PlacedPoint(
    FramePoint Point,
    double XMetres,
    double YMetres,
    PlaceSource Source,
    PointEstimate? Estimate,
    Verdict? Verdict
)
{
    public string Id => Point.Id;

    /// <summary>Whether it is on the car's left: by its name, else by its place.</summary>
    public bool IsLeft =>
        SideOf(Point) switch
        {
            > 0 => true,
            < 0 => false,
            _ => YMetres > 0,
        };

    /// <summary>1 for a point named left, -1 for one named right, 0 for one whose name does not say.</summary>
    public static int SideOf(FramePoint point) =>
        point.Id.EndsWith(".L", StringComparison.Ordinal) ? 1
        : point.Id.EndsWith(".R", StringComparison.Ordinal) ? -1
        : 0;
}
