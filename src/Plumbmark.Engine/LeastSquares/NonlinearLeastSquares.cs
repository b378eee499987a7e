namespace Plumbmark.Engine.LeastSquares;

/// <summary>Solves a dense non-linear least-squares problem by damped Gauss-Newton steps with QR.</summary>
/// <remarks>For up to a few hundred unknowns. Survey networks have their own sparse model (<see cref="Adjustment.NetworkAdjustment"/>).</remarks>
public static class NonlinearLeastSquares
{
    /// <summary>Iterates from a start; the start is not changed.</summary>
    public static LeastSquaresFit Solve(ILeastSquaresProblem problem, ReadOnlySpan<double> start, SolveOptions? options = null)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(start.Length, problem.UnknownCount, nameof(start));
        var x = start.ToArray();
        var model = new DenseModel(problem);
        var summary = new DampedGaussNewton(model, options ?? SolveOptions.Default).Run(x);
        var (residuals, factor) = model.FactorAt(x);
        return new LeastSquaresFit(x, residuals, factor, summary);
    }
}
