using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The sparse side of <see cref="DampedGaussNewton"/>: normal equations in an envelope, neighbours near each other.</summary>
/// <remarks>
/// The gradient Jᵀ r is formed from the rows, so the digits of the result do not suffer from the squared condition of the normal matrix; only
/// the speed of the last steps does. The rank decision and the covariance are taken elsewhere (<see cref="NetworkFactor"/>).
/// </remarks>
internal sealed class NetworkModel : IDampedModel
{
    private readonly CompiledNetwork _network;
    private readonly LinearRows _rows;
    private readonly LinearRows _trial;
    private readonly UnknownOrder _order;
    private readonly EnvelopeCholesky _normal;
    private readonly EnvelopeCholesky _factor;
    private readonly double[] _gradient;
    private readonly double[] _scaleSquares;
    private readonly double[] _work;
    private bool _isFactorUndamped;

    public NetworkModel(CompiledNetwork network, UnknownOrder order)
    {
        _network = network;
        _order = order;
        _rows = new LinearRows(network);
        _trial = new LinearRows(network);
        var envelope = order.Envelope(network);
        _normal = new EnvelopeCholesky(envelope);
        _factor = new EnvelopeCholesky(envelope);
        _gradient = new double[order.Count];
        _scaleSquares = new double[order.Count];
        _work = new double[order.Count];
    }

    public int UnknownCount => _network.UnknownCount;

    public double SumOfSquares(ReadOnlySpan<double> x) => _trial.Evaluate(x);

    public Linearisation Linearise(ReadOnlySpan<double> x)
    {
        _rows.Linearise(x);
        FormNormalEquations(_rows, _order, _normal, _gradient);
        var residualNorm = Dense.Norm(_rows.Misclosures);
        var (cosine, size) = (0.0, 0.0);
        for (var u = 0; u < _order.Position.Length; u++)
        {
            var p = _order.Position[u];
            if (p < 0)
            {
                continue;
            }

            var square = _normal[p, p];
            _scaleSquares[p] = Math.Max(_scaleSquares[p], square);
            size += _scaleSquares[p] * x[u] * x[u];
            var bound = Math.Sqrt(square) * residualNorm;
            cosine = bound > 0 ? Math.Max(cosine, Math.Abs(_gradient[p]) / bound) : cosine;
        }

        return new Linearisation(cosine, Math.Sqrt(size));
    }

    public bool TryStep(double damping, Span<double> step, out StepForecast forecast)
    {
        const double SmallestPivot = 1e-15; // below this even a damped pivot is rounding
        forecast = default;
        _factor.CopyFrom(_normal);
        var largest = 0.0;
        foreach (var square in _scaleSquares)
        {
            largest = Math.Max(largest, square);
        }

        _isFactorUndamped = false;
        for (var p = 0; p < _order.Count; p++)
        {
            // A column that no reading moves at this place still gets a little damping, so that the factor exists.
            _factor[p, p] += damping * Math.Max(_scaleSquares[p], 1e-12 * largest);
        }

        if (!_factor.TryFactor(SmallestPivot))
        {
            return false;
        }

        _isFactorUndamped = !(damping > 0);
        return Solve(damping, step, out forecast);
    }

    public bool TryPolishingStep(Span<double> step, out StepForecast forecast) =>
        _isFactorUndamped ? Solve(0, step, out forecast) : TryStep(0, step, out forecast);

    private bool Solve(double damping, Span<double> step, out StepForecast forecast)
    {
        for (var p = 0; p < _order.Count; p++)
        {
            _work[p] = -_gradient[p];
        }

        _factor.Solve(_work);
        var (gain, scaled) = (0.0, 0.0);
        step.Clear();
        for (var u = 0; u < step.Length; u++)
        {
            var p = _order.Position[u];
            if (p >= 0)
            {
                step[u] = _work[p];
                gain -= _gradient[p] * _work[p];
                scaled += _scaleSquares[p] * _work[p] * _work[p];
            }
        }

        // −2 g·δ − |Jδ|² with g·δ = −(|Jδ|² + λ|Dδ|²).
        forecast = new StepForecast(gain + damping * scaled, Math.Sqrt(scaled));
        return double.IsFinite(gain);
    }

    /// <summary>N = JᵀJ into its envelope, g = Jᵀr.</summary>
    public static void FormNormalEquations(LinearRows rows, UnknownOrder order, EnvelopeCholesky normal, Span<double> gradient)
    {
        normal.Clear();
        gradient.Clear();
        Span<int> positions = stackalloc int[CompiledNetwork.Stride];
        Span<double> values = stackalloc double[CompiledNetwork.Stride];
        for (var row = 0; row < rows.Network.RowCount; row++)
        {
            var count = Gather(rows, order, row, positions, values);
            for (var i = 0; i < count; i++)
            {
                gradient[positions[i]] += values[i] * rows.Misclosures[row];
                for (var j = 0; j < count; j++)
                {
                    if (positions[j] <= positions[i])
                    {
                        normal[positions[i], positions[j]] += values[i] * values[j];
                    }
                }
            }
        }
    }

    /// <summary>The positions and values of a row's derivatives that are solved for.</summary>
    public static int Gather(LinearRows rows, UnknownOrder order, int row, Span<int> positions, Span<double> values)
    {
        var columns = rows.Network.ColumnsOf(row);
        var derivatives = rows.DerivativesOf(row);
        var count = 0;
        for (var s = 0; s < columns.Length; s++)
        {
            if (columns[s] >= 0 && order.Position[columns[s]] >= 0)
            {
                positions[count] = order.Position[columns[s]];
                values[count++] = derivatives[s];
            }
        }

        return count;
    }
}
