namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Singular values and right singular vectors of a tall matrix of two or three columns, without forming its square.</summary>
/// <remarks>
/// One-sided Jacobi (Hestenes 1958): rotate pairs of columns until every pair is square to each other; the lengths of the columns are then
/// the singular values. Small singular values keep their relative accuracy, which the scatter matrix would lose.
/// </remarks>
internal static class SingularValues
{
    // Columns count as square to each other when their cosine is below this: a few roundings of a double.
    private const double SquareCosine = 4e-16;
    private const int MostSweeps = 30;

    /// <summary>Overwrites <paramref name="columns"/>; returns the values, largest first, and the vectors in the same order.</summary>
    public static (double[] Values, double[][] Vectors) Of(double[][] columns)
    {
        var n = columns.Length;
        var v = new double[n][];
        for (var i = 0; i < n; i++)
        {
            v[i] = new double[n];
            v[i][i] = 1;
        }

        for (var sweep = 0; sweep < MostSweeps && Sweep(columns, v); sweep++) { }

        var lengths = Array.ConvertAll(columns, Length);
        var order = Enumerable.Range(0, n).OrderByDescending(i => lengths[i]).ToArray();
        return (Array.ConvertAll(order, i => lengths[i]), Array.ConvertAll(order, i => v[i]));
    }

    private static bool Sweep(double[][] a, double[][] v)
    {
        var rotated = false;
        for (var p = 0; p < a.Length - 1; p++)
        {
            for (var q = p + 1; q < a.Length; q++)
            {
                var (alpha, beta, gamma) = (Dot(a[p], a[p]), Dot(a[q], a[q]), Dot(a[p], a[q]));
                if (Math.Abs(gamma) <= SquareCosine * Math.Sqrt(alpha * beta))
                {
                    continue;
                }

                rotated = true;
                var zeta = (beta - alpha) / (2 * gamma);
                var t = Math.CopySign(1, zeta) / (Math.Abs(zeta) + Math.Sqrt(1 + (zeta * zeta)));
                var c = 1 / Math.Sqrt(1 + (t * t));
                Rotate(a[p], a[q], c, c * t);
                Rotate(v[p], v[q], c, c * t);
            }
        }

        return rotated;
    }

    private static void Rotate(double[] p, double[] q, double c, double s)
    {
        for (var i = 0; i < p.Length; i++)
        {
            (p[i], q[i]) = ((c * p[i]) - (s * q[i]), (s * p[i]) + (c * q[i]));
        }
    }

    private static double Length(double[] a) => Math.Sqrt(Dot(a, a));

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
