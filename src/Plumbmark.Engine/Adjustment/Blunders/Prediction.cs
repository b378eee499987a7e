namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>What a fit predicts for readings that are not in it.</summary>
internal sealed class Prediction
{
    private readonly NetworkState _state;
    private readonly Dictionary<string, int> _points;
    private readonly RowFactory _rows;

    public Prediction(NetworkFit fit)
    {
        _state = fit.State;
        var source = _state.Network.Source;
        _points = source.Points.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        var tools = source.Tools.Select((t, i) => (t.Id, i)).ToDictionary(t => t.Id, t => t.i, StringComparer.Ordinal);
        _rows = new RowFactory(_points, tools, _state.Network.Origin);
    }

    /// <summary>A reading held against the fit: observed − predicted, metres, and the derivatives by unknown.</summary>
    /// <param name="Difference">Observed − predicted, m.</param>
    /// <param name="Gradient">Its derivatives by unknown.</param>
    /// <param name="Columns">The unknowns among them that the reading touches, each once.</param>
    /// <param name="OwnVariance">Of the reading itself, m².</param>
    public sealed record Held(double Difference, double[] Gradient, int[] Columns, double OwnVariance);

    /// <summary>Null when the fit does not place the reading's points, or the reading is not a single number.</summary>
    public Held? Of(Observation reading)
    {
        if (NetworkCheck.PointsOf(reading).Any(p => !_points.ContainsKey(p)))
        {
            return null;
        }

        var rows = new List<Row>();
        _rows.Add(reading, 0, rows);
        if (rows.Count != 1 || !IsPlaced(rows[0]))
        {
            return null;
        }

        var (network, x) = (_state.Network, _state.Unknowns);
        Span<int> columns = stackalloc int[CompiledNetwork.Stride];
        Span<double> slots = stackalloc double[CompiledNetwork.Stride];
        columns.Fill(-1);
        var floor = reading is Observation.Height { Floor: { } map } ? FloorUnder(rows[0].A, map) : 0;
        RowModel.Columns(network, rows[0], columns);
        RowModel.Derivatives(network, rows[0], floor, x, slots);
        var gradient = new double[network.UnknownCount];
        Span<int> touched = stackalloc int[CompiledNetwork.Stride];
        var count = 0;
        for (var s = 0; s < columns.Length; s++)
        {
            if (columns[s] >= 0)
            {
                gradient[columns[s]] += slots[s];
                touched[count] = columns[s];
                count += touched[..count].Contains(columns[s]) ? 0 : 1;
            }
        }

        return new Held(-RowModel.Misclosure(network, rows[0], floor, x), gradient, touched[..count].ToArray(), OwnVariance(rows[0]));
    }

    /// <summary>Covariance of two differences, own variances not included.</summary>
    public double Covariance(Held a, Held b) => Sum(a, b);

    /// <summary>Variance of a difference, its own reading included.</summary>
    public double Variance(Held a) => Sum(a, a) + a.OwnVariance;

    /// <summary>h Q aᵀ of a difference with a weighted row of the fit: what the difference moves when the row's misclosure does.</summary>
    public double Along(Held a, int row)
    {
        if (!IsWhole)
        {
            return _state.Rows.Product(row, _state.Cofactor.Times(a.Gradient));
        }

        var columns = _state.Network.ColumnsOf(row);
        var values = _state.Rows.DerivativesOf(row);
        var sum = 0.0;
        for (var s = 0; s < columns.Length; s++)
        {
            foreach (var u in a.Columns)
            {
                sum += columns[s] >= 0 ? values[s] * a.Gradient[u] * _state.Cofactor.Of(columns[s], u) : 0;
            }
        }

        return sum;
    }

    // A reading touches a handful of unknowns, so that its variance needs a handful squared of the cofactors and no product with all of them.
    private double Sum(Held a, Held b)
    {
        if (!IsWhole)
        {
            return LeastSquares.Dense.Dot(_state.Cofactor.Times(a.Gradient), b.Gradient);
        }

        var sum = 0.0;
        foreach (var i in a.Columns)
        {
            foreach (var j in b.Columns)
            {
                sum += a.Gradient[i] * b.Gradient[j] * _state.Cofactor.Of(i, j);
            }
        }

        return sum;
    }

    // In a large network a cofactor of points that are no neighbours costs a solve; a product with all of them costs one too.
    private bool IsWhole => _state.Cofactor is DenseCofactor;

    private bool IsPlaced(in Row row)
    {
        var needsHeight = row.Kind is RowKind.Direct or RowKind.Height or RowKind.Rise;
        var needsPlan = row.Kind is RowKind.Direct or RowKind.Plan or RowKind.Offset;
        foreach (var index in (int[])[row.A, row.B, row.C])
        {
            if (index >= 0 && ((needsHeight && !IsPlaced(index, 2)) || (needsPlan && !(IsPlaced(index, 0) && IsPlaced(index, 1)))))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsPlaced(int point, int axis) =>
        _state.Network.Points[point].IsTouched[axis] && !_state.Undetermined.Contains(_state.Network.Points[point].Unknown[axis]);

    // A direct length between points that were fitted as marks also carries their drops.
    private double OwnVariance(in Row row)
    {
        var drops = 0.0;
        if (row.Kind is RowKind.Direct)
        {
            foreach (var index in (int[])[row.A, row.B])
            {
                drops += _state.Network.Points[index].IsMarkOnly ? _state.Network.Points[index].Drop.Variance : 0;
            }
        }

        return row.Sigma * row.Sigma + drops;
    }

    private double FloorUnder(int point, FloorMap map) =>
        map(
            _state.Network.Points[point].Base(0, _state.Unknowns) + _state.Network.Origin[0],
            _state.Network.Points[point].Base(1, _state.Unknowns) + _state.Network.Origin[1]
        );
}
