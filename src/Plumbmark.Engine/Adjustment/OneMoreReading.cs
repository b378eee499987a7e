using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>A fit with one reading added, without solving afresh.</summary>
/// <remarks>
/// <para>Cofactors: Q' = Q − Q aᵀ a Q / (1 + a Q aᵀ) with the weighted row a at the old places (Sherman and Morrison). Places: Newton's chord, dx = −Q' Aᵀ r with A and
/// r at the new places, until it rests; so they are those of a solve from nothing.</para>
/// <para>The cofactors keep the old places' directions; while no point moves by more than a thousandth of a typical length that changes an uncertainty by less than a
/// thousandth of itself.</para>
/// </remarks>
internal static class OneMoreReading
{
    private const int MostSteps = 8;
    private const double Resting = 5e-12; // of a typical length
    private const double MostMove = 1e-3; // of a typical length

    /// <summary>Null where the reading brings a new coordinate, drop error or tool, fixes what was free, or moves the points too far.</summary>
    public static NetworkFit? Of(NetworkFit fit, Observation reading)
    {
        var state = fit.State;
        if (state.Cofactor is not DenseCofactor cofactor || state.Undetermined.Count > 0 || RowOf(state, reading) is not { } row)
        {
            return null;
        }

        var network = Extended(state.Network, reading, row);
        var x = (double[])state.Unknowns.Clone();
        network.RefreshFloor(x);
        var rows = new LinearRows(network);
        rows.Linearise(x);
        var a = Spread(rows, network.RowCount - 1);
        if (Fixes(state.Motions.Directions(network, x), a))
        {
            return null;
        }

        var q = cofactor.Times(a);
        var updated = cofactor.Minus(q, 1 + Dense.Dot(a, q));
        if (!Rest(network, rows, updated, x))
        {
            return null;
        }

        var summary = new SolveSummary(StopReason.StepVanished, Dense.SumOfSquares(rows.Misclosures), []);
        var solver = new NetworkSolver(network, state.Motions);
        return FitBuilder.Build(
            new NetworkState(solver, x, rows, updated, state.Rank, state.Undetermined, summary),
            fit.Datum.MirrorIsAssumed
        );
    }

    private static Row? RowOf(NetworkState state, Observation reading)
    {
        var source = state.Network.Source;
        var isPlain =
            reading
                is Observation.PlanDistance { ValueMetres: > 0 }
                    or Observation.DirectDistance { ValueMetres: > 0 }
                    or Observation.Height
                    or Observation.Rise
                    or Observation.Offset
            && double.IsFinite(reading.ValueMetres)
            && reading.SigmaMetres > 0
            && double.IsFinite(reading.SigmaMetres)
            && source.Observations.All(o => o.Id != reading.Id);
        var points = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var id in isPlain ? NetworkCheck.PointsOf(reading) : [])
        {
            var index = Array.FindIndex(state.Network.Points, p => p.Id == id);
            if (index < 0 || !points.TryAdd(id, index) || !IsReady(state.Network.Points[index], reading))
            {
                return null;
            }
        }

        var tool = reading.Tool is { } name ? Array.FindIndex(state.Network.Tools, t => t.Source.Id == name) : -1;
        if (!isPlain || (reading.Tool is not null && (tool < 0 || !IsReady(state.Network.Tools[tool]))))
        {
            return null;
        }

        var tools = new Dictionary<string, int>(StringComparer.Ordinal);
        if (reading.Tool is { } used)
        {
            tools[used] = tool;
        }

        var rows = new List<Row>(1);
        new RowFactory(points, tools, state.Network.Origin).Add(reading, source.Observations.Count, rows);
        return rows.Count == 1 ? rows[0] : null;
    }

    // The point already has every coordinate the reading needs, and its drop error where one would be needed.
    private static bool IsReady(PointSlot point, Observation reading)
    {
        var hasPlan = point.IsTouched[0] && point.IsTouched[1];
        return reading switch
        {
            Observation.PlanDistance or Observation.Offset => hasPlan
                && (point.IsMarkOnly || point.DropError >= 0 || !(point.Drop.Variance > 0)),
            Observation.DirectDistance => hasPlan && point.IsTouched[2] && !point.IsMarkOnly,
            _ => point.IsTouched[2],
        };
    }

    private static bool IsReady(ToolSlot tool) =>
        (tool.Zero >= 0 || !(tool.Source.ZeroSigmaMetres > 0)) && (tool.Scale >= 0 || !(tool.Source.ScaleSigma > 0));

    private static CompiledNetwork Extended(CompiledNetwork old, Observation reading, Row row)
    {
        var columns = new int[old.Columns.Length + CompiledNetwork.Stride];
        old.Columns.CopyTo(columns, 0);
        columns.AsSpan(old.Columns.Length).Fill(-1);
        var network = new CompiledNetwork
        {
            Source = old.Source.With(reading),
            Points = old.Points,
            Tools = old.Tools,
            Rows = [.. old.Rows, row],
            Columns = columns,
            FloorMetres = [.. old.FloorMetres, 0],
            UnknownCount = old.UnknownCount,
            FirstToolUnknown = old.FirstToolUnknown,
            Origin = old.Origin,
        };
        RowModel.Columns(network, row, columns.AsSpan(old.Columns.Length));
        return network;
    }

    private static double[] Spread(LinearRows rows, int row)
    {
        var a = new double[rows.Network.UnknownCount];
        var columns = rows.Network.ColumnsOf(row);
        var values = rows.DerivativesOf(row);
        for (var s = 0; s < columns.Length; s++)
        {
            if (columns[s] >= 0)
            {
                a[columns[s]] += values[s];
            }
        }

        return a;
    }

    // Whether the reading would change along a motion that was free so far.
    private static bool Fixes(double[][] motions, double[] a)
    {
        const double Rounding = 1e-9;
        return motions.Any(g => Math.Abs(Dense.Dot(g, a)) > Rounding * Dense.Norm(g) * Dense.Norm(a));
    }

    private static bool Rest(CompiledNetwork network, LinearRows rows, DenseCofactor cofactor, double[] x)
    {
        var length = network.Rows.Where(r => r.Observation >= 0).Average(r => Math.Abs(r.Value));
        var gradient = new double[x.Length];
        var moved = 0.0;
        for (var step = 0; step < MostSteps; step++)
        {
            gradient.AsSpan().Clear();
            for (var row = 0; row < network.RowCount; row++)
            {
                var columns = network.ColumnsOf(row);
                var values = rows.DerivativesOf(row);
                for (var s = 0; s < columns.Length; s++)
                {
                    if (columns[s] >= 0)
                    {
                        gradient[columns[s]] -= values[s] * rows.Misclosures[row];
                    }
                }
            }

            var dx = cofactor.Times(gradient);
            var largest = dx.Max(Math.Abs);
            moved += largest;
            if (!(moved <= MostMove * length))
            {
                return false;
            }

            Dense.AddScaled(x, 1, dx);
            rows.Linearise(x);
            if (largest <= Resting * length)
            {
                return !network.RefreshFloor(x);
            }
        }

        return false;
    }
}
