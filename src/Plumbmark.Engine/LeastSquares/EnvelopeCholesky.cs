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
        for (var i = 0; i < Size; i++)
        {
            var row = Row(i);
            var diagonal = row[^1];
            for (var j = _first[i]; j < i; j++)
            {
                var from = Math.Max(_first[i], _first[j]);
                var other = Row(j);
                var sum = Dense.Dot(row[(from - _first[i])..(j - _first[i])], other[(from - _first[j])..^1]);
                row[j - _first[i]] = (row[j - _first[i]] - sum) / other[^1];
            }

            var pivot = diagonal - Dense.SumOfSquares(row[..^1]);
            var relative = pivot > 0 && diagonal > 0 ? pivot / diagonal : 0;
            SmallestRelativePivot = Math.Min(SmallestRelativePivot, relative);
            if (!(relative > pivotTolerance))
            {
                return false;
            }

            row[^1] = Math.Sqrt(pivot);
        }

        return true;
    }

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
    public double[] Inverse()
    {
        var n = Size;
        var lower = InverseOfLower();
        var result = new double[n * n];

        // N⁻¹ = L⁻ᵀ L⁻¹ = Σ_k (row k of L⁻¹)ᵀ (row k of L⁻¹).
        for (var k = 0; k < n; k++)
        {
            var row = lower.AsSpan(k * n, k + 1);
            for (var i = 0; i <= k; i++)
            {
                if (row[i] is not 0)
                {
                    Dense.AddScaled(result.AsSpan(i * n, i + 1), row[i], row[..(i + 1)]);
                }
            }
        }

        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++)
            {
                result[j * n + i] = result[i * n + j];
            }
        }

        return result;
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

    private double[] InverseOfLower()
    {
        var n = Size;
        var lower = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            var row = Row(i);
            var target = lower.AsSpan(i * n, i + 1);
            for (var j = _first[i]; j < i; j++)
            {
                var entry = row[j - _first[i]];
                if (entry is not 0)
                {
                    Dense.AddScaled(target, -entry, lower.AsSpan(j * n, j + 1));
                }
            }

            var inverse = 1 / row[^1];
            for (var j = 0; j < i; j++)
            {
                target[j] *= inverse;
            }

            target[i] = inverse;
        }

        return lower;
    }
}
