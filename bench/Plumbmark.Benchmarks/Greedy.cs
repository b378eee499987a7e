using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Benchmarks;

/// <summary>Which readings to take: each time the one that lowers the sum of all points' variances most.</summary>
internal static class Greedy
{
    public static List<Observation> Choose(NetworkDesign design, IReadOnlyList<Observation> candidates, int count)
    {
        var aimed = new AimedDesign(design, candidates);
        aimed.Aim([.. Enumerable.Range(0, design.Count).Select(i => Unit(design.Count, i))]);
        var falls = new double[design.Count];
        double SumOfFalls(int candidate)
        {
            aimed.WhenTaken(candidate, falls);
            return falls.Sum();
        }

        var left = Enumerable.Range(0, candidates.Count).ToHashSet();
        var chosen = new List<Observation>();
        while (chosen.Count < count)
        {
            var best = left.MaxBy(SumOfFalls);
            aimed.Take(best);
            left.Remove(best);
            chosen.Add(candidates[best]);
        }

        return chosen;
    }

    private static double[] Unit(int count, int at)
    {
        var unit = new double[count];
        unit[at] = 1;
        return unit;
    }
}
