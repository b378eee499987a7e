using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// How sure the points are before a reading is taken, and how sure each reading would make them; what the readings say is in
/// <see cref="NetworkFit"/>.
/// </summary>
/// <remarks>
/// <para>Every free coordinate of every point has a loose prior (the sketch is good to a decimetre or so), so a frame without a single reading
/// has a covariance too, and no reading is beyond asking. What the readings tell is not touched by that in any digit that counts.</para>
/// <para>Adding a reading is a rank-one update of the covariance: a = derivatives of the reading, Q' = Q − Q aᵀ a Q / (σ² + a Q aᵀ);
/// taking one away is the same with −σ². Immutable.</para>
/// </remarks>
public sealed class NetworkDesign
{
    /// <summary>How far a sketch may be off: standard uncertainty of the loose prior, metres.</summary>
    public const double LooseSigmaMetres = 0.1;

    private readonly CompiledNetwork _network;
    private readonly double[] _x;
    private readonly double[] _q;
    private readonly int[] _state;
    private readonly Dictionary<string, int> _points;
    private readonly RowFactory _rows;

    private NetworkDesign(CompiledNetwork network, double[] x, double[] q)
    {
        (_network, _x, _q) = (network, x, q);
        _points = Index(network.Source.Points.Select(p => p.Id));
        _rows = new RowFactory(_points, Index(network.Source.Tools.Select(t => t.Id)), network.Origin);
        Coordinates = [.. network.Points.SelectMany(p => Enum.GetValues<Axis>().Select(a => new PointCoordinate(p.Id, a)))];
        _state = [.. network.Points.SelectMany(p => p.Unknown)];
    }

    /// <summary>All coordinates of all points, point by point, x before y before z.</summary>
    public IReadOnlyList<PointCoordinate> Coordinates { get; }

    /// <summary>Number of coordinates: three for each point.</summary>
    public int Count => _state.Length;

    /// <summary>The design of a network with the readings it has.</summary>
    /// <param name="network">Points with sketches; the readings' values are not used, only where they are taken and how sure they are.</param>
    /// <param name="at">Where the points are, when some readings have been fitted already; the sketch serves for the rest.</param>
    /// <param name="looseSigmaMetres">Standard uncertainty of the loose prior.</param>
    public static NetworkDesign Of(Network network, NetworkFit? at = null, double looseSigmaMetres = LooseSigmaMetres)
    {
        var compiled = NetworkCompiler.CompileDesign(DesignPriors.Add(network, at, looseSigmaMetres));
        var x = Starts.SketchStart.Of(compiled);
        foreach (var point in compiled.Points.Where(p => p.DropError >= 0))
        {
            // What the drops showed is a value; here only their number counts.
            (x[point.DropError], x[point.DropError + 1]) = (0, 0);
        }

        compiled.RefreshFloor(x);
        var rows = new LinearRows(compiled);
        rows.Linearise(x);
        var factor = NetworkFactor.Of(rows, UnknownOrder.Of(compiled, []));
        return new NetworkDesign(compiled, x, new DenseCofactor(factor).Full());
    }

    /// <summary>Covariance of two coordinates, m².</summary>
    public double this[int i, int j] => _state[i] >= 0 && _state[j] >= 0 ? _q[_state[i] * _network.UnknownCount + _state[j]] : 0;

    /// <summary>Where a coordinate stands in <see cref="Coordinates"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is no such point.</exception>
    public int IndexOf(string point, Axis axis) => 3 * _points[point] + (int)axis;

    /// <summary>Variance of a linear function of the coordinates.</summary>
    public double Variance(ReadOnlySpan<double> gradient) => Covariance(gradient, gradient);

    /// <summary>Covariance of two linear functions of the coordinates.</summary>
    public double Covariance(ReadOnlySpan<double> gradient, ReadOnlySpan<double> other)
    {
        var (g, h) = (ToState(gradient), ToState(other));
        var sum = 0.0;
        for (var i = 0; i < g.Length; i++)
        {
            sum += g[i] is not 0 ? g[i] * Dense.Dot(_q.AsSpan(i * g.Length, g.Length), h) : 0;
        }

        return sum;
    }

    /// <summary>What a reading would do. A repeated drop counts as one drop more of its point, whatever it shows.</summary>
    public DesignEffect Effect(Observation candidate)
    {
        var terms = new List<(double[] C, double S)>();
        foreach (var (a, variance) in Gradients(candidate, sign: 1))
        {
            // A second equation of the same reading meets what the first has left.
            var qa = Times(a);
            foreach (var (c, s) in terms)
            {
                Dense.AddScaled(qa, -Dense.Dot(c, a) / s, c);
            }

            terms.Add((qa, variance + Dense.Dot(qa, a)));
        }

        return new DesignEffect([.. terms.Select(t => (ToCoordinates(t.C), t.S))]);
    }

    /// <summary>The equations of a reading: derivatives a and variance, by unknown.</summary>
    internal IEnumerable<(double[] A, double Variance)> Equations(Observation candidate) => Gradients(candidate, sign: 1);

    /// <summary>How many unknowns there are: coordinates that are free, drop errors, tools.</summary>
    internal int UnknownCount => _network.UnknownCount;

    /// <summary>The covariance of all unknowns, row by row.</summary>
    internal double[] CopyOfCovariance() => (double[])_q.Clone();

    /// <summary>The same places known otherwise.</summary>
    internal NetworkDesign WithCovariance(double[] q) => new(_network, _x, q);

    /// <summary>A sum of coordinates as one of unknowns.</summary>
    internal double[] OnUnknowns(double[] gradient) => ToState(gradient);

    /// <summary>The design with a reading taken.</summary>
    public NetworkDesign With(Observation candidate) => Updated(candidate, sign: 1);

    /// <summary>The design with a reading it holds left out.</summary>
    public NetworkDesign Without(Observation held) => Updated(held, sign: -1);

    private NetworkDesign Updated(Observation observation, int sign)
    {
        var n = _network.UnknownCount;
        var q = (double[])_q.Clone();
        foreach (var (a, variance) in Gradients(observation, sign))
        {
            var c = Times(a, q);
            var s = variance + Dense.Dot(c, a);
            for (var i = 0; i < n; i++)
            {
                Dense.AddScaled(q.AsSpan(i * n, n), -c[i] / s, c);
            }
        }

        return new NetworkDesign(_network, _x, q);
    }

    // Derivatives by unknown and variance (negative: to be taken away) of each equation.
    private IEnumerable<(double[] A, double Variance)> Gradients(Observation observation, int sign)
    {
        if (DropPoint(observation) is { } dropped)
        {
            return DropGradients(dropped, sign);
        }

        var rows = new List<Row>();
        _rows.Add(observation, 0, rows);
        return rows.Select(row => (Gradient(row, observation), sign * Math.Pow(DesignPriors.Within(row.Sigma), 2)));
    }

    private double[] Gradient(in Row row, Observation observation)
    {
        Span<int> columns = stackalloc int[CompiledNetwork.Stride];
        Span<double> slots = stackalloc double[CompiledNetwork.Stride];
        columns.Fill(-1);
        var point = _network.Points[row.A];
        var floor = observation is Observation.Height { Floor: { } map }
            ? map(point.Base(0, _x) + _network.Origin[0], point.Base(1, _x) + _network.Origin[1])
            : 0;
        RowModel.Columns(_network, row, columns);
        RowModel.Derivatives(_network, row, floor, _x, slots);
        var a = new double[_network.UnknownCount];
        for (var s = 0; s < columns.Length; s++)
        {
            if (columns[s] >= 0)
            {
                a[columns[s]] += slots[s];
            }
        }

        return a;
    }

    // From n drops to n ± 1 the prior of the drop error goes from σ²/n to σ²/(n ± 1): one more equation e = … with variance ±σ².
    private IEnumerable<(double[] A, double Variance)> DropGradients(int point, int sign)
    {
        var slot = _network.Points[point];
        var sigma = _network.Source.Points[point].DropSigmaMetres;
        for (var axis = 0; slot.DropError >= 0 && axis < 2; axis++)
        {
            var a = new double[_network.UnknownCount];
            a[slot.DropError + axis] = 1;
            yield return (a, sign * sigma * sigma);
        }
    }

    private int? DropPoint(Observation observation) =>
        observation switch
        {
            Observation.DropShift o => _points[o.Point],
            Observation.DropDistance o => _points[o.Point],
            _ => null,
        };

    private double[] Times(double[] a) => Times(a, _q);

    private static double[] Times(double[] a, double[] q)
    {
        var result = new double[a.Length];
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] is not 0)
            {
                Dense.AddScaled(result, a[i], q.AsSpan(i * a.Length, a.Length));
            }
        }

        return result;
    }

    private double[] ToState(ReadOnlySpan<double> gradient)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(gradient.Length, Count, nameof(gradient));
        var state = new double[_network.UnknownCount];
        for (var i = 0; i < Count; i++)
        {
            if (_state[i] >= 0)
            {
                state[_state[i]] += gradient[i];
            }
        }

        return state;
    }

    private double[] ToCoordinates(double[] state) => [.. _state.Select(u => u >= 0 ? state[u] : 0)];

    private static Dictionary<string, int> Index(IEnumerable<string> names) =>
        names.Select((n, i) => (n, i)).ToDictionary(p => p.n, p => p.i, StringComparer.Ordinal);
}
