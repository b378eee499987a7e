using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>What every part of one drawing needs to know.</summary>
internal sealed record FloorScene(
    CarFile Car,
    FloorAnswer Answer,
    FloorDrawingOptions Options,
    FloorView View,
    IReadOnlyList<Seen> Seen,
    Figure Figure
)
{
    private readonly Dictionary<string, Seen> _byId = Seen.ToDictionary(s => s.Id, StringComparer.Ordinal);

    /// <summary>The point, or null when this view does not show it.</summary>
    public Seen? Find(string? id) => id is null ? null : _byId.GetValueOrDefault(id);

    /// <summary>Where the point is drawn, or null when this view does not show it.</summary>
    public Spot? SpotOf(string? id) => Find(id) is { } seen ? Figure.Drawn(seen) : null;

    /// <summary>Points on one side of the car from the front to the rear.</summary>
    public IEnumerable<Seen> Side(bool left) =>
        Seen.Where(s => s.Placed.IsLeft == left && !IsCentral(s)).OrderByDescending(s => s.Placed.XMetres);

    /// <summary>Whether the point belongs to neither side.</summary>
    public static bool IsCentral(Seen seen) => PlacedPoint.SideOf(seen.Placed.Point) == 0 && seen.Placed.Point.Mirror is null;
}
