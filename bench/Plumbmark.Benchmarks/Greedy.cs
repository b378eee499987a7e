using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Benchmarks;

/// <summary>Which readings to take: each time the one that lowers the sum of all points' variances most.</summary>
internal static class Greedy
{
    public static List<Observation> Choose(NetworkDesign design, IReadOnlyList<Observation> candidates, int count)
    {
        var pool = new DesignPool(design, candidates);
        var left = Enumerable.Range(0, candidates.Count).ToHashSet();
        var chosen = new List<Observation>();
        while (chosen.Count < count)
        {
            var best = left.MaxBy(pool.TraceReduction);
            pool.Take(best);
            left.Remove(best);
            chosen.Add(candidates[best]);
        }

        return chosen;
    }
}
