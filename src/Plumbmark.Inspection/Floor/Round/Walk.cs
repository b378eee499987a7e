using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Round;

/// <summary>Where points come on a walk round the frame, by their sketches or by the book; without either, by the order of the list.</summary>
internal sealed class Walk
{
    private readonly Dictionary<string, (double FromFront, bool IsLeft)> _places = new(StringComparer.Ordinal);

    public Walk(CarFile car)
    {
        var places = car.Frame.Points.Select(p => (Point: p, Place: p.Sketch ?? p.Nominal)).ToList();
        var hasPlaces = places.Exists(p => p.Place?.X is not null);
        for (var i = 0; i < places.Count; i++)
        {
            var (point, place) = places[i];
            // A point without a place goes behind those that have one; forward is +x, so the front comes first with -x.
            var fromFront =
                place?.X is { } x ? -x.Metres
                : hasPlaces ? 1e3 + i
                : i;
            var isLeft =
                point.Id.EndsWith(".L", StringComparison.Ordinal)
                || (!point.Id.EndsWith(".R", StringComparison.Ordinal) && place?.Y is { } y && y.Metres > 0);
            _places[point.Id] = (fromFront, isLeft);
        }
    }

    public bool IsLeft(string id) => _places.TryGetValue(id, out var place) && place.IsLeft;

    public double FromFront(string id) => _places.TryGetValue(id, out var place) ? place.FromFront : double.MaxValue;

    /// <summary>Down the left side, then up the right one.</summary>
    public double AroundFrom(string id)
    {
        const double FurtherThanAnyFrame = 1e6; // metres
        return IsLeft(id) ? FromFront(id) : FurtherThanAnyFrame - FromFront(id);
    }

    /// <summary>The end of a line that is nearer to the front.</summary>
    public double FrontOf(RoundLine line) => Math.Min(FromFront(line.From), FromFront(line.To ?? line.From));

    /// <summary>The other end.</summary>
    public double RearOf(RoundLine line) => Math.Max(FromFront(line.From), FromFront(line.To ?? line.From));
}
