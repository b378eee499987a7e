using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>Chooses the measurements that show best whether a point has arrived.</summary>
internal static class WorkshopGuides
{
    private const int MostLengths = 3;

    // Two lengths that cross at less than this say nearly the same (30 degrees).
    private static readonly double s_leastCrossing = Math.Sin(Math.PI / 6);

    /// <summary>Lengths in plan first, then a height; each from a point that stays where it is.</summary>
    public static IReadOnlyList<Guide> For(
        CarFile car,
        FloorAnswer answer,
        PointEstimate moved,
        Wish wish,
        IEnumerable<PointEstimate> staying
    )
    {
        // A point that is true is a better reference than one that cannot be told yet.
        var doubtful = answer
            .Checks.Where(c => c.Verdict is not (null or Verdict.True))
            .SelectMany(c => c.Points)
            .ToHashSet(StringComparer.Ordinal);
        var candidates = staying.Where(s => s.Id != moved.Id).OrderBy(s => doubtful.Contains(s.Id)).ToList();
        return [.. Lengths(car, moved, wish, candidates, doubtful), .. Rises(moved, wish, candidates)];
    }

    private static IEnumerable<Guide> Lengths(
        CarFile car,
        PointEstimate moved,
        Wish wish,
        List<PointEstimate> staying,
        HashSet<string> doubtful
    )
    {
        if (moved is not { XMetres: { } x, YMetres: { } y })
        {
            yield break;
        }

        var (wantedX, wantedY) = (x + (wish.X.Amount ?? 0), y + (wish.Y.Amount ?? 0));
        if ((wish.X.Amount ?? 0) == 0 && (wish.Y.Amount ?? 0) == 0)
        {
            yield break;
        }

        var measured = MeasuredTogether(car, moved.Id);
        int Rank(PointEstimate s) => (doubtful.Contains(s.Id) ? 0 : 2) + (measured.Contains(s.Id) ? 1 : 0);
        var offers = staying
            .Where(s => s is { XMetres: not null, YMetres: not null })
            .Select(s => (Point: s, Dx: wantedX - s.XMetres!.Value, Dy: wantedY - s.YMetres!.Value, Now: Distance(x, y, s)))
            .Select(o => (o.Point, o.Dx, o.Dy, o.Now, Wanted: Math.Sqrt((o.Dx * o.Dx) + (o.Dy * o.Dy))))
            .Where(o => o.Wanted > 0)
            .OrderByDescending(o => Rank(o.Point))
            .ThenByDescending(o => Math.Abs(o.Wanted - o.Now))
            .ToList();
        var chosen = new List<(double Dx, double Dy, double Length)>();
        foreach (var offer in offers)
        {
            if (chosen.Count < MostLengths && chosen.TrueForAll(c => Crossing(c, (offer.Dx, offer.Dy, offer.Wanted)) >= s_leastCrossing))
            {
                chosen.Add((offer.Dx, offer.Dy, offer.Wanted));
                yield return new Guide(GuideKind.Plan, offer.Point.Id, offer.Now, offer.Wanted);
            }
        }
    }

    private static IEnumerable<Guide> Rises(PointEstimate moved, Wish wish, List<PointEstimate> staying)
    {
        if (moved.ZMetres is not { } z || wish.Z.Amount is not { } up || up == 0)
        {
            yield break;
        }

        var reference = staying
            .Where(s => s.ZMetres is not null)
            .OrderBy(s => s.UzMetres)
            .ThenBy(s => s.Id, StringComparer.Ordinal)
            .FirstOrDefault();
        if (reference is { ZMetres: { } level })
        {
            yield return new Guide(GuideKind.Rise, reference.Id, z - level, z + up - level);
        }
    }

    private static HashSet<string> MeasuredTogether(CarFile car, string point) =>
        car
            .StandingReadings.Where(r => r is Reading.Plan or Reading.Direct && r.Points.Contains(point))
            .SelectMany(r => r.Points)
            .ToHashSet(StringComparer.Ordinal);

    private static double Distance(double x, double y, PointEstimate other)
    {
        var (dx, dy) = (x - other.XMetres!.Value, y - other.YMetres!.Value);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static double Crossing((double Dx, double Dy, double Length) a, (double Dx, double Dy, double Length) b) =>
        Math.Abs((a.Dx * b.Dy) - (a.Dy * b.Dx)) / (a.Length * b.Length);
}
