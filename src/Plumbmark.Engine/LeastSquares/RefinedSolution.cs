namespace Plumbmark.Engine.LeastSquares;

/// <summary>The least-squares solution of A x ≈ b to nearly the last digit, where <see cref="PivotedQr.Solve"/> loses what the condition of A takes.</summary>
/// <remarks>
/// <para>Assumes that A has full column rank and is not so ill-conditioned that QR keeps no digit at all (condition below about 1e15).</para>
/// <para>Residual r and solution x together solve [I A; Aᵀ 0][r; x] = [b; 0]. What is left of it, f = b − r − A x and g = −Aᵀ r, is
/// summed with twice the digits, and the same factors give the correction: Rᵀ h = g, d = Qᵀ f, δr = Q [h; d₂], R δx = d₁ − h.</para>
/// <para>Sources: Björck, Iterative refinement of linear least squares solutions I, BIT 7 (1967) 257-278; sums in twice the precision after
/// Ogita, Rump and Oishi, SIAM J. Sci. Comput. 26 (2005), algorithm 5.3 (both from memory).</para>
/// </remarks>
public static class RefinedSolution
{
    // Each round wins the digits that QR kept; a solution with six good ones is through after three.
    private const int MostRounds = 8;

    /// <summary>The x that makes |A x − b| smallest.</summary>
    /// <param name="factors">The factors of <paramref name="matrix"/>, of full column rank.</param>
    /// <param name="matrix">A, row-major.</param>
    /// <param name="rightSide">b.</param>
    /// <exception cref="ArgumentException">The factors lack full column rank, or the sizes differ.</exception>
    public static double[] Of(PivotedQr factors, ReadOnlySpan<double> matrix, ReadOnlySpan<double> rightSide)
    {
        var (m, n) = (factors.Rows, factors.Columns);
        if (factors.Rank < n || matrix.Length != m * n || rightSide.Length != m)
        {
            throw new ArgumentException(
                "The factors, the matrix and the right side must belong together and have full column rank.",
                nameof(factors)
            );
        }

        var x = factors.Solve(rightSide);
        var r = new double[m];
        var f = new double[m];
        var g = new double[n];
        ResidualOfRows(matrix, rightSide, r, x, f);
        f.CopyTo(r, 0);
        var before = double.PositiveInfinity;
        for (var round = 0; round < MostRounds; round++)
        {
            ResidualOfRows(matrix, rightSide, r, x, f);
            ResidualOfColumns(matrix, r, g);
            var step = factors.CorrectAugmented(f, g);
            var size = LargestRelative(step.X, x);
            if (!(size < before))
            {
                break;
            }

            Dense.AddScaled(x, 1, step.X);
            Dense.AddScaled(r, 1, step.R);
            before = size;
        }

        return x;
    }

    // f = b − r − A x
    private static void ResidualOfRows(ReadOnlySpan<double> a, ReadOnlySpan<double> b, double[] r, double[] x, double[] f)
    {
        var n = x.Length;
        for (var i = 0; i < f.Length; i++)
        {
            var sum = new TwofoldSum(b[i]);
            sum.Add(-r[i]);
            for (var j = 0; j < n; j++)
            {
                sum.AddProduct(-a[i * n + j], x[j]);
            }

            f[i] = sum.Value;
        }
    }

    // g = −Aᵀ r
    private static void ResidualOfColumns(ReadOnlySpan<double> a, double[] r, double[] g)
    {
        var n = g.Length;
        for (var j = 0; j < n; j++)
        {
            var sum = new TwofoldSum(0);
            for (var i = 0; i < r.Length; i++)
            {
                sum.AddProduct(-a[i * n + j], r[i]);
            }

            g[j] = sum.Value;
        }
    }

    private static double LargestRelative(double[] step, double[] x)
    {
        var largest = 0.0;
        for (var j = 0; j < x.Length; j++)
        {
            largest = step[j] is 0 ? largest : Math.Max(largest, Math.Abs(step[j]) / Math.Max(Math.Abs(x[j]), Math.Abs(step[j])));
        }

        return largest;
    }

    /// <summary>A sum that carries its own rounding error along, as if added with twice the digits.</summary>
    private ref struct TwofoldSum(double first)
    {
        private double _high = first;
        private double _low;

        public readonly double Value => _high + _low;

        public void Add(double value)
        {
            // TwoSum (Knuth): high + low = a + b exactly.
            var sum = _high + value;
            var shared = sum - _high;
            _low += _high - (sum - shared) + (value - shared);
            _high = sum;
        }

        public void AddProduct(double a, double b)
        {
            var product = a * b;
            Add(product);
            _low += Math.FusedMultiplyAdd(a, b, -product);
        }
    }
}
