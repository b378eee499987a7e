using Plumbmark.Engine.Adjustment.Starts;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Iterates one compiled network from a start to rest.</summary>
internal sealed class NetworkSolver(CompiledNetwork network, RigidMotions motions)
{
    private static readonly SolveOptions s_options = new()
    {
        MaximumIterations = 400,
        StepTolerance = 1e-13,
        GradientTolerance = 1e-13,
    };

    public CompiledNetwork Network { get; } = network;

    public RigidMotions Motions { get; } = motions;

    /// <summary>Iterates from a start, which is left alone; the floor under the points is brought along.</summary>
    public Rest Iterate(double[] start)
    {
        const int EnoughFloors = 20;
        var x = (double[])start.Clone();
        Network.RefreshFloor(x);
        var order = UnknownOrder.Of(Network, HeldFor(x));
        var summary = new DampedGaussNewton(new NetworkModel(Network, order), s_options).Run(x);
        for (var k = 0; k < EnoughFloors && Network.RefreshFloor(x); k++)
        {
            summary = new DampedGaussNewton(new NetworkModel(Network, order), s_options).Run(x);
        }

        var rows = new LinearRows(Network);
        rows.Evaluate(x);
        return new Rest(x, summary, rows.Misclosures.Sum(Rest.Robust));
    }

    /// <summary>As many coordinates as there are free motions, chosen so that holding them stops every motion as firmly as can be.</summary>
    /// <param name="x">Where the points are.</param>
    /// <param name="among">The unknowns to choose from; null: all.</param>
    public int[] HeldFor(ReadOnlySpan<double> x, IReadOnlySet<int>? among = null)
    {
        var left = Motions.Directions(Network, x);
        var held = new int[left.Length];
        for (var k = 0; k < held.Length; k++)
        {
            // The coordinate that what is left of the motions moves most; then the motions that leave it still.
            var best = Enumerable
                .Range(0, Network.UnknownCount)
                .Where(u => among?.Contains(u) is not false)
                .MaxBy(u => left.Sum(v => v[u] * v[u]));
            held[k] = best;
            var mover = Array.FindIndex(left, v => Math.Abs(v[best]) >= left.Max(w => Math.Abs(w[best])));
            (left[mover], left[^1]) = (left[^1], left[mover]);
            for (var j = 0; j < left.Length - 1; j++)
            {
                Dense.AddScaled(left[j], -left[j][best] / left[^1][best], left[^1]);
            }

            left = left[..^1];
        }

        return held;
    }
}
