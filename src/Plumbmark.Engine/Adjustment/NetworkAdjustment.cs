using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Fits a network of points to its readings by weighted non-linear least squares.</summary>
/// <remarks>
/// <para>Minimises Σ ((model − reading) / σ)² over all coordinates that a reading touches, over the shared zero and scale of each tool, and
/// over the drop error of each point where plan and direct readings mix.</para>
/// <para>Where nothing settles the datum, inner constraints do (<see cref="DatumReport"/>). What remains undetermined is an answer:
/// <see cref="NetworkOutcome.Loose"/>.</para>
/// </remarks>
public static class NetworkAdjustment
{
    /// <summary>Fits a network.</summary>
    public static NetworkOutcome Solve(Network network)
    {
        var faults = NetworkCheck.Faults(network);
        if (faults.Count > 0)
        {
            return new NetworkOutcome.Refused(faults);
        }

        var compiled = NetworkCompiler.Compile(network);
        var motions = RigidMotions.Of(compiled);
        var solver = new NetworkSolver(compiled, motions);
        var (x, summary) = solver.Iterate(SketchStart.Of(compiled));
        DatumPlacement.Place(compiled, motions, x, DatumPlacement.Sketch(compiled));
        return summary.IsSolutionUsable ? Finish(compiled, motions, solver, x, summary) : new NetworkOutcome.NotConverged(summary);
    }

    private static NetworkOutcome.Adjusted Finish(
        CompiledNetwork network,
        RigidMotions motions,
        NetworkSolver solver,
        double[] x,
        SolveSummary summary
    )
    {
        var rows = new LinearRows(network);
        rows.Linearise(x);
        var factor = NetworkFactor.Of(rows, UnknownOrder.Of(network, solver.HeldFor(x)));
        var cofactor = Cofactor.Of(factor);
        var g = InnerConstraints.Orthonormal(motions.Directions(network, x));
        var state = new NetworkState(
            network,
            x,
            rows,
            g.Length > 0 ? cofactor.Constrain(g, g) : cofactor,
            motions,
            new HashSet<int>(),
            summary
        );
        return new NetworkOutcome.Adjusted(FitBuilder.Build(state, false));
    }
}
