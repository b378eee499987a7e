namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Least squares with a handful of unknowns by Householder reflections, as a fit of a shape needs it.</summary>
/// <remarks>Golub and Van Loan, Matrix Computations, 4th ed., 5.2.2: A = QR; x = R⁻¹Qᵀb; (AᵀA)⁻¹ = R⁻¹R⁻ᵀ. Not for networks: see Adjustment.</remarks>
internal static class SmallLeastSquares
{
    // A column that keeps less than this share of its length after the columns before it are taken out adds no direction.
    private const double RankShare = 1e-10;

    /// <summary>
    /// Minimises |A x - b|. <paramref name="a"/> is row by row and is overwritten by R, <paramref name="b"/> by Qᵀb.
    /// False when some column adds no direction to those before it; <paramref name="x"/> is then not filled.
    /// </summary>
    public static bool Solve(double[] a, double[] b, int rows, int columns, Span<double> x)
    {
        for (var k = 0; k < columns; k++)
        {
            var (all, below) = ColumnNorms(a, rows, columns, k);
            if (!(below > RankShare * all))
            {
                return false;
            }

            Reflect(a, b, rows, columns, k, below);
        }

        for (var k = columns - 1; k >= 0; k--)
        {
            var sum = b[k];
            for (var j = k + 1; j < columns; j++)
            {
                sum -= a[(k * columns) + j] * x[j];
            }

            x[k] = sum / a[(k * columns) + k];
        }

        return true;
    }

    /// <summary>(AᵀA)⁻¹ from the R that <see cref="Solve"/> left in <paramref name="r"/>, symmetric.</summary>
    public static double[,] Cofactor(double[] r, int columns)
    {
        var inverse = new double[columns, columns];
        for (var j = 0; j < columns; j++)
        {
            for (var i = j; i >= 0; i--)
            {
                var sum = i == j ? 1.0 : 0.0;
                for (var k = i + 1; k <= j; k++)
                {
                    sum -= r[(i * columns) + k] * inverse[k, j];
                }

                inverse[i, j] = sum / r[(i * columns) + i];
            }
        }

        var q = new double[columns, columns];
        for (var i = 0; i < columns; i++)
        {
            for (var j = 0; j < columns; j++)
            {
                for (var k = Math.Max(i, j); k < columns; k++)
                {
                    q[i, j] += inverse[i, k] * inverse[j, k];
                }
            }
        }

        return q;
    }

    private static (double All, double Below) ColumnNorms(double[] a, int rows, int columns, int k)
    {
        double above = 0,
            below = 0;
        for (var i = 0; i < rows; i++)
        {
            var value = a[(i * columns) + k];
            if (i < k)
            {
                above += value * value;
            }
            else
            {
                below += value * value;
            }
        }

        return (Math.Sqrt(above + below), Math.Sqrt(below));
    }

    private static void Reflect(double[] a, double[] b, int rows, int columns, int k, double below)
    {
        var pivot = a[(k * columns) + k];
        var alpha = -Math.CopySign(below, pivot);
        // v = column - alpha e, kept in place; beta = 2 / (vᵀv) = 1 / (below (below + |pivot|)).
        a[(k * columns) + k] = pivot - alpha;
        var beta = 1 / (below * (below + Math.Abs(pivot)));
        for (var j = k + 1; j <= columns; j++)
        {
            var sum = 0.0;
            for (var i = k; i < rows; i++)
            {
                sum += a[(i * columns) + k] * (j < columns ? a[(i * columns) + j] : b[i]);
            }

            for (var i = k; i < rows; i++)
            {
                var change = beta * sum * a[(i * columns) + k];
                if (j < columns)
                {
                    a[(i * columns) + j] -= change;
                }
                else
                {
                    b[i] -= change;
                }
            }
        }

        a[(k * columns) + k] = alpha;
    }
}
