namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Start values for a network, best guess first: the sketch, arcs from several seeds, multidimensional scaling.</summary>
internal sealed class StartFinder
{
    private const int EnoughSeeds = 6;
    private readonly CompiledNetwork _network;
    private readonly double?[] _heights;

    public StartFinder(CompiledNetwork network)
    {
        _network = network;
        _heights = HeightStart.Of(network);
        Graph = LengthGraph.Of(network, _heights);
    }

    /// <summary>The lengths the starts are made from.</summary>
    public LengthGraph Graph { get; }

    /// <summary>Starts, each made only when asked for.</summary>
    public IEnumerable<double[]> All()
    {
        var isSketched = SketchStart.IsComplete(_network);
        if (isSketched)
        {
            yield return ToUnknowns(Graph.Sketch);
        }

        var isAnchored = Graph.Known.Count(k => k is not null) >= Graph.Dimension;
        for (var seed = 0; seed < (isAnchored ? 1 : EnoughSeeds); seed++)
        {
            if (ArcStart.From(Graph, seed) is { } places)
            {
                yield return ToUnknowns(isAnchored ? places : Orient(places));
            }
        }

        if (ScalingStart.From(Graph) is { } scaled)
        {
            yield return ToUnknowns(Orient(scaled));
        }

        if (!isSketched)
        {
            yield return ToUnknowns(Graph.Sketch);
        }

        yield return ToUnknowns([.. Graph.Sketch.Select(Scatter)]);
    }

    /// <summary>The places of another fit; points it does not have take their sketch.</summary>
    public double[] Near(NetworkFit fit)
    {
        var x = ToUnknowns(Graph.Sketch);
        var estimates = fit.Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
        foreach (var point in _network.Points.Where(p => estimates.ContainsKey(p.Id)))
        {
            foreach (var axis in Enum.GetValues<Axis>())
            {
                if (point.Unknown[(int)axis] >= 0 && estimates[point.Id].Metres(axis) is { } metres)
                {
                    x[point.Unknown[(int)axis]] = metres - _network.Origin[(int)axis];
                }
            }
        }

        return x;
    }

    /// <summary>The places of all points in a solution, in the dimension of the graph.</summary>
    public double[]?[] Places(double[] x) =>
        [.. _network.Points.Select(p => p.IsTouched[0] ? Enumerable.Range(0, Graph.Dimension).Select(a => p.Base(a, x)).ToArray() : null)];

    /// <summary>Places turned and mirrored onto what is known, else onto the sketch, else left to the left and the first pair to the front.</summary>
    public double[]?[] Orient(double[]?[] places)
    {
        var known = Graph.Known.Count(k => k is not null);
        var sketched = Enumerable.Range(0, places.Length).Count(i => places[i] is not null && Graph.Sketch[i] is not null);
        if (known + sketched < 2)
        {
            return CentreLine.Along(_network, places, Graph.Dimension);
        }

        var target = known >= 2 ? Graph.Known : Graph.Sketch;
        var plain = Alignment.Between(places, target, Graph.Dimension, false);
        var mirrored = Alignment.Between(places, target, Graph.Dimension, true);
        var isMirrored = Cost(mirrored) < Cost(plain) * (1 - 1e-9);
        var alignment = isMirrored ? mirrored : plain;
        return [.. places.Select(p => p is null ? null : alignment.Apply(p))];

        // Known places decide; where they stand in one line and cannot, the sketch does.
        double Cost(Alignment a) => a.Misfit(places, Graph.Known) + 1e-3 * a.Misfit(places, Graph.Sketch);
    }

    /// <summary>Unknowns from places; what has no place takes its sketch, then the middle of the others.</summary>
    public double[] ToUnknowns(double[]?[] places)
    {
        var x = SketchStart.Empty(_network);
        var middle = Middle(places);
        for (var i = 0; i < places.Length; i++)
        {
            for (var a = 0; a < 3; a++)
            {
                var u = _network.Points[i].Unknown[a];
                if (u < 0)
                {
                    continue;
                }

                var sketch = SketchStart.Known(_network, i, (Axis)a);
                x[u] = a < Graph.Dimension ? places[i]?[a] ?? sketch ?? Aside(middle[a], i) : _heights[i] ?? sketch ?? 0;
            }
        }

        return x;
    }

    private double[] Middle(double[]?[] places)
    {
        var placed = places.OfType<double[]>().DefaultIfEmpty(new double[Graph.Dimension]).ToList();
        return [.. Enumerable.Range(0, Graph.Dimension).Select(a => placed.Average(p => p[a]))];
    }

    // Two points in one spot have no direction between them.
    private double Aside(double value, int point) => value + Typical() * 0.01 * (point + 1);

    private double Typical() => Graph.Edges.SelectMany(e => e).Select(e => e.Length).DefaultIfEmpty(1).Average();

    // A poor sketch shaken: each point moved by up to half a typical length, the same way every time.
    private double[]? Scatter(double[]? place, int point) =>
        place is null ? null : [.. place.Select((v, a) => v + Typical() * 0.5 * Math.Sin(1 + 7.3 * point + 2.9 * a))];
}
