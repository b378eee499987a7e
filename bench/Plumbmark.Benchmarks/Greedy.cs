using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Benchmarks;

/// <summary>Which readings to take: each time the one that lowers the sum of all points' variances most.</summary>
internal static class Greedy
{
    public static List<Observation> Choose(NetworkDesign design, IReadOnlyList<Observation> candidates, int count)
    {
        var left = candidates.ToList();
        var chosen = new List<Observation>();
        while (chosen.Count < count)
        {
            var best = left.MaxBy(c => design.Effect(c).TraceReduction())!;
            design = design.With(best);
            left.Remove(best);
            chosen.Add(best);
        }

        return chosen;
    }
}
