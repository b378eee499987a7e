using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Floor.Changes;

/// <summary>The same frame at two moments: what changed, and whether the change is more than measuring twice would give.</summary>
/// <remarks>
/// Assumes normal errors and two independent measurements: u(change)² = u(before)² + u(after)². Readings that both moments share, and the scale
/// of one tape used for both, would make the true uncertainty smaller, so a change called real is real, and some real ones are missed.
/// Values compared together are allowed for after Holm (1979): p-values in rising order against 0.05/(n - k).
/// </remarks>
public static class FrameComparison
{
    private const double Alpha = 0.05;

    /// <summary>Every value that both answers have, in the order of the later one.</summary>
    public static IReadOnlyList<FrameChange> Of(FloorAnswer before, FloorAnswer after)
    {
        var earlier = Values(before).DistinctBy(v => v.Key).ToDictionary(v => v.Key, StringComparer.Ordinal);
        var both = new List<FrameChange>();
        foreach (var now in Values(after))
        {
            if (earlier.TryGetValue(now.Key, out var then))
            {
                var u = Math.Sqrt((then.U * then.U) + (now.U * now.U));
                both.Add(
                    new FrameChange(now.Kind, now.Points, then.Value, now.Value, u, ChangeFinding.CouldBeNoise, then.Verdict, now.Verdict)
                );
            }
        }

        return Judged(both);
    }

    private static List<FrameChange> Judged(List<FrameChange> changes)
    {
        var order = Enumerable.Range(0, changes.Count).OrderBy(i => PValue(changes[i])).ThenBy(i => i).ToList();
        for (var k = 0; k < order.Count && PValue(changes[order[k]]) <= Alpha / (changes.Count - k); k++)
        {
            changes[order[k]] = changes[order[k]] with { Finding = ChangeFinding.Real };
        }

        return changes;
    }

    private static double PValue(FrameChange change) =>
        change.UMetres > 0 ? 2 * Normal.UpperTail(Math.Abs(change.ChangeMetres) / change.UMetres)
        : change.ChangeMetres == 0 ? 1
        : 0;

    private static IEnumerable<(string Key, string Kind, IReadOnlyList<string> Points, double Value, double U, Verdict? Verdict)> Values(
        FloorAnswer answer
    )
    {
        foreach (var pair in answer.Pairs)
        {
            string[] points = [pair.Left, pair.Right];
            foreach (
                var (kind, value, u) in new[]
                {
                    ("sideShift", pair.SideShiftMetres, pair.USideShiftMetres),
                    ("stagger", pair.StaggerMetres, pair.UStaggerMetres),
                    ("width", pair.WidthMetres, pair.UWidthMetres),
                    ("heightDifference", pair.HeightDifferenceMetres, pair.UHeightDifferenceMetres),
                }
            )
            {
                if (value is { } metres && u is { } standard)
                {
                    var check = answer.Checks.FirstOrDefault(c => c.Kind == kind && c.Points.Contains(pair.Left));
                    yield return (KeyOf(kind, points), kind, points, metres, standard, check?.Verdict);
                }
            }
        }

        var ofPairs = answer.Pairs.Select(p => p.Left).ToHashSet(StringComparer.Ordinal);
        foreach (var check in answer.Checks.Where(c => !(IsOfPairs(c.Kind) && c.Points.Any(ofPairs.Contains))))
        {
            yield return (check.Id, check.Kind, check.Points, check.ValueMetres, check.UMetres, check.Verdict);
        }
    }

    private static bool IsOfPairs(string kind) => kind is "sideShift" or "stagger" or "width" or "heightDifference";

    private static string KeyOf(string kind, IReadOnlyList<string> points) => $"{kind} {string.Join(' ', points)}";
}
