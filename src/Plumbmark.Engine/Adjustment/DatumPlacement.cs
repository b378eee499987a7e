using Plumbmark.Engine.Adjustment.Starts;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Moves a solution, as a rigid body and only in its free motions, as near to reference coordinates as it goes.</summary>
/// <remarks>
/// Minimises Σ (x − reference)² over the coordinates that have a reference. At the minimum the sum over δx times each motion is zero:
/// that is the inner constraint Gᵀ (x − x₀) = 0 of a free network, met exactly and not only to first order.
/// </remarks>
internal static class DatumPlacement
{
    /// <summary>A rest with its free motions settled by the sketch; unsketched networks stay where their start put them.</summary>
    public static Rest OnSketch(NetworkSolver solver, Rest rest)
    {
        const int EnoughRounds = 5;
        const double StillMetres = 1e-12;
        if (solver.Motions.Count == 0)
        {
            return rest;
        }

        // Repeated drops were noted along the axes of the sketch; where they count, turning the figure moves the fit a little.
        var reference = Sketch(solver.Network);
        var hasDropErrors = solver.Network.Points.Any(p => p.DropError >= 0);
        for (var k = 0; k < EnoughRounds; k++)
        {
            var moved = Place(solver.Network, solver.Motions, rest.X, reference);
            if (!hasDropErrors || moved < StillMetres)
            {
                break;
            }

            rest = solver.Iterate(rest.X);
        }

        return rest;
    }

    /// <summary>Reference values by unknown: the sketch, NaN where there is none.</summary>
    public static double[] Sketch(CompiledNetwork network)
    {
        var reference = new double[network.UnknownCount];
        Array.Fill(reference, double.NaN);
        for (var i = 0; i < network.Points.Length; i++)
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                var u = network.Points[i].Unknown[(int)axis];
                if (u >= 0 && network.Source.Points[i].SketchMetres(axis) is { } sketch)
                {
                    reference[u] = sketch - network.Origin[(int)axis];
                }
            }
        }

        return reference;
    }

    /// <summary>Moves the solution onto the reference; returns how far its farthest coordinate went, metres.</summary>
    public static double Place(CompiledNetwork network, RigidMotions motions, double[] x, double[] reference)
    {
        const int EnoughTurns = 60;
        const double Still = 1e-15; // of the size of the figure
        var before = (double[])x.Clone();
        var size = x.Length > 0 ? x.Max(Math.Abs) : 0;
        for (var k = 0; k < EnoughTurns && motions.Count > 0; k++)
        {
            var directions = motions.Directions(network, x);
            var q = Step(directions, x, reference);
            var motion = new double[6];
            var largest = 0.0;
            for (var i = 0; i < q.Length; i++)
            {
                Dense.AddScaled(motion, q[i], motions.Basis[i]);
                largest = Math.Max(largest, Math.Abs(q[i]) * directions[i].Max(Math.Abs));
            }

            new RigidStep(motion).Apply(network, x);
            if (largest <= Still * size)
            {
                break;
            }
        }

        return x.Zip(before, (a, b) => Math.Abs(a - b)).DefaultIfEmpty().Max();
    }

    private static double[] Step(double[][] directions, double[] x, double[] reference)
    {
        const double Undecided = 1e-10; // a motion the references do not see stays as it is
        var used = Enumerable.Range(0, x.Length).Where(u => !double.IsNaN(reference[u])).ToArray();
        var matrix = new double[used.Length * directions.Length];
        var right = new double[used.Length];
        for (var i = 0; i < used.Length; i++)
        {
            right[i] = reference[used[i]] - x[used[i]];
            for (var k = 0; k < directions.Length; k++)
            {
                matrix[i * directions.Length + k] = directions[k][used[i]];
            }
        }

        return PivotedQr.Of(matrix, used.Length, directions.Length, Undecided).Solve(right);
    }
}
