namespace Plumbmark.Engine.LeastSquares;

/// <summary>
/// Householder QR with column pivoting of a dense matrix A, for least squares whose rank is part of the question.
/// </summary>
/// <remarks>
/// <para>A Π = Q R, |r₁₁| ≥ |r₂₂| ≥ …; columns are first scaled by powers of two to norms near one, which costs no digit, and rows are
/// taken largest first, so that weights of very different size do no harm (Powell and Reid 1969; Cox and Higham 1998). Rank: the number
/// of |r_kk| above tolerance · |r₁₁|.</para>
/// <para>Source: Golub and Van Loan, Matrix Computations, 4th ed., algorithms 5.1.1, 5.2.1 and 5.4.1 (from memory).</para>
/// <para>Limit: the diagonal of R can miss a rank defect on matrices made for that purpose (Kahan's); none of our models is one.</para>
/// </remarks>
public sealed class PivotedQr
{
    // Row-major m × n: R on and above the diagonal, the Householder vectors (v_k[k] = 1 implied) below.
    private readonly double[] _qr;
    private readonly double[] _tau;
    private readonly double[] _columnScale;
    private readonly int[] _rowOrder;
    private readonly int[] _columnOrder;

    private PivotedQr(ReadOnlySpan<double> matrix, int rows, int columns, double rankTolerance)
    {
        (Rows, Columns) = (rows, columns);
        _qr = new double[rows * columns];
        _tau = new double[Math.Min(rows, columns)];
        _columnScale = new double[columns];
        _columnOrder = [.. Enumerable.Range(0, columns)];
        _rowOrder = RowsLargestFirst(matrix, rows, columns);
        CopyScaled(matrix);
        Factor();
        Rank = CountRank(rankTolerance);
    }

    /// <summary>Number of rows of A.</summary>
    public int Rows { get; }

    /// <summary>Number of columns of A.</summary>
    public int Columns { get; }

    /// <summary>The numerical rank of A with its columns scaled.</summary>
    public int Rank { get; }

    /// <summary>|r₁₁| / |r_nn| of the scaled matrix: a lower bound of its condition, and rarely far from it. Infinite: rank defect.</summary>
    public double ConditionEstimate
    {
        get
        {
            var n = Math.Min(Rows, Columns);
            if (n == 0)
            {
                return 1;
            }

            var last = Rows < Columns ? 0 : Math.Abs(R(n - 1, n - 1));
            return last > 0 ? Math.Abs(R(0, 0)) / last : double.PositiveInfinity;
        }
    }

    /// <summary>Which column of A stands at each place of R.</summary>
    public ReadOnlySpan<int> ColumnOrder => _columnOrder;

    /// <summary>The smallest relative pivot that counts: rounding of m sums.</summary>
    public static double DefaultRankTolerance(int rows, int columns) => Math.Max(rows, columns) * (double.BitIncrement(1.0) - 1.0);

    /// <summary>Factors a matrix; it is copied.</summary>
    /// <param name="matrix">Row-major, rows × columns.</param>
    /// <param name="rows">m.</param>
    /// <param name="columns">n.</param>
    /// <param name="rankTolerance">Relative to the largest pivot; null: <see cref="DefaultRankTolerance"/>.</param>
    public static PivotedQr Of(ReadOnlySpan<double> matrix, int rows, int columns, double? rankTolerance = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rows);
        ArgumentOutOfRangeException.ThrowIfNegative(columns);
        ArgumentOutOfRangeException.ThrowIfNotEqual(matrix.Length, rows * columns, nameof(matrix));
        return new PivotedQr(matrix, rows, columns, rankTolerance ?? DefaultRankTolerance(rows, columns));
    }

    /// <summary>The x that makes |A x − b| smallest; columns beyond the rank get zero (a basic solution).</summary>
    public double[] Solve(ReadOnlySpan<double> rightSide)
    {
        Span<double> c = new double[Rows];
        ApplyQTranspose(rightSide, c);
        var x = new double[Columns];
        BackSubstitute(c, x);
        return x;
    }

    /// <summary>(AᵀA)⁻¹, row-major: the cofactor matrix of the solution.</summary>
    /// <exception cref="InvalidOperationException">The rank is less than the number of columns; ask <see cref="Rank"/> first.</exception>
    public double[] InverseGram()
    {
        if (Rank < Columns)
        {
            throw new InvalidOperationException("A matrix without full column rank has no inverse Gram matrix.");
        }

        // (AᵀA)⁻¹ = Π R⁻¹ R⁻ᵀ Πᵀ; row i of the upper triangular S = R⁻¹ is contiguous.
        var n = Columns;
        var s = InverseOfR();
        var result = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = i; j < n; j++)
            {
                var value = Dense.Dot(s.AsSpan(i * n + j, n - j), s.AsSpan(j * n + j, n - j));
                var (p, q) = (_columnOrder[i], _columnOrder[j]);
                value *= _columnScale[p] * _columnScale[q];
                result[p * n + q] = value;
                result[q * n + p] = value;
            }
        }

        return result;
    }

    /// <summary>Vectors d with A d = 0, orthonormal, one row each; as many as columns lack in rank.</summary>
    public double[][] NullSpace()
    {
        var basis = new double[Columns - Rank][];
        for (var k = 0; k < basis.Length; k++)
        {
            // R₁₁ y = −R₁₂ e_k, unscaled: column scale times pivot order.
            var c = new double[Math.Max(Rows, Rank)];
            for (var i = 0; i < Rank; i++)
            {
                c[i] = -R(i, Rank + k);
            }

            basis[k] = new double[Columns];
            BackSubstitute(c, basis[k]);
            var free = _columnOrder[Rank + k];
            basis[k][free] = _columnScale[free];
        }

        Orthonormalise(basis);
        return basis;
    }

    /// <summary>Q₁ᵀ b for the permuted rows: the first <see cref="Rank"/> entries meet R, the rest is the residual.</summary>
    internal void ApplyQTranspose(ReadOnlySpan<double> b, Span<double> c)
    {
        for (var i = 0; i < Rows; i++)
        {
            c[i] = b[_rowOrder[i]];
        }

        for (var k = 0; k < _tau.Length; k++)
        {
            var sum = c[k];
            for (var i = k + 1; i < Rows; i++)
            {
                sum += _qr[i * Columns + k] * c[i];
            }

            sum *= _tau[k];
            c[k] -= sum;
            for (var i = k + 1; i < Rows; i++)
            {
                c[i] -= sum * _qr[i * Columns + k];
            }
        }
    }

    /// <summary>Solves [I A; Aᵀ 0][r; x] = [f; g] with the factors, for full column rank (Björck 1967; see <see cref="RefinedSolution"/>).</summary>
    internal (double[] R, double[] X) CorrectAugmented(ReadOnlySpan<double> f, ReadOnlySpan<double> g)
    {
        var d = new double[Rows];
        ApplyQTranspose(f, d);
        var h = new double[Columns];
        for (var i = 0; i < Columns; i++)
        {
            var column = _columnOrder[i];
            h[i] = g[column] * _columnScale[column];
            for (var k = 0; k < i; k++)
            {
                h[i] -= R(k, i) * h[k];
            }

            h[i] /= R(i, i);
        }

        var y = new double[Columns];
        for (var i = 0; i < Columns; i++)
        {
            (d[i], y[i]) = (h[i], d[i] - h[i]);
        }

        var x = new double[Columns];
        BackSubstitute(y, x);
        return (ApplyQ(d), x);
    }

    /// <summary>Q d, its rows in A's order.</summary>
    private double[] ApplyQ(double[] d)
    {
        for (var k = _tau.Length - 1; k >= 0; k--)
        {
            var sum = d[k];
            for (var i = k + 1; i < Rows; i++)
            {
                sum += _qr[i * Columns + k] * d[i];
            }

            sum *= _tau[k];
            d[k] -= sum;
            for (var i = k + 1; i < Rows; i++)
            {
                d[i] -= sum * _qr[i * Columns + k];
            }
        }

        var result = new double[Rows];
        for (var i = 0; i < Rows; i++)
        {
            result[_rowOrder[i]] = d[i];
        }

        return result;
    }

    /// <summary>An entry of R, of the scaled and permuted matrix.</summary>
    internal double R(int row, int column) => _qr[row * Columns + column];

    /// <summary>The power of two by which a column was multiplied.</summary>
    internal double ScaleOf(int column) => _columnScale[column];

    private void BackSubstitute(ReadOnlySpan<double> c, Span<double> x)
    {
        Span<double> y = new double[Rank];
        for (var i = Rank - 1; i >= 0; i--)
        {
            var tail = Dense.Dot(_qr.AsSpan(i * Columns + i + 1, Rank - i - 1), y[(i + 1)..]);
            y[i] = (c[i] - tail) / R(i, i);
            x[_columnOrder[i]] = y[i] * _columnScale[_columnOrder[i]];
        }
    }

    private double[] InverseOfR()
    {
        // Row i of S: s_ii = 1 / r_ii, s_i,j>i = −(Σ_k>i r_ik s_kj) / r_ii.
        var n = Columns;
        var s = new double[n * n];
        for (var i = n - 1; i >= 0; i--)
        {
            var row = s.AsSpan(i * n, n);
            for (var k = i + 1; k < n; k++)
            {
                Dense.AddScaled(row[k..], -R(i, k), s.AsSpan(k * n + k, n - k));
            }

            var inverse = 1 / R(i, i);
            for (var j = i + 1; j < n; j++)
            {
                row[j] *= inverse;
            }

            row[i] = inverse;
        }

        return s;
    }

    private static int[] RowsLargestFirst(ReadOnlySpan<double> matrix, int rows, int columns)
    {
        var size = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            foreach (var value in matrix.Slice(i * columns, columns))
            {
                size[i] = Math.Max(size[i], Math.Abs(value));
            }
        }

        // Stable, so that equal rows keep their order and the digits do not depend on the sort.
        return [.. Enumerable.Range(0, rows).OrderByDescending(i => size[i])];
    }

    private void CopyScaled(ReadOnlySpan<double> matrix)
    {
        var squares = new double[Columns];
        for (var i = 0; i < Rows; i++)
        {
            var row = matrix.Slice(i * Columns, Columns);
            for (var j = 0; j < Columns; j++)
            {
                squares[j] += row[j] * row[j];
            }
        }

        for (var j = 0; j < Columns; j++)
        {
            _columnScale[j] = 1 / Dense.PowerOfTwoNear(Math.Sqrt(squares[j]));
        }

        for (var i = 0; i < Rows; i++)
        {
            var row = matrix.Slice(_rowOrder[i] * Columns, Columns);
            for (var j = 0; j < Columns; j++)
            {
                _qr[i * Columns + j] = row[j] * _columnScale[j];
            }
        }
    }

    private void Factor()
    {
        var squares = new double[Columns];
        var reference = new double[Columns];
        ColumnSquares(0, squares);
        squares.CopyTo(reference, 0);
        var w = new double[Columns];
        for (var k = 0; k < _tau.Length; k++)
        {
            SwapColumns(k, LargestFrom(k, squares), squares, reference);
            _tau[k] = MakeReflector(k);
            ApplyReflector(k, w);
            Downdate(k, squares, reference);
        }
    }

    private void ColumnSquares(int fromRow, Span<double> squares)
    {
        squares.Clear();
        for (var i = fromRow; i < Rows; i++)
        {
            var row = _qr.AsSpan(i * Columns, Columns);
            for (var j = 0; j < row.Length; j++)
            {
                squares[j] += row[j] * row[j];
            }
        }
    }

    private int LargestFrom(int k, double[] squares)
    {
        var best = k;
        for (var j = k + 1; j < Columns; j++)
        {
            if (squares[j] > squares[best])
            {
                best = j;
            }
        }

        return best;
    }

    private void SwapColumns(int k, int p, double[] squares, double[] reference)
    {
        if (k == p)
        {
            return;
        }

        for (var i = 0; i < Rows; i++)
        {
            (_qr[i * Columns + k], _qr[i * Columns + p]) = (_qr[i * Columns + p], _qr[i * Columns + k]);
        }

        (_columnOrder[k], _columnOrder[p]) = (_columnOrder[p], _columnOrder[k]);
        (squares[k], squares[p]) = (squares[p], squares[k]);
        (reference[k], reference[p]) = (reference[p], reference[k]);
    }

    private double MakeReflector(int k)
    {
        var tail = 0.0;
        for (var i = k + 1; i < Rows; i++)
        {
            tail += _qr[i * Columns + k] * _qr[i * Columns + k];
        }

        var alpha = R(k, k);
        if (tail <= 0)
        {
            return 0;
        }

        var beta = -Math.CopySign(Math.Sqrt(alpha * alpha + tail), alpha);
        var inverse = 1 / (alpha - beta);
        for (var i = k + 1; i < Rows; i++)
        {
            _qr[i * Columns + k] *= inverse;
        }

        _qr[k * Columns + k] = beta;
        return (beta - alpha) / beta;
    }

    private void ApplyReflector(int k, double[] w)
    {
        var width = Columns - k - 1;
        if (_tau[k] <= 0 || width == 0)
        {
            return;
        }

        var sums = w.AsSpan(0, width);
        _qr.AsSpan(k * Columns + k + 1, width).CopyTo(sums);
        for (var i = k + 1; i < Rows; i++)
        {
            var v = _qr[i * Columns + k];
            if (v is not 0)
            {
                Dense.AddScaled(sums, v, _qr.AsSpan(i * Columns + k + 1, width));
            }
        }

        Dense.AddScaled(_qr.AsSpan(k * Columns + k + 1, width), -_tau[k], sums);
        for (var i = k + 1; i < Rows; i++)
        {
            var v = _qr[i * Columns + k];
            if (v is not 0)
            {
                Dense.AddScaled(_qr.AsSpan(i * Columns + k + 1, width), -_tau[k] * v, sums);
            }
        }
    }

    // The norm of what is left of a column falls as rows are eliminated; once it has lost half its digits it is summed afresh.
    private void Downdate(int k, double[] squares, double[] reference)
    {
        const double HalfTheDigits = 1e-8;
        for (var j = k + 1; j < Columns; j++)
        {
            var eliminated = R(k, j);
            squares[j] -= eliminated * eliminated;
            if (squares[j] <= HalfTheDigits * reference[j])
            {
                squares[j] = 0;
                for (var i = k + 1; i < Rows; i++)
                {
                    squares[j] += R(i, j) * R(i, j);
                }

                reference[j] = squares[j];
            }
        }
    }

    private int CountRank(double tolerance)
    {
        var n = _tau.Length;
        if (n == 0 || !(Math.Abs(R(0, 0)) > 0))
        {
            return 0;
        }

        var least = tolerance * Math.Abs(R(0, 0));
        var rank = 0;
        while (rank < n && Math.Abs(R(rank, rank)) > least)
        {
            rank++;
        }

        return rank;
    }

    // Modified Gram-Schmidt, twice: orthogonal to working precision (Giraud et al. 2005).
    private static void Orthonormalise(double[][] vectors)
    {
        for (var k = 0; k < vectors.Length; k++)
        {
            for (var pass = 0; pass < 2; pass++)
            {
                for (var j = 0; j < k; j++)
                {
                    Dense.AddScaled(vectors[k], -Dense.Dot(vectors[j], vectors[k]), vectors[j]);
                }

                var norm = Dense.Norm(vectors[k]);
                for (var i = 0; i < vectors[k].Length; i++)
                {
                    vectors[k][i] /= norm;
                }
            }
        }
    }
}
