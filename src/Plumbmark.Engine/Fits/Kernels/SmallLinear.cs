namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>A square set of at most seven equations by elimination with the largest pivot of each column.</summary>
internal static class SmallLinear
{
    // In scaled coordinates a smaller pivot means that two rows say the same.
    private const double SmallestPivot = 1e-13;

    /// <summary>Overwrites <paramref name="a"/>; leaves the solution in <paramref name="b"/>. False when the rows are not independent.</summary>
    public static bool Solve(double[,] a, double[] b)
    {
        var n = b.Length;
        for (var k = 0; k < n; k++)
        {
            var pivot = k;
            for (var i = k + 1; i < n; i++)
            {
                pivot = Math.Abs(a[i, k]) > Math.Abs(a[pivot, k]) ? i : pivot;
            }

            if (Math.Abs(a[pivot, k]) < SmallestPivot)
            {
                return false;
            }

            for (var j = k; j < n; j++)
            {
                (a[k, j], a[pivot, j]) = (a[pivot, j], a[k, j]);
            }

            (b[k], b[pivot]) = (b[pivot], b[k]);
            for (var i = k + 1; i < n; i++)
            {
                var factor = a[i, k] / a[k, k];
                for (var j = k; j < n; j++)
                {
                    a[i, j] -= factor * a[k, j];
                }

                b[i] -= factor * b[k];
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < n; j++)
            {
                b[k] -= a[k, j] * b[j];
            }

            b[k] /= a[k, k];
        }

        return true;
    }
}
