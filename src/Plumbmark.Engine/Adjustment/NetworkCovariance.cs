using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>How sure the points' coordinates are, together: the full a-priori covariance, drop errors included, in square metres.</summary>
/// <remarks>
/// Fixed coordinates are listed with zero rows; coordinates that the readings do not determine are not listed. The values
/// belong to the stated sigmas; multiply by <see cref="NetworkFit.VarianceFactor"/> for a-posteriori ones.
/// </remarks>
public sealed class NetworkCovariance
{
    private readonly Cofactor _cofactor;
    private readonly int[] _state;
    private readonly double[] _dropVariance;
    private readonly Dictionary<PointCoordinate, int> _index;
    private readonly double[] _values;

    internal NetworkCovariance(
        Cofactor cofactor,
        IReadOnlyList<PointCoordinate> coordinates,
        int[] state,
        double[] dropVariance,
        double[] values
    )
    {
        (_cofactor, Coordinates, _state, _dropVariance, _values) = (cofactor, coordinates, state, dropVariance, values);
        _index = coordinates.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => p.i);
    }

    /// <summary>The determined coordinates, point by point in network order, x before y before z.</summary>
    public IReadOnlyList<PointCoordinate> Coordinates { get; }

    /// <summary>Number of determined coordinates.</summary>
    public int Count => _state.Length;

    /// <summary>The estimates of all coordinates, metres, in the order of <see cref="Coordinates"/>.</summary>
    public ReadOnlySpan<double> ValuesMetres => _values;

    /// <summary>Covariance of two coordinates, m².</summary>
    public double this[int i, int j] =>
        (_state[i] >= 0 && _state[j] >= 0 ? _cofactor.Of(_state[i], _state[j]) : 0) + (i == j ? _dropVariance[i] : 0);

    /// <summary>What the drop of a coordinate's point adds outside the network, m²; zero where the drop is an unknown of the network itself.</summary>
    internal double DropVariance(int coordinate) => _dropVariance[coordinate];

    /// <summary>Where a coordinate stands in <see cref="Coordinates"/>; null when it is absent or not determined.</summary>
    public int? IndexOf(string point, Axis axis) => _index.TryGetValue(new PointCoordinate(point, axis), out var i) ? i : null;

    /// <summary>The whole matrix, row-major, m².</summary>
    public double[] Full()
    {
        var q = _cofactor.Full();
        var result = new double[Count * Count];
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; _state[i] >= 0 && j < Count; j++)
            {
                result[i * Count + j] = _state[j] >= 0 ? q[_state[i] * _cofactor.Count + _state[j]] : 0;
            }

            result[i * Count + i] += _dropVariance[i];
        }

        return result;
    }

    /// <summary>Variance of a linear function of the coordinates: gᵀ Q g.</summary>
    public double Variance(ReadOnlySpan<double> gradient) => Covariance(gradient, gradient);

    /// <summary>Covariance of two linear functions of the coordinates: gᵀ Q h.</summary>
    public double Covariance(ReadOnlySpan<double> gradient, ReadOnlySpan<double> other)
    {
        var sum = Dense.Dot(_cofactor.Times(ToState(gradient)), ToState(other));
        for (var i = 0; i < Count; i++)
        {
            sum += gradient[i] * other[i] * _dropVariance[i];
        }

        return sum;
    }

    /// <summary>Covariance matrix F Q Fᵀ of several functions, row-major.</summary>
    /// <param name="jacobian">Row-major, one row of <see cref="Count"/> derivatives for each function.</param>
    /// <param name="functions">Number of functions.</param>
    public double[] Propagate(ReadOnlySpan<double> jacobian, int functions)
    {
        var result = new double[functions * functions];
        var states = new double[functions][];
        for (var a = 0; a < functions; a++)
        {
            var row = jacobian.Slice(a * Count, Count);
            states[a] = ToState(row);
            var product = _cofactor.Times(states[a]);
            for (var b = 0; b <= a; b++)
            {
                var other = jacobian.Slice(b * Count, Count);
                var sum = Dense.Dot(product, states[b]);
                for (var i = 0; i < Count; i++)
                {
                    sum += row[i] * other[i] * _dropVariance[i];
                }

                result[a * functions + b] = result[b * functions + a] = sum;
            }
        }

        return result;
    }

    /// <summary>Value and standard uncertainty of any smooth function of the points; derivatives by central differences.</summary>
    public FunctionEstimate Evaluate(PointFunction function)
    {
        // Step: the cube root of rounding times the size of the figure, which balances rounding against curvature.
        const double CubeRootOfRounding = 6e-6;
        var at = _values.ToArray();
        var gradient = new double[Count];
        var step = CubeRootOfRounding * Extent();
        for (var i = 0; i < Count; i++)
        {
            var (up, down) = (_values[i] + step, _values[i] - step);
            at[i] = up;
            var high = function(at);
            at[i] = down;
            gradient[i] = (high - function(at)) / (up - down);
            at[i] = _values[i];
        }

        return new FunctionEstimate(function(at), Math.Sqrt(Math.Max(0, Variance(gradient))), gradient);
    }

    private double Extent()
    {
        var size = 0.0;
        foreach (var axis in Enum.GetValues<Axis>())
        {
            var values = _values.Where((_, i) => Coordinates[i].Axis == axis).DefaultIfEmpty();
            size = Math.Max(size, values.Max() - values.Min());
        }

        return size > 0 ? size : 1;
    }

    internal double[] ToCoordinates(double[] state) => [.. _state.Select(u => u >= 0 ? state[u] : 0)];

    internal double[] ToState(ReadOnlySpan<double> gradient)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(gradient.Length, Count, nameof(gradient));
        var state = new double[_cofactor.Count];
        for (var i = 0; i < Count; i++)
        {
            if (_state[i] >= 0)
            {
                state[_state[i]] += gradient[i];
            }
        }

        return state;
    }
}
