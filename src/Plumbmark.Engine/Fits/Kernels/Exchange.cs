namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>Smallest t with |f + J x| at most t in every row: the best linear fit in the largest residual, exactly.</summary>
/// <remarks>
/// The exchange method (Stiefel 1959), which is the dual simplex method on: minimise t, subject to g·x + t >= h for every row. A basis of
/// d + 1 rows is solved, the row most in breach enters, the row that keeps all multipliers non-negative leaves. The multipliers λ
/// (non-negative, summing to 1) prove the optimum and say how t answers an error in each row: dt = Σ λ dh.
/// </remarks>
internal sealed class Exchange(int unknowns)
{
    // In scaled coordinates, a few roundings of numbers near 1; t is settled when no row is in breach by more.
    private const double BreachTolerance = 2e-15;
    private const double PivotTolerance = 1e-12;
    private const int MostExchanges = 10_000;

    private readonly int _d = unknowns;
    private readonly List<double> _rows = [];
    private readonly List<double> _heights = [];
    private int[] _basis = [];

    public double[] X { get; } = new double[unknowns];

    public double T { get; private set; }

    /// <summary>The rows of the basis; row 2k is the upper and 2k + 1 the lower side of the k-th two-sided row.</summary>
    public IReadOnlyList<int> Basis => _basis;

    public double[] Multipliers { get; private set; } = [];

    private int Count => _heights.Count;

    /// <summary>|residual + jacobian x| at most t.</summary>
    public void AddTwoSided(double residual, ReadOnlySpan<double> jacobian)
    {
        AddOneSided(residual, jacobian, 1);
        AddOneSided(residual, jacobian, -1);
    }

    /// <summary>sign (residual + jacobian x) at most t.</summary>
    public void AddOneSided(double residual, ReadOnlySpan<double> jacobian, int sign)
    {
        foreach (var j in jacobian)
        {
            _rows.Add(-sign * j);
        }

        _heights.Add(sign * residual);
    }

    /// <summary>Chooses the first basis among two-sided rows. False when they do not determine the unknowns.</summary>
    public bool TryStart()
    {
        var independent = IndependentRows();
        if (independent.Count < _d)
        {
            return false;
        }

        // One more row beside the independent ones; the signs of the combination that vanishes choose the sides.
        for (var extra = Count - 2; extra >= 0; extra -= 2)
        {
            if (independent.Contains(extra))
            {
                continue;
            }

            var matrix = new double[_d, _d];
            var weights = new double[_d];
            for (var i = 0; i < _d; i++)
            {
                for (var j = 0; j < _d; j++)
                {
                    matrix[i, j] = _rows[(independent[j] * _d) + i];
                }

                weights[i] = -_rows[(extra * _d) + i];
            }

            if (SmallLinear.Solve(matrix, weights))
            {
                _basis = [.. independent.Select((row, i) => weights[i] >= 0 ? row : row + 1), extra];
                return true;
            }
        }

        return false;
    }

    /// <summary>Exchanges rows until none is in breach. False when it does not come to an end.</summary>
    public bool TrySolve(out int exchanges)
    {
        for (exchanges = 0; exchanges < MostExchanges; exchanges++)
        {
            if (!SolveBasis())
            {
                return false;
            }

            var entering = MostInBreach(exchanges);
            if (entering < 0)
            {
                return true;
            }

            if (!Swap(entering))
            {
                return false;
            }
        }

        return false;
    }

    private bool SolveBasis()
    {
        var n = _d + 1;
        var (matrix, transposed) = (new double[n, n], new double[n, n]);
        var (x, lambda) = (new double[n], new double[n]);
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                transposed[j, i] = matrix[i, j] = j < _d ? _rows[(_basis[i] * _d) + j] : 1;
            }

            x[i] = _heights[_basis[i]];
        }

        lambda[_d] = 1;
        if (!SmallLinear.Solve(matrix, x) || !SmallLinear.Solve(transposed, lambda))
        {
            return false;
        }

        x.AsSpan(0, _d).CopyTo(X);
        T = x[_d];
        Multipliers = lambda;
        return true;
    }

    // Largest breach first; after many exchanges the first breach by number (Bland's rule), which cannot go round in a circle.
    private int MostInBreach(int exchanges)
    {
        var byNumber = exchanges > MostExchanges / 10;
        var (worst, found) = (BreachTolerance * (1 + Math.Abs(T)), -1);
        for (var k = 0; k < Count; k++)
        {
            var breach = _heights[k] - T;
            for (var j = 0; j < _d; j++)
            {
                breach -= _rows[(k * _d) + j] * X[j];
            }

            if (breach > worst && Array.IndexOf(_basis, k) < 0)
            {
                (worst, found) = (breach, k);
                if (byNumber)
                {
                    break;
                }
            }
        }

        return found;
    }

    private bool Swap(int entering)
    {
        var n = _d + 1;
        var transposed = new double[n, n];
        var y = new double[n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                transposed[j, i] = j < _d ? _rows[(_basis[i] * _d) + j] : 1;
            }

            y[i] = i < _d ? _rows[(entering * _d) + i] : 1;
        }

        if (!SmallLinear.Solve(transposed, y))
        {
            return false;
        }

        var (leaving, smallest) = (-1, double.PositiveInfinity);
        for (var i = 0; i < n; i++)
        {
            if (y[i] > PivotTolerance && Math.Max(Multipliers[i], 0) / y[i] < smallest)
            {
                (leaving, smallest) = (i, Math.Max(Multipliers[i], 0) / y[i]);
            }
        }

        if (leaving >= 0)
        {
            _basis[leaving] = entering;
        }

        return leaving >= 0;
    }

    // Rows that between them span every direction, by taking each time the row with most left over (pivoted Gram-Schmidt).
    private List<int> IndependentRows()
    {
        const double SpanShare = 1e-9;
        var rest = _rows.ToArray();
        var chosen = new List<int>();
        var first = 0.0;
        while (chosen.Count < _d)
        {
            var (best, bestNorm) = (-1, 0.0);
            for (var k = 0; k < Count; k += 2)
            {
                var norm = Dot(rest.AsSpan(k * _d, _d), rest.AsSpan(k * _d, _d));
                if (norm > bestNorm)
                {
                    (best, bestNorm) = (k, norm);
                }
            }

            first = Math.Max(first, bestNorm);
            if (best < 0 || bestNorm <= SpanShare * SpanShare * first)
            {
                break;
            }

            chosen.Add(best);
            var direction = rest.AsSpan(best * _d, _d).ToArray();
            for (var k = 0; k < Count; k += 2)
            {
                var row = rest.AsSpan(k * _d, _d);
                var share = Dot(row, direction);
                for (var j = 0; j < _d; j++)
                {
                    row[j] -= share / bestNorm * direction[j];
                }
            }
        }

        return chosen;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = 0.0;
        for (var j = 0; j < a.Length; j++)
        {
            sum += a[j] * b[j];
        }

        return sum;
    }
}
