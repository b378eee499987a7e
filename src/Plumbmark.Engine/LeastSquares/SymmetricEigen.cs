namespace Plumbmark.Engine.LeastSquares;

/// <summary>Eigenvalues and eigenvectors of a small symmetric matrix, by Jacobi's rotations.</summary>
/// <remarks>
/// Accurate also for eigenvalues near zero, which is what a rank question asks. Cost grows with n³ for each of some eight sweeps.
/// Eigenvalues have the matrix's own unit.
/// Source: Golub and Van Loan, Matrix Computations, 4th ed., section 8.5 (from memory).
/// </remarks>
public sealed class SymmetricEigen
{
    private const int EnoughSweeps = 60;

    private SymmetricEigen(double[] values, double[][] vectors) => (Values, Vectors) = (values, vectors);

    /// <summary>The eigenvalues, largest first.</summary>
    public double[] Values { get; }

    /// <summary>The eigenvector of each eigenvalue, of unit length.</summary>
    public double[][] Vectors { get; }

    /// <summary>Decomposes a symmetric matrix; only its lower triangle is read.</summary>
    /// <param name="matrix">Row-major, size × size.</param>
    /// <param name="size">n.</param>
    public static SymmetricEigen Of(ReadOnlySpan<double> matrix, int size)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(matrix.Length, size * size, nameof(matrix));
        var a = new double[size * size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                a[i * size + j] = a[j * size + i] = matrix[i * size + j];
            }
        }

        // Row k of v becomes the k-th eigenvector.
        var v = new double[size][];
        for (var i = 0; i < size; i++)
        {
            v[i] = new double[size];
            v[i][i] = 1;
        }

        for (var sweep = 0; sweep < EnoughSweeps && !IsDiagonal(a, size); sweep++)
        {
            for (var p = 0; p < size - 1; p++)
            {
                for (var q = p + 1; q < size; q++)
                {
                    Rotate(a, v, size, p, q);
                }
            }
        }

        var order = Enumerable.Range(0, size).OrderByDescending(i => a[i * size + i]).ToArray();
        return new SymmetricEigen([.. order.Select(i => a[i * size + i])], [.. order.Select(i => v[i])]);
    }

    private static bool IsDiagonal(double[] a, int n)
    {
        const double Rounding = 1e-32; // of the sum of squares: 1e-16 of the norm
        var (off, all) = (0.0, 0.0);
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                var square = a[i * n + j] * a[i * n + j];
                all += square;
                off += i == j ? 0 : square;
            }
        }

        return !(off > Rounding * all);
    }

    private static void Rotate(double[] a, double[][] v, int n, int p, int q)
    {
        var apq = a[p * n + q];
        if (apq is 0)
        {
            return;
        }

        var theta = (a[q * n + q] - a[p * n + p]) / (2 * apq);
        var t = Math.CopySign(1, theta) / (Math.Abs(theta) + double.Hypot(theta, 1));
        var c = 1 / double.Hypot(t, 1);
        var s = t * c;
        for (var k = 0; k < n; k++)
        {
            var (akp, akq) = (a[k * n + p], a[k * n + q]);
            (a[k * n + p], a[k * n + q]) = (c * akp - s * akq, s * akp + c * akq);
        }

        for (var k = 0; k < n; k++)
        {
            var (apk, aqk) = (a[p * n + k], a[q * n + k]);
            (a[p * n + k], a[q * n + k]) = (c * apk - s * aqk, s * apk + c * aqk);
            var (vpk, vqk) = (v[p][k], v[q][k]);
            (v[p][k], v[q][k]) = (c * vpk - s * vqk, s * vpk + c * vqk);
        }
    }
}
