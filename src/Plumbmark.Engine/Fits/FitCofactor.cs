namespace Plumbmark.Engine.Fits;

/// <summary>Covariance of a fitted shape for points whose every coordinate has standard uncertainty 1.</summary>
/// <remarks>
/// First order: exact for errors that are small against the shape. The covariance in metres and radians is this times sigma squared, with
/// sigma from the gauge, or from <see cref="FitResiduals.SigmaMetres"/> with its degrees of freedom. Each fit says which unknowns, in which order.
/// </remarks>
public sealed class FitCofactor
{
    private readonly double[,] _q;

    internal FitCofactor(double[,] q) => _q = q;

    /// <summary>How many unknowns.</summary>
    public int Count => _q.GetLength(0);

    /// <summary>One element: square metres per square metre, or per metre and radian, as the unknowns' units say.</summary>
    public double this[int row, int column] => _q[row, column];

    /// <summary>Variance of a linear function of the unknowns, per unit variance of a coordinate: aᵀ Q a.</summary>
    public double VarianceOf(ReadOnlySpan<double> a)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            for (var j = 0; j < a.Length; j++)
            {
                sum += a[i] * _q[i, j] * a[j];
            }
        }

        return sum;
    }

    /// <summary>Covariance for a standard uncertainty of one coordinate, metres.</summary>
    public double[,] Covariance(double sigmaMetres)
    {
        var c = (double[,])_q.Clone();
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j < Count; j++)
            {
                c[i, j] *= sigmaMetres * sigmaMetres;
            }
        }

        return c;
    }
}
