using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Finds readings that would tie floating points: greedily the one that the loosest motion would change most.</summary>
internal static class TieSearch
{
    public static IReadOnlyList<Tie> Of(CompiledNetwork network, double[] x, List<NetworkNode> loose, double[][] nullSpace)
    {
        const double NoGrip = 1e-6; // of a unit motion: the candidate does not see it
        var candidates = Candidates(network, x, loose).ToList();
        var motions = nullSpace.Select(v => (double[])v.Clone()).ToList();
        var ties = new List<Tie>();
        while (motions.Count > 0)
        {
            var (bestGrip, best) = (NoGrip, -1);
            for (var c = 0; c < candidates.Count; c++)
            {
                var grip = Math.Sqrt(motions.Sum(m => Math.Pow(Grip(candidates[c].Gradient, m), 2)));
                (bestGrip, best) = grip > bestGrip * (1 + 1e-9) ? (grip, c) : (bestGrip, best);
            }

            if (best < 0)
            {
                break;
            }

            ties.Add(candidates[best].Tie);
            Remove(motions, candidates[best].Gradient);
        }

        return ties;
    }

    private static double Grip((int Column, double Value)[] gradient, double[] motion)
    {
        var sum = 0.0;
        foreach (var (column, value) in gradient)
        {
            sum += value * motion[column];
        }

        return sum;
    }

    // The motions that the new reading would not notice: one fewer.
    private static void Remove(List<double[]> motions, (int Column, double Value)[] gradient)
    {
        var strongest = motions.MaxBy(m => Math.Abs(Grip(gradient, m)))!;
        motions.Remove(strongest);
        foreach (var motion in motions)
        {
            Dense.AddScaled(motion, -Grip(gradient, motion) / Grip(gradient, strongest), strongest);
        }
    }

    private static IEnumerable<(Tie Tie, (int, double)[] Gradient)> Candidates(CompiledNetwork network, double[] x, List<NetworkNode> loose)
    {
        foreach (var node in loose)
        {
            if (node.IsHeight)
            {
                yield return (new Tie.Height(network.Points[node.Point].Id), Entries((network.Points[node.Point].Unknown[2], 1)));
            }
            else
            {
                foreach (var candidate in Lengths(network, x, node.Point))
                {
                    yield return candidate;
                }
            }
        }
    }

    private static IEnumerable<(Tie Tie, (int, double)[] Gradient)> Lengths(CompiledNetwork network, double[] x, int from)
    {
        var usesPlan = network.Rows.Any(r => r.Kind == RowKind.Plan);
        var a = network.Points[from];
        for (var to = 0; to < network.Points.Length; to++)
        {
            var b = network.Points[to];
            if (to == from || !b.IsTouched[0])
            {
                continue;
            }

            var hasHeights = a.IsTouched[2] && b.IsTouched[2];
            var isPlan = usesPlan || !hasHeights;
            double[] d = [b.Base(0, x) - a.Base(0, x), b.Base(1, x) - a.Base(1, x), isPlan ? 0 : b.Base(2, x) - a.Base(2, x)];
            var length = Dense.Norm(d);
            if (length > 0)
            {
                var ends = Enumerable
                    .Range(0, 3)
                    .SelectMany(k => ((int, double)[])[(a.Unknown[k], -d[k] / length), (b.Unknown[k], d[k] / length)]);
                yield return (isPlan ? new Tie.Plan(a.Id, b.Id) : new Tie.Direct(a.Id, b.Id), Entries([.. ends]));
            }
        }
    }

    private static (int, double)[] Entries(params (int Column, double Value)[] entries) =>
        [.. entries.Where(e => e.Column >= 0 && e.Value is not 0)];
}
