namespace Plumbmark.Engine.Adjustment;

/// <summary>Readings whose residuals are perfectly correlated: an error in one cannot be told from an error in another.</summary>
internal static class TiedReadings
{
    // 1 − |ρ| at which two tests are one and the same to any precision a tape has.
    private const double Perfect = 1e-6;

    /// <summary>The groups of tied readings, by row; readings that stand alone or are unchecked are left out.</summary>
    /// <remarks>
    /// ρ = ±1 is an equivalence, and readings that are tied hang together through shared points, so it is enough to compare neighbours.
    /// </remarks>
    public static List<List<int>> Of(NetworkState state)
    {
        var rows = Enumerable.Range(0, state.Network.RowCount).Where(i => state.Network.Rows[i].Observation >= 0).ToList();
        var redundancy = rows.ToDictionary(i => i, i => 1 - state.Leverage(i));
        var group = rows.ToDictionary(i => i, i => i);
        foreach (
            var neighbours in rows.Where(i => redundancy[i] > Perfect)
                .SelectMany(i => Touched(state, i).Select(p => (p, i)))
                .GroupBy(t => t.p, t => t.i)
        )
        {
            var list = neighbours.ToList();
            for (var a = 0; a < list.Count; a++)
            {
                for (var b = a + 1; b < list.Count; b++)
                {
                    if (Find(group, list[a]) != Find(group, list[b]) && AreTied(state, redundancy, list[a], list[b]))
                    {
                        group[Find(group, list[b])] = Find(group, list[a]);
                    }
                }
            }
        }

        return [.. rows.GroupBy(i => Find(group, i)).Select(g => g.ToList()).Where(g => g.Count > 1)];
    }

    private static IEnumerable<int> Touched(NetworkState state, int row)
    {
        var r = state.Network.Rows[row];
        return ((int[])[r.A, r.B, r.C]).Where(p => p >= 0);
    }

    private static bool AreTied(NetworkState state, Dictionary<int, double> redundancy, int i, int j)
    {
        // The residual cofactor of two weighted rows is −aᵢ Q aⱼᵀ.
        var correlation = state.CrossLeverage(i, j) / Math.Sqrt(redundancy[i] * redundancy[j]);
        return Math.Abs(correlation) > 1 - Perfect;
    }

    private static int Find(Dictionary<int, int> group, int i)
    {
        while (group[i] != i)
        {
            i = group[i] = group[group[i]];
        }

        return i;
    }
}
