namespace Plumbmark.Engine.LeastSquares;

/// <summary>The dense side of <see cref="DampedGaussNewton"/>: J = Q R once for each place, then a small QR of [R; √λ D] for each damping.</summary>
internal sealed class DenseModel(ILeastSquaresProblem problem) : IDampedModel
{
    private readonly int _m = problem.EquationCount;
    private readonly int _n = problem.UnknownCount;
    private readonly double[] _residuals = new double[problem.EquationCount];
    private readonly double[] _trial = new double[problem.EquationCount];
    private readonly double[] _jacobian = new double[problem.EquationCount * problem.UnknownCount];
    private readonly double[] _scale = new double[problem.UnknownCount];
    private PivotedQr? _factor;

    // Qᵀ r, its first n entries.
    private double[] _c = [];

    public int UnknownCount => _n;

    public double SumOfSquares(ReadOnlySpan<double> x)
    {
        problem.Residuals(x, _trial);
        return Dense.SumOfSquares(_trial);
    }

    public Linearisation Linearise(ReadOnlySpan<double> x)
    {
        (_, _factor) = FactorAt(x);
        _c = new double[Math.Max(_m, _n)];
        _factor.ApplyQTranspose(_residuals, _c);
        var norm = Dense.Norm(_residuals);
        var (cosine, size) = (0.0, 0.0);
        for (var j = 0; j < _n; j++)
        {
            var (square, product) = (0.0, 0.0);
            for (var i = 0; i < _m; i++)
            {
                var entry = _jacobian[i * _n + j];
                square += entry * entry;
                product += entry * _residuals[i];
            }

            var columnNorm = Math.Sqrt(square);
            _scale[j] = Math.Max(_scale[j], columnNorm);
            cosine = columnNorm > 0 && norm > 0 ? Math.Max(cosine, Math.Abs(product) / (columnNorm * norm)) : cosine;
            size = double.Hypot(size, _scale[j] * x[j]);
        }

        return new Linearisation(cosine, size);
    }

    public (double[] Residuals, PivotedQr Factor) FactorAt(ReadOnlySpan<double> x)
    {
        problem.Residuals(x, _residuals);
        problem.Jacobian(x, _jacobian);
        return (_residuals, PivotedQr.Of(_jacobian, _m, _n));
    }

    public bool TryStep(double damping, Span<double> step, out StepForecast forecast)
    {
        forecast = default;
        var factor = _factor!;
        if (!Dense.IsFinite(_jacobian) || (!(damping > 0) && factor.Rank < _n))
        {
            return false;
        }

        var stacked = Stack(damping);
        var right = new double[stacked.Length / Math.Max(_n, 1)];
        for (var i = 0; i < Math.Min(_m, _n); i++)
        {
            right[i] = -_c[i];
        }

        PivotedQr.Of(stacked, right.Length, _n, 0).Solve(right).CopyTo(step);
        forecast = Forecast(damping, step, stacked);
        return Dense.IsFinite(step);
    }

    public bool TryPolishingStep(Span<double> step, out StepForecast forecast) => TryStep(0, step, out forecast);

    // Rows R of J (columns back in their own order), then √λ D.
    private double[] Stack(double damping)
    {
        var factor = _factor!;
        var top = Math.Min(_m, _n);
        var stacked = new double[(top + _n) * _n];
        for (var i = 0; i < top; i++)
        {
            for (var j = i; j < _n; j++)
            {
                var column = factor.ColumnOrder[j];
                stacked[i * _n + column] = factor.R(i, j) / factor.ScaleOf(column);
            }
        }

        for (var j = 0; j < _n; j++)
        {
            stacked[(top + j) * _n + j] = Math.Sqrt(damping) * (_scale[j] > 0 ? _scale[j] : 1);
        }

        return stacked;
    }

    // The minimiser satisfies g·δ = −|Jδ|² − λ|Dδ|², so the fall −2 g·δ − |Jδ|² is |Jδ|² + 2 λ |Dδ|²: no cancellation.
    private StepForecast Forecast(double damping, ReadOnlySpan<double> step, double[] stacked)
    {
        var (linear, scaled) = (0.0, 0.0);
        for (var i = 0; i < Math.Min(_m, _n); i++)
        {
            var change = Dense.Dot(stacked.AsSpan(i * _n, _n), step);
            linear += change * change;
        }

        for (var j = 0; j < _n; j++)
        {
            scaled += _scale[j] * step[j] * (_scale[j] * step[j]);
        }

        return new StepForecast(linear + 2 * damping * scaled, Math.Sqrt(scaled));
    }
}
