namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Narrows the band about a shape by a sequence of exact linear problems in the largest residual.</summary>
/// <remarks>
/// Each step minimises max |f + J d| by <see cref="Exchange"/> and moves there, by half as far as often as the true band would widen. At rest the multipliers prove
/// that no small move narrows the band (Madsen, J. Inst. Maths Applics 16 (1975) 321-328; quadratic convergence where d + 1 points touch).
/// </remarks>
internal static class ZoneSearch
{
    // Scaled: when the exact linear problem promises a band narrower by no more than this, the shape stands still. Where fewer points touch than there are
    // unknowns (one cylinder in a thousand) the last steps are slow; a promise of ten nanometres on a part of one metre is then left untaken.
    private const double PromiseTolerance = 1e-11;
    private const double LastPromise = 1e-8;
    private const int MostSteps = 100;
    private const int MostHalvings = 30;

    public sealed record Found<TState>(TState State, double Zone, int[] Points, double Sensitivity);

    public static Found<TState>? Narrow<TState>(FitModel<TState> model, TState start, out int steps)
    {
        var (m, d) = (model.Rows, model.Unknowns);
        var (f, jacobian) = (new double[m], new double[m * d]);
        var state = start;
        model.Linearise(state, f, jacobian);
        for (steps = 0; steps < MostSteps; steps++)
        {
            var exchange = Linear(f, jacobian, m, d);
            if (exchange is null)
            {
                // As many points as unknowns: the shape goes through them all and the band has no width.
                return m <= d && Zone(f) < 1e-9 ? new Found<TState>(state, 0, [.. Enumerable.Range(0, m)], 0) : null;
            }

            var promised = Zone(f) - (2 * exchange.T);
            var (next, nextF, nextJacobian) = Shortened(model, state, exchange.X, Zone(f));
            if (next is not null)
            {
                (state, f, jacobian) = (next, nextF, nextJacobian);
            }

            if (next is null || promised <= (steps + 1 < MostSteps ? PromiseTolerance : LastPromise))
            {
                var squares = exchange.Multipliers.Sum(lambda => lambda * lambda);
                int[] touching =
                [
                    .. exchange.Basis.Where((_, i) => exchange.Multipliers[i] > 1e-9).Select(row => row / 2).Distinct().Order(),
                ];
                return new Found<TState>(state, Zone(f), touching, 2 * Math.Sqrt(squares));
            }
        }

        return null;
    }

    private static Exchange? Linear(double[] f, double[] jacobian, int m, int d)
    {
        var exchange = new Exchange(d);
        for (var i = 0; i < m; i++)
        {
            exchange.AddTwoSided(f[i], jacobian.AsSpan(i * d, d));
        }

        return exchange.TryStart() && exchange.TrySolve(out _) ? exchange : null;
    }

    private static (TState? Next, double[] F, double[] Jacobian) Shortened<TState>(
        FitModel<TState> model,
        TState state,
        double[] step,
        double zone
    )
    {
        var (f, jacobian) = (new double[model.Rows], new double[model.Rows * model.Unknowns]);
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            var next = model.Move(state, step);
            model.Linearise(next, f, jacobian);
            if (Zone(f) <= zone)
            {
                return (next, f, jacobian);
            }

            step = Array.ConvertAll(step, v => v / 2);
        }

        return (default, f, jacobian);
    }

    private static double Zone(double[] f)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var v in f)
        {
            (low, high) = (Math.Min(low, v), Math.Max(high, v));
        }

        return high - low;
    }
}
