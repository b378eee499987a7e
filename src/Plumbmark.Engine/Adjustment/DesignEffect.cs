namespace Plumbmark.Engine.Adjustment;

/// <summary>What one reading not yet taken would do to the covariance of the points: a sum of rank-one reductions.</summary>
/// <remarks>
/// With c the covariance between the coordinates and the reading, and s the variance the reading is expected to have (its own included),
/// Q' = Q − Σ c cᵀ / s: whatever the reading turns out to be. A gradient is in the function's own unit per metre, a variance in that unit squared.
/// </remarks>
public sealed class DesignEffect
{
    private readonly IReadOnlyList<(double[] C, double S)> _terms;

    internal DesignEffect(IReadOnlyList<(double[] C, double S)> terms) => _terms = terms;

    /// <summary>By how much the variance of a linear function of the coordinates would fall.</summary>
    /// <param name="gradient">In the order of <see cref="NetworkDesign.Coordinates"/>.</param>
    public double Reduction(ReadOnlySpan<double> gradient) => Reduction(gradient, gradient);

    /// <summary>By how much the sum of the variances of all coordinates would fall, m².</summary>
    public double TraceReduction()
    {
        var sum = 0.0;
        foreach (var (c, s) in _terms)
        {
            sum += LeastSquares.Dense.Dot(c, c) / s;
        }

        return sum;
    }

    /// <summary>By how much the covariance of two linear functions of the coordinates would fall.</summary>
    public double Reduction(ReadOnlySpan<double> gradient, ReadOnlySpan<double> other)
    {
        var sum = 0.0;
        foreach (var (c, s) in _terms)
        {
            sum += LeastSquares.Dense.Dot(c, gradient) * LeastSquares.Dense.Dot(c, other) / s;
        }

        return sum;
    }
}
