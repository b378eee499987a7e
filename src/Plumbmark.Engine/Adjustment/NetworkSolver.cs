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

    /// <summary>Iterates from a start, which is left alone; the floor under the points is brought along.</summary>
    public (double[] X, SolveSummary Summary) Iterate(double[] start)
    {
        const int EnoughFloors = 20;
        var x = (double[])start.Clone();
        network.RefreshFloor(x);
        var order = UnknownOrder.Of(network, HeldFor(x));
        var summary = new DampedGaussNewton(new NetworkModel(network, order), s_options).Run(x);
        for (var k = 0; k < EnoughFloors && network.RefreshFloor(x); k++)
        {
            summary = new DampedGaussNewton(new NetworkModel(network, order), s_options).Run(x);
        }

        return (x, summary);
    }

    /// <summary>As many coordinates as there are free motions, chosen so that holding them stops every motion as firmly as can be.</summary>
    public int[] HeldFor(ReadOnlySpan<double> x)
    {
        var directions = motions.Directions(network, x);
        var n = network.UnknownCount;
        var matrix = new double[directions.Length * n];
        for (var k = 0; k < directions.Length; k++)
        {
            directions[k].CopyTo(matrix, k * n);
        }

        // Column pivoting picks the coordinates one after the other by what the ones before leave loose.
        return PivotedQr.Of(matrix, directions.Length, n).ColumnOrder[..directions.Length].ToArray();
    }
}
