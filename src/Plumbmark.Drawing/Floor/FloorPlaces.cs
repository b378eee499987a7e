using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

/// <summary>Finds a place to draw for every point: measured, else sketched, else from the book, else listed behind the rest.</summary>
internal static class FloorPlaces
{
    // A check on more points than a pair (a twist, a sag) says nothing about one of them.
    private const int MostPointsOfAPointCheck = 2;

    public static IReadOnlyList<PlacedPoint> Of(CarFile car, FloorAnswer answer)
    {
        var estimates = answer.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var verdicts = VerdictsOf(answer);
        var fit = Fit(car.Frame.Points, estimates);
        var found = new Dictionary<string, PlacedPoint>(StringComparer.Ordinal);
        foreach (var point in car.Frame.Points)
        {
            var estimate = estimates.GetValueOrDefault(point.Id);
            if (PlaceOf(point, estimate, fit) is { } place)
            {
                found[point.Id] = new PlacedPoint(
                    point,
                    place.X,
                    place.Y,
                    place.Source,
                    estimate,
                    verdicts.TryGetValue(point.Id, out var verdict) ? verdict : null
                );
            }
        }

        var listed = ListedBehind(car.Frame.Points, found, estimates, verdicts).ToDictionary(p => p.Id, StringComparer.Ordinal);
        return [.. car.Frame.Points.Select(p => found.TryGetValue(p.Id, out var placed) ? placed : listed[p.Id])];
    }

    private static (double X, double Y, PlaceSource Source)? PlaceOf(FramePoint point, PointEstimate? estimate, SketchFit fit)
    {
        if (estimate is { XMetres: { } x, YMetres: { } y })
        {
            return (x, y, PlaceSource.Measured);
        }

        if (PlanOf(point.Sketch) is { } sketch)
        {
            var (sx, sy) = fit.ToMeasured(sketch.X, sketch.Y);
            return (sx, sy, PlaceSource.Sketch);
        }

        return PlanOf(point.Nominal) is { } book ? (book.X, book.Y, PlaceSource.Book) : null;
    }

    private static (double X, double Y)? PlanOf(Place? place) => place is { X: { } x, Y: { } y } ? (x.Metres, y.Metres) : null;

    private static SketchFit Fit(IReadOnlyList<FramePoint> points, Dictionary<string, PointEstimate> estimates)
    {
        var pairs = new List<((double X, double Y), (double X, double Y))>();
        foreach (var point in points)
        {
            if (PlanOf(point.Sketch) is { } sketch && estimates.GetValueOrDefault(point.Id) is { XMetres: { } x, YMetres: { } y })
            {
                pairs.Add((sketch, (x, y)));
            }
        }

        return SketchFit.Of(pairs);
    }

    private static Dictionary<string, Verdict> VerdictsOf(FloorAnswer answer)
    {
        var worst = new Dictionary<string, Verdict>(StringComparer.Ordinal);
        foreach (var check in answer.Checks.Where(c => c.Points.Count <= MostPointsOfAPointCheck))
        {
            foreach (var point in check.Points)
            {
                if (check.Verdict is { } verdict && (!worst.TryGetValue(point, out var before) || Gravity(verdict) > Gravity(before)))
                {
                    worst[point] = verdict;
                }
            }
        }

        return worst;
    }

    private static int Gravity(Verdict verdict) =>
        verdict switch
        {
            Verdict.True => 0,
            Verdict.CannotTellYet => 1,
            Verdict.Out => 2,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>Points with no place stand in rows behind the others, partners side by side, in the order of the list.</summary>
    private static IEnumerable<PlacedPoint> ListedBehind(
        IReadOnlyList<FramePoint> points,
        Dictionary<string, PlacedPoint> found,
        Dictionary<string, PointEstimate> estimates,
        Dictionary<string, Verdict> verdicts
    )
    {
        const double UsualHalfWidthMetres = 0.35; // only for drawing: a narrow ladder frame
        var rear = found.Count == 0 ? 0 : found.Values.Min(p => p.XMetres);
        var length = found.Count == 0 ? 0 : found.Values.Max(p => p.XMetres) - rear;
        var half = found.Count == 0 ? UsualHalfWidthMetres : Math.Max(0.1, found.Values.Max(p => Math.Abs(p.YMetres)) * 0.7);
        var step = Math.Max(0.25, length / 12);
        var rows = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var point in points.Where(p => !found.ContainsKey(p.Id)))
        {
            var row = point.Mirror is { } mirror && rows.TryGetValue(mirror, out var partner) ? partner : rows.Values.Distinct().Count();
            var side =
                PlacedPoint.SideOf(point) is var named and not 0 ? named
                : point.Mirror is null ? 0
                : rows.ContainsValue(row) ? -1
                : 1;
            rows[point.Id] = row;
            yield return new PlacedPoint(
                point,
                rear - (step * (row + 1)),
                side * half,
                PlaceSource.Listed,
                estimates.GetValueOrDefault(point.Id),
                verdicts.TryGetValue(point.Id, out var verdict) ? verdict : null
            );
        }
    }
}
