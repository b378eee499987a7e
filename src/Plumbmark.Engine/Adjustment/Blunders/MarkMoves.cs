namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Marks that may have moved between two readings: the readings before one place, those after it another.</summary>
internal static class MarkMoves
{
    /// <summary>The name of the mark after it moved; no person can have typed it.</summary>
    public const string Later = "\u0001later";

    /// <param name="Point">Whose mark.</param>
    /// <param name="FirstLater">Index of the first reading taken after the move.</param>
    /// <param name="Splits">In how many places the point's readings could be parted.</param>
    /// <param name="Gain">By how much vPv would fall, to first order.</param>
    public sealed record Move(string Point, int FirstLater, int Splits, double Gain);

    /// <summary>All moves with at least two plan readings on either side.</summary>
    public static IEnumerable<Move> Of(NetworkFit fit)
    {
        const int LargestNetwork = 600; // unknowns; beyond that a moved mark is looked for reading by reading
        var network = fit.State.Network;
        if (network.UnknownCount > LargestNetwork)
        {
            yield break;
        }

        for (var p = 0; p < network.Points.Length; p++)
        {
            var rows = Enumerable
                .Range(0, network.RowCount)
                .Where(i => network.Rows[i] is { Kind: RowKind.Plan } r && (r.A == p || r.B == p))
                .ToList();
            for (var split = 2; split <= rows.Count - 2; split++)
            {
                yield return new Move(
                    network.Points[p].Id,
                    network.Rows[rows[split]].Observation,
                    rows.Count - 3,
                    Gain(fit.State, p, rows[split..])
                );
            }
        }
    }

    /// <summary>The network in which the later readings go to a mark of their own.</summary>
    public static Network Split(NetworkFit fit, Move move)
    {
        var network = fit.State.Network.Source;
        var (source, now) = (network.Points.Single(p => p.Id == move.Point), fit.Point(move.Point));
        string Name(string point, int index) => index >= move.FirstLater && point == move.Point ? Later : point;
        var readings = network.Observations.Select(
            (o, i) => o is Observation.PlanDistance plan ? plan with { From = Name(plan.From, i), To = Name(plan.To, i) } : o
        );
        return new Network(
            [.. network.Points, source with { Id = Later, SketchXMetres = now.XMetres, SketchYMetres = now.YMetres }],
            readings,
            network.Tools,
            network.MirrorPairs
        );
    }

    // T = gᵀ S⁻¹ g with g = Cᵀ v, S = Cᵀ C − Cᵀ A Q Aᵀ C: C holds the later rows' derivatives by their mark.
    private static double Gain(NetworkState state, int point, List<int> later)
    {
        var (cc, u, g) = (new double[3], new double[2][], new double[2]);
        (u[0], u[1]) = (new double[state.Network.UnknownCount], new double[state.Network.UnknownCount]);
        foreach (var row in later)
        {
            // Columns 0, 1 are the mark of A, 2, 3 that of B (RowModel).
            var at = state.Network.Rows[row].A == point ? 0 : 2;
            var values = state.Rows.DerivativesOf(row);
            double[] c = [values[at], values[at + 1]];
            cc[0] += c[0] * c[0];
            cc[1] += c[0] * c[1];
            cc[2] += c[1] * c[1];
            var columns = state.Network.ColumnsOf(row);
            for (var k = 0; k < 2; k++)
            {
                g[k] += c[k] * state.Rows.Misclosures[row];
                for (var s = 0; s < columns.Length; s++)
                {
                    if (columns[s] >= 0)
                    {
                        u[k][columns[s]] += c[k] * values[s];
                    }
                }
            }
        }

        var (q0, q1) = (state.Cofactor.Times(u[0]), state.Cofactor.Times(u[1]));
        var a = cc[0] - LeastSquares.Dense.Dot(u[0], q0);
        var b = cc[1] - LeastSquares.Dense.Dot(u[1], q0);
        var d = cc[2] - LeastSquares.Dense.Dot(u[1], q1);
        var determinant = a * d - b * b;
        const double Unchecked = 1e-9; // of the rows' own weight: nothing would show
        return determinant > Unchecked * cc[0] * cc[2] ? (d * g[0] * g[0] - 2 * b * g[0] * g[1] + a * g[1] * g[1]) / determinant : 0;
    }
}
