namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Start values by intersecting arcs: from a triangle, or from known points, one point after the other, best tied first.</summary>
/// <remarks>
/// Of all places where arcs from placed neighbours meet, the one that agrees with most neighbours is taken, so one bad length does
/// not mislead. With only as many neighbours as dimensions two mirrored places remain; the sketch decides, or else the
/// place farther from the points already there: frames unfold.
/// </remarks>
internal sealed class ArcStart
{
    private const int EnoughCombinations = 20;
    private readonly LengthGraph _graph;
    private readonly double[]?[] _places;
    private readonly bool _standsOnSketch;

    private ArcStart(LengthGraph graph, double[]?[] places, bool standsOnSketch) =>
        (_graph, _places, _standsOnSketch) = (graph, places, standsOnSketch);

    /// <summary>Places for as many points as arcs reach, from a seed; null when the seed makes no triangle.</summary>
    /// <param name="graph">The lengths.</param>
    /// <param name="seed">Which well-tied point to start from; used when too few points are known.</param>
    public static double[]?[]? From(LengthGraph graph, int seed)
    {
        var places = graph.Known.Select(k => (double[]?)k?.Clone()).ToArray();
        var isAnchored = places.Count(p => p is not null) >= graph.Dimension;
        if (!isAnchored && !TrySeed(graph, places, seed))
        {
            return null;
        }

        new ArcStart(graph, places, isAnchored || TryStandOnSketch(graph, places)).PlaceAll();
        return places;
    }

    /// <summary>The place that agrees best with the lengths to points already placed; null when no arcs meet.</summary>
    public static double[]? Replace(LengthGraph graph, double[]?[] places, int point)
    {
        var start = new ArcStart(graph, places, standsOnSketch: false);
        var edges = start.Placed(point).OrderBy(e => e.Sigma).ToList();
        return start.Candidates(edges).MinBy(c => start.Misfit(c, edges));
    }

    private static bool TrySeed(LengthGraph graph, double[]?[] places, int seed)
    {
        Array.Clear(places);
        var order = Enumerable.Range(0, graph.Count).OrderByDescending(i => graph.Edges[i].Count).ThenBy(i => i).ToList();
        if (seed >= order.Count)
        {
            return false;
        }

        var a = order[seed];
        var best = (Score: 0.0, B: -1, C: -1, X: 0.0, Y: 0.0, AB: 0.0);
        foreach (var ab in graph.Edges[a].Where(e => e.Length > 0))
        {
            foreach (var bc in graph.Edges[ab.Other])
            {
                foreach (var ac in graph.Edges[a].Where(e => e.Other == bc.Other))
                {
                    var x = (ab.Length * ab.Length + ac.Length * ac.Length - bc.Length * bc.Length) / (2 * ab.Length);
                    var y = Math.Sqrt(Math.Max(0, ac.Length * ac.Length - x * x));
                    var longest = Math.Max(ab.Length, Math.Max(ac.Length, bc.Length));
                    var score =
                        ab.Length * y / (longest * longest) * Math.Log(1 + graph.Edges[ab.Other].Count + graph.Edges[bc.Other].Count);
                    best = score > best.Score ? (score, ab.Other, bc.Other, x, y, ab.Length) : best;
                }
            }
        }

        if (best.B < 0)
        {
            return false;
        }

        places[a] = new double[graph.Dimension];
        places[best.B] = new double[graph.Dimension];
        places[best.C] = new double[graph.Dimension];
        places[best.B]![0] = best.AB;
        (places[best.C]![0], places[best.C]![1]) = (best.X, best.Y);
        return true;
    }

    private static bool TryStandOnSketch(LengthGraph graph, double[]?[] places)
    {
        if (Enumerable.Range(0, graph.Count).Any(i => places[i] is not null && graph.Sketch[i] is null))
        {
            return false;
        }

        var alignment = Alignment.Nearer(places, graph.Sketch, graph.Dimension);
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = places[i] is { } place ? alignment.Apply(place) : null;
        }

        return true;
    }

    private void PlaceAll()
    {
        while (true)
        {
            var next = Enumerable
                .Range(0, _graph.Count)
                .Where(i => _places[i] is null)
                .Select(i => (Point: i, Ties: Placed(i).DistinctBy(e => e.Other).Count()))
                .OrderByDescending(c => c.Ties)
                .ThenBy(c => c.Point)
                .FirstOrDefault();
            if (next.Ties == 0 || !TryPlace(next.Point))
            {
                return;
            }
        }
    }

    private IEnumerable<LengthGraph.Edge> Placed(int point) => _graph.Edges[point].Where(e => _places[e.Other] is not null);

    private bool TryPlace(int point)
    {
        var edges = Placed(point).OrderBy(e => e.Sigma).ToList();
        var candidates = Candidates(edges).ToList();
        if (candidates.Count == 0)
        {
            candidates.Add(Outward(edges[0]));
        }

        _places[point] = candidates.MinBy(c => Misfit(c, edges) + TieBreak(point, c));
        return true;
    }

    private IEnumerable<double[]> Candidates(List<LengthGraph.Edge> edges)
    {
        var taken = 0;
        for (var i = 0; i < edges.Count; i++)
        {
            for (var j = i + 1; j < edges.Count && taken < EnoughCombinations; j++)
            {
                if (_graph.Dimension == 2)
                {
                    taken++;
                    foreach (var place in Intersection.InPlan(At(edges[i]), edges[i].Length, At(edges[j]), edges[j].Length))
                    {
                        yield return place;
                    }

                    continue;
                }

                for (var k = j + 1; k < edges.Count && taken < EnoughCombinations; k++)
                {
                    taken++;
                    var (a, b, c) = (edges[i], edges[j], edges[k]);
                    foreach (var place in Intersection.InSpace(At(a), a.Length, At(b), b.Length, At(c), c.Length))
                    {
                        yield return place;
                    }
                }
            }
        }
    }

    private double[] At(LengthGraph.Edge edge) => _places[edge.Other]!;

    // Each length counts with the logarithm of its misfit, so that one gross error cannot outvote the others.
    private double Misfit(double[] place, List<LengthGraph.Edge> edges) =>
        edges.Sum(e => Math.Log(1 + Math.Abs(Distance(place, At(e)) - e.Length) / (e.Sigma + 1e-4 * e.Length)));

    // Decides only between places whose misfit is the same.
    private double TieBreak(int point, double[] place)
    {
        const double Slight = 1e-3;
        if (_standsOnSketch && _graph.Sketch[point] is { } sketch)
        {
            return Slight * Distance(place, sketch) / (1 + Distance(place, sketch));
        }

        var placed = _places.OfType<double[]>().ToList();
        var middle = Enumerable.Range(0, _graph.Dimension).Select(a => placed.Average(p => p[a])).ToArray();
        var away = Distance(place, middle);
        return -Slight * away / (1 + away);
    }

    // One length only: straight on, away from what is there.
    private double[] Outward(LengthGraph.Edge edge)
    {
        var from = At(edge);
        var placed = _places.OfType<double[]>().ToList();
        var away = Enumerable.Range(0, _graph.Dimension).Select(a => from[a] - placed.Average(p => p[a])).ToArray();
        var norm = Math.Sqrt(away.Sum(v => v * v));
        away = norm > 0 ? away : [.. away.Select((_, a) => a == 0 ? 1.0 : 0.0)];
        norm = norm > 0 ? norm : 1;
        return [.. from.Select((v, a) => v + away[a] / norm * edge.Length)];
    }

    private static double Distance(double[] a, double[] b) => Math.Sqrt(a.Zip(b, (u, v) => (u - v) * (u - v)).Sum());
}
