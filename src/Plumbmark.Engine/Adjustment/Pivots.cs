using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// Picks as many entries as there are motions so that holding those entries stops every motion as firmly as can be; fewer, when some motion moves
/// none of the entries that may be held.
/// </summary>
internal static class Pivots
{
    /// <param name="motions">Independent displacements.</param>
    /// <param name="among">The entries to choose from; null: all.</param>
    public static int[] Of(double[][] motions, IReadOnlySet<int>? among = null)
    {
        const double MovesNothing = 1e-12; // of the longest motion
        var left = motions.Select(m => (double[])m.Clone()).ToList();
        var least = MovesNothing * left.Select(m => m.Select(Math.Abs).DefaultIfEmpty().Max()).DefaultIfEmpty().Max();
        var chosen = new List<int>();
        while (left.Count > 0)
        {
            // The entry that what is left of the motions moves most; then the motions that leave it still.
            var best = Strongest(left, among);
            var mover = best < 0 ? null : left.MaxBy(v => Math.Abs(v[best]));
            if (mover is null || !(Math.Abs(mover[best]) > least))
            {
                break;
            }

            left.Remove(mover);
            foreach (var motion in left)
            {
                Dense.AddScaled(motion, -motion[best] / mover[best], mover);
            }

            chosen.Add(best);
        }

        return [.. chosen];
    }

    private static int Strongest(List<double[]> motions, IReadOnlySet<int>? among)
    {
        var (best, most) = (-1, -1.0);
        for (var i = 0; i < motions[0].Length; i++)
        {
            if (among?.Contains(i) is false)
            {
                continue;
            }

            var sum = 0.0;
            foreach (var motion in motions)
            {
                sum += motion[i] * motion[i];
            }

            (best, most) = sum > most ? (i, sum) : (best, most);
        }

        return best;
    }
}
