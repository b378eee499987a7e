namespace Plumbmark.Engine.LeastSquares;

/// <summary>
/// Cholesky factor N = L Lᵀ of a symmetric positive definite matrix stored by rows from the first non-zero entry to the diagonal.
/// </summary>
/// <remarks>
/// Fill stays inside that envelope, so a good ordering (<see cref="BandOrder"/>) makes a large network cheap, and a full matrix is the worst
/// case, not a special one. Source: George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981, chapter 4; selected
/// inverse: Takahashi, Fagan and Chin 1973 (both from memory).
/// </remarks>
internal sealed class EnvelopeCholesky
{
    private readonly int[] _first;
    private readonly int[] _start;
    private readonly double[] _values;

    /// <summary>Makes an all-zero matrix with the envelope given.</summary>
    /// <param name="firstColumn">For each row the column of its first entry, at most the row itself.</param>
    public EnvelopeCholesky(ReadOnlySpan<int> firstColumn)
    {
        Size = firstColumn.Length;
        _first = firstColumn.ToArray();
        _start = new int[Size + 1];
        for (var i = 0; i < Size; i++)
        {
            _start[i + 1] = _start[i] + i - _first[i] + 1;
        }

        _values = new double[_start[Size]];
    }

    /// <summary>Copies a matrix that is not factored.</summary>
    public EnvelopeCholesky(EnvelopeCholesky other)
        : this(other._first) => CopyFrom(other);

    /// <summary>Number of rows.</summary>
    public int Size { get; }

    /// <summary>Number of stored entries.</summary>
    public int EntryCount => _values.Length;

    /// <summary>Smallest pivot relative to the diagonal it started from: 1 is perfect, 0 singular; NaN never.</summary>
    public double SmallestRelativePivot { get; private set; }

    /// <summary>Sets all entries to zero, to be filled again.</summary>
    public void Clear() => Array.Clear(_values);

    /// <summary>An entry on or below the diagonal and inside the envelope.</summary>
    public ref double this[int row, int column] => ref _values[_start[row] + column - _first[row]];

    /// <summary>Column of the first stored entry of a row.</summary>
    public int FirstOf(int row) => _first[row];

    /// <summary>Copies another matrix of the same envelope.</summary>
    public void CopyFrom(EnvelopeCholesky other) => other._values.CopyTo(_values, 0);

    /// <summary>Factors in place. False: a pivot fell below the tolerance, relative to its own diagonal entry.</summary>
    public bool TryFactor(double pivotTolerance)
    {
        SmallestRelativePivot = 1;
        var i = 0;
        while (i < Size)
        {
            var rows = i <= Size - 4 ? 4 : 1;
            if (rows == 4)
            {
                EliminateFour(i);
            }

            for (var end = i + rows; i < end; i++)
            {
                EliminateRest(i, rows == 4 ? end - 4 : 0);
                if (!TryRoot(i, pivotTolerance))
                {
                    return false;
                }
            }
        }

        return true;
    }

    // Rows i to i + 3 as far as column i: they share each earlier row, and no entry waits for another of its column.
    private void EliminateFour(int i)
    {
        var (f0, f1, f2, f3) = (_first[i], _first[i + 1], _first[i + 2], _first[i + 3]);
        var shared = Math.Max(Math.Max(f0, f1), Math.Max(f2, f3));
        var r0 = Row(i);
        var r1 = Row(i + 1);
        var r2 = Row(i + 2);
        var r3 = Row(i + 3);
        for (var r = i; r < i + 4; r++)
        {
            EliminateRest(r, 0, Math.Min(shared, i));
        }

        Span<double> sums = stackalloc double[4];
        for (var j = shared; j < i; j++)
        {
            var from = Math.Max(shared, _first[j]);
            Dense.DotFour(From(j, from)[..^1], r0[(from - f0)..], r1[(from - f1)..], r2[(from - f2)..], r3[(from - f3)..], sums);
            var inverse = 1 / _values[_start[j + 1] - 1];
            r0[j - f0] = (r0[j - f0] - sums[0] - Products(i, j, from)) * inverse;
            r1[j - f1] = (r1[j - f1] - sums[1] - Products(i + 1, j, from)) * inverse;
            r2[j - f2] = (r2[j - f2] - sums[2] - Products(i + 2, j, from)) * inverse;
            r3[j - f3] = (r3[j - f3] - sums[3] - Products(i + 3, j, from)) * inverse;
        }
    }

    // The entries of a row from a column on, one by one.
    private void EliminateRest(int i, int from, int? to = null)
    {
        var row = Row(i);
        for (var j = Math.Max(from, _first[i]); j < (to ?? i); j++)
        {
            row[j - _first[i]] = (row[j - _first[i]] - Products(i, j, j)) / _values[_start[j + 1] - 1];
        }
    }

    private bool TryRoot(int i, double pivotTolerance)
    {
        var row = Row(i);
        var diagonal = row[^1];
        var pivot = diagonal - Dense.SumOfSquares(row[..^1]);
        var relative = pivot > 0 && diagonal > 0 ? pivot / diagonal : 0;
        SmallestRelativePivot = Math.Min(SmallestRelativePivot, relative);
        row[^1] = Math.Sqrt(Math.Max(0, pivot));
        return relative > pivotTolerance;
    }

    // Σ of the products of two rows over the columns before the one given.
    private double Products(int i, int j, int before)
    {
        var from = Math.Max(_first[i], _first[j]);
        return from < before ? Dense.Dot(From(i, from)[..(before - from)], From(j, from)) : 0;
    }

    private ReadOnlySpan<double> From(int row, int column) => Row(row)[(column - _first[row])..];

    /// <summary>Solves N x = b in place.</summary>
    public void Solve(Span<double> b)
    {
        SolveLower(b, 0);
        for (var i = Size - 1; i >= 0; i--)
        {
            var row = Row(i);
            b[i] /= row[^1];
            Dense.AddScaled(b[_first[i]..i], -b[i], row[..^1]);
        }
    }

    /// <summary>Solves L y = b in place, where b is zero before the row given.</summary>
    public void SolveLower(Span<double> b, int firstNonZero)
    {
        for (var i = firstNonZero; i < Size; i++)
        {
            var row = Row(i);
            b[i] = (b[i] - Dense.Dot(row[..^1], b[_first[i]..i])) / row[^1];
        }
    }

    /// <summary>N⁻¹, row-major and full.</summary>
    /// <remarks>N⁻¹ = U Uᵀ with U = L⁻ᵀ: entry (i, j) is the product of the rows i and j of U from the later of the two on, so that U may be written over row by row.</remarks>
    public double[] Inverse()
    {
        var n = Size;
        var u = InverseOfLower();
        Span<double> sums = stackalloc double[4];
        for (var i = 0; i < n; i++)
        {
            var row = u.AsSpan(i * n, n);
            var j = i;
            for (; j <= n - 4; j += 4)
            {
                var common = j + 3;
                Dense.DotFour(row[common..], U(j), U(j + 1), U(j + 2), U(j + 3), sums);
                for (var k = 0; k < 3; k++)
                {
                    for (var l = j + k; l < common; l++)
                    {
                        sums[k] += row[l] * u[(j + k) * n + l];
                    }
                }

                sums.CopyTo(row[j..]);

                ReadOnlySpan<double> U(int other) => u.AsSpan(other * n + common, n - common);
            }

            for (; j < n; j++)
            {
                row[j] = Dense.Dot(row[j..], u.AsSpan(j * n + j, n - j));
            }
        }

        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                u[i * n + j] = u[j * n + i];
            }
        }

        return u;
    }

    /// <summary>The entries of N⁻¹ inside the envelope only, in a matrix of the same shape.</summary>
    /// <remarks>
    /// Takahashi: for i from the last row down, with c the rows below i whose envelope reaches column i:
    /// z_ji = −(Σ_k∈c z_jk l_ki) / l_ii, z_ii = 1 / l_ii² − (Σ_k∈c l_ki z_ki) / l_ii.
    /// </remarks>
    public EnvelopeCholesky SelectedInverse()
    {
        var z = new EnvelopeCholesky(_first);
        var below = new List<int>[Size];
        for (var i = 0; i < Size; i++)
        {
            below[i] = [];
            for (var j = _first[i]; j < i; j++)
            {
                below[j].Add(i);
            }
        }

        var column = new double[Size];
        for (var i = Size - 1; i >= 0; i--)
        {
            var rows = below[i];
            var diagonal = this[i, i];
            for (var a = 0; a < rows.Count; a++)
            {
                column[a] = this[rows[a], i];
            }

            var own = 1 / (diagonal * diagonal);
            for (var a = 0; a < rows.Count; a++)
            {
                var sum = 0.0;
                for (var b = 0; b < rows.Count; b++)
                {
                    var (high, low) = a >= b ? (rows[a], rows[b]) : (rows[b], rows[a]);
                    sum += z[high, low] * column[b];
                }

                z[rows[a], i] = -sum / diagonal;
                own += column[a] * sum / (diagonal * diagonal);
            }

            z[i, i] = own;
        }

        return z;
    }

    private Span<double> Row(int i) => _values.AsSpan(_start[i], _start[i + 1] - _start[i]);

    // U = L⁻ᵀ, row-major: row i holds column i of L⁻¹, found by forward substitution, four columns at a time.
    private double[] InverseOfLower()
    {
        var n = Size;
        var u = new double[n * n];
        var i = 0;
        for (; i <= n - 4; i += 4)
        {
            SubstituteFour(u, i);
        }

        for (; i < n; i++)
        {
            Substitute(u, i, n);
        }

        return u;
    }

    private void SubstituteFour(double[] u, int i)
    {
        var (n, last) = (Size, i + 3);
        for (var k = 0; k < 4; k++)
        {
            Substitute(u, i + k, last + 1);
        }

        Span<double> sums = stackalloc double[4];
        for (var k = last + 1; k < n; k++)
        {
            var from = Math.Max(last, _first[k]);
            var row = Row(k);
            Dense.DotFour(row[(from - _first[k])..^1], U(0), U(1), U(2), U(3), sums);
            for (var c = 0; c < 4; c++)
            {
                for (var l = Math.Max(i + c, _first[k]); l < from; l++)
                {
                    sums[c] += row[l - _first[k]] * u[(i + c) * n + l];
                }

                u[(i + c) * n + k] = -sums[c] / row[^1];
            }

            ReadOnlySpan<double> U(int column) => u.AsSpan((i + column) * n + from, n - from);
        }
    }

    // Column i of L⁻¹ from row i to the row given, which is left out.
    private void Substitute(double[] u, int i, int to)
    {
        var column = u.AsSpan(i * Size, Size);
        for (var k = i; k < to; k++)
        {
            var begin = Math.Max(i, _first[k]);
            var own = k == i ? 1.0 : 0.0;
            column[k] = (own - (begin < k ? Dense.Dot(column[begin..k], From(k, begin)) : 0)) / _values[_start[k + 1] - 1];
        }
    }
}
