namespace Plumbmark.Engine.Hypotheses;

/// <summary>A symmetric positive definite matrix as A = L Lᵀ, L lower triangular.</summary>
/// <remarks>Golub and Van Loan, Matrix Computations, 4th edition, algorithm 4.2.1 (row by row). Only the lower triangle of A is read.</remarks>
internal sealed class Cholesky
{
    private readonly double[,] _l;

    private Cholesky(double[,] l) => _l = l;

    private int Count => _l.GetLength(0);

    /// <summary>The factor, or null when a pivot falls below <paramref name="leastPivotShare"/> of its diagonal entry: rank is missing there.</summary>
    /// <param name="a">The matrix.</param>
    /// <param name="leastPivotShare">How much of a diagonal entry must remain after what came before is taken out.</param>
    public static Cholesky? Of(double[,] a, double leastPivotShare)
    {
        var n = a.GetLength(0);
        var l = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= l[i, k] * l[j, k];
                }

                if (i != j)
                {
                    l[i, j] = sum / l[j, j];
                }
                else if (sum > leastPivotShare * a[i, i])
                {
                    l[i, i] = Math.Sqrt(sum);
                }
                else
                {
                    return null;
                }
            }
        }

        return new Cholesky(l);
    }

    /// <summary>L⁻¹ b: what has covariance A becomes free of correlation and of unit variance.</summary>
    public double[] Whiten(ReadOnlySpan<double> b)
    {
        var x = b.ToArray();
        for (var i = 0; i < x.Length; i++)
        {
            var sum = x[i];
            for (var k = 0; k < i; k++)
            {
                sum -= _l[i, k] * x[k];
            }

            x[i] = sum / _l[i, i];
        }

        return x;
    }

    /// <summary>A⁻¹ b.</summary>
    public double[] Solve(ReadOnlySpan<double> b)
    {
        return Unwhiten(Whiten(b));
    }

    /// <summary>L⁻ᵀ b.</summary>
    public double[] Unwhiten(ReadOnlySpan<double> b)
    {
        var x = b.ToArray();
        for (var i = Count - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var k = i + 1; k < Count; k++)
            {
                sum -= _l[k, i] * x[k];
            }

            x[i] = sum / _l[i, i];
        }

        return x;
    }

    /// <summary>A⁻¹.</summary>
    public double[,] Inverse()
    {
        var inverse = new double[Count, Count];
        var unit = new double[Count];
        for (var j = 0; j < Count; j++)
        {
            unit[j] = 1;
            var column = Solve(unit);
            unit[j] = 0;
            for (var i = 0; i < Count; i++)
            {
                inverse[i, j] = column[i];
            }
        }

        return inverse;
    }
}
