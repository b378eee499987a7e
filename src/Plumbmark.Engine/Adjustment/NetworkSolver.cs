using Plumbmark.Engine.Adjustment.Starts;
using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>Iterates one compiled network from a start to rest.</summary>
internal sealed class NetworkSolver(CompiledNetwork network, RigidMotions motions)
{
    private static readonly SolveOptions s_options = new()
    {
        MaximumIterations = 400,

        // A hundred-millionth of a millimetre in a frame of two metres.
        StepTolerance = 5e-12,
        GradientTolerance = 1e-13,

        // Starts are good as a rule; a poor one raises it at once.
        InitialDamping = 1e-8,
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
        return Pivots.Of(Motions.Directions(Network, x), among);
    }
}
