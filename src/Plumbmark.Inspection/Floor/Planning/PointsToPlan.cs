using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Which points of a very large frame a plan is made for.</summary>
internal static class PointsToPlan
{
    private const int Most = 48; // a plan for so many takes well under a second

    /// <summary>The points that are left aside; none on a frame of the usual size. A point and its partner go together.</summary>
    public static IReadOnlyList<FramePoint> LeftAside(IReadOnlyList<FramePoint> points)
    {
        if (points.Count <= Most)
        {
            return [];
        }

        var together = points
            .GroupBy(p => Min(p.Id, p.Mirror ?? p.Id), StringComparer.Ordinal)
            .OrderByDescending(g => X(g.First()))
            .ToList();
        var first = together.Where(g => g.Any(Roles.Matters)).ToList();
        var planned = Spread(first, Most / 2);
        planned.AddRange(Spread([.. together.Except(first)], (Most / 2) - planned.Count));
        return [.. points.Except(planned.SelectMany(g => g).Take(Most))];
    }

    private static string Min(string a, string b) => string.CompareOrdinal(a, b) <= 0 ? a : b;

    private static double X(FramePoint point) => (point.Sketch?.X ?? point.Nominal?.X)?.Metres ?? 0;

    /// <summary>So many of them, evenly, the first and the last among them.</summary>
    private static List<T> Spread<T>(List<T> all, int most) =>
        all.Count <= most ? all
        : most <= 1 ? [.. all.Take(most)]
        : [.. Enumerable.Range(0, most).Select(i => all[i * (all.Count - 1) / (most - 1)])];
}
