namespace Plumbmark.Engine.Adjustment;

using Plumbmark.Engine.LeastSquares;

/// <summary>From the place where the iteration came to rest to the outcome: rank, datum, covariance.</summary>
internal static class NetworkFinish
{
    public static NetworkOutcome Of(NetworkSolver solver, double[] x, SolveSummary summary, bool mirrorIsAssumed)
    {
        var (network, motions) = (solver.Network, solver.Motions);
        var rows = new LinearRows(network);
        rows.Linearise(x);
        var factor = NetworkFactor.Of(rows, UnknownOrder.Of(network, solver.HeldFor(x)));
        if (factor.IsFullRank)
        {
            var g = InnerConstraints.Orthonormal(motions.Directions(network, x));
            return new NetworkOutcome.Adjusted(Fit(solver, x, rows, factor, (g, g), new HashSet<int>(), summary, mirrorIsAssumed));
        }

        var (reference, defect) = DefectAnalysis.Of(network, motions, x, ByUnknown(factor));
        var determined = reference.SelectMany(n => n.Axes.Select(a => network.Points[n.Point].Unknown[a])).Where(u => u >= 0).ToHashSet();
        var undetermined = Enumerable
            .Range(0, network.FirstToolUnknown)
            .Where(u => IsCoordinate(network, u) && !determined.Contains(u))
            .ToHashSet();
        var tied = FactorOfTheTied(solver, x, rows, determined);
        var constraints = InnerConstraints.Restricted(motions.Directions(network, x), determined);
        return new NetworkOutcome.Loose(Fit(solver, x, rows, tied, constraints, undetermined, summary, mirrorIsAssumed), defect);
    }

    private static NetworkFit Fit(
        NetworkSolver solver,
        double[] x,
        LinearRows rows,
        NetworkFactor factor,
        (double[][] G, double[][] B) constraints,
        HashSet<int> undetermined,
        SolveSummary summary,
        bool mirrorIsAssumed
    )
    {
        var cofactor = Cofactor.Of(factor);
        if (constraints.G.Length > 0)
        {
            cofactor = cofactor.Constrain(constraints.G, constraints.B);
        }

        return FitBuilder.Build(new NetworkState(solver, x, rows, cofactor, factor.Order.Count, undetermined, summary), mirrorIsAssumed);
    }

    // The datum is held in the reference body, and of each loose motion one coordinate, so that the rest is determined.
    private static NetworkFactor FactorOfTheTied(NetworkSolver solver, double[] x, LinearRows rows, HashSet<int> determined)
    {
        var held = solver.HeldFor(x, determined).ToHashSet();
        var factor = NetworkFactor.Of(rows, UnknownOrder.Of(solver.Network, held));
        while (!factor.IsFullRank)
        {
            var order = factor.Order.Position;
            foreach (var position in factor.Dependent)
            {
                held.Add(Array.IndexOf(order, position));
            }

            factor = NetworkFactor.Of(rows, UnknownOrder.Of(solver.Network, held));
        }

        return factor;
    }

    private static double[][] ByUnknown(NetworkFactor factor)
    {
        var position = factor.Order.Position;
        return [.. factor.NullSpace.Select(v => position.Select(p => p >= 0 ? v[p] : 0).ToArray())];
    }

    private static bool IsCoordinate(CompiledNetwork network, int unknown) =>
        network.Points.All(p => p.DropError < 0 || (unknown != p.DropError && unknown != p.DropError + 1));
}
