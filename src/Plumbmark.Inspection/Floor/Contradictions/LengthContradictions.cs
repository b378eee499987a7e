using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Contradictions;

/// <summary>
/// Why lengths fit no figure at all: in any triangle one side is at most as long as the other two together. Needs no places, so that it speaks where
/// nothing could be fitted.
/// </summary>
/// <remarks>
/// The way round each length is the shortest by all others (Dijkstra, Numerische Mathematik 1, 1959, 269-271). What is left of a doubt after that is
/// the fit's business.
/// </remarks>
internal static class LengthContradictions
{
    private const double ClearInU = 5; // standard uncertainties: readings a little off are no contradiction
    private const double MostSigmaMetres = 3e-3; // repeats that contradict each other would make their own spread the excuse
    private const int MostLengths = 600; // beyond that the search for the guilty one would be felt

    /// <summary>All contradictions, the largest first.</summary>
    public static IReadOnlyList<Contradiction> Of(Network network)
    {
        var lengths = network.Observations.OfType<Observation.PlanDistance>().Take(MostLengths).ToList();
        return Of(lengths);
    }

    /// <summary>The lengths of which one being wrong would explain all contradictions; empty when it takes more than one.</summary>
    public static IReadOnlyList<Observation.PlanDistance> Culprits(IReadOnlyList<Contradiction> contradictions, Network network)
    {
        if (contradictions.Count == 0)
        {
            return [];
        }

        var lengths = network.Observations.OfType<Observation.PlanDistance>().Take(MostLengths).ToList();
        var inAll = contradictions[0].All.Where(l => contradictions.All(c => c.All.Contains(l)));
        return [.. inAll.Where(l => Of([.. lengths.Where(o => o != l)]).Count == 0)];
    }

    private static IReadOnlyList<Contradiction> Of(IReadOnlyList<Observation.PlanDistance> lengths) =>
        [.. lengths.Select(l => Against(l, lengths)).OfType<Contradiction>().OrderByDescending(c => c.ExcessMetres)];

    private static Contradiction? Against(Observation.PlanDistance length, IReadOnlyList<Observation.PlanDistance> lengths)
    {
        if (ShortestAround(length, lengths) is not { } around)
        {
            return null;
        }

        var excess = length.ValueMetres - around.Sum(a => a.ValueMetres);
        var u = Math.Sqrt(around.Append(length).Select(a => Math.Min(a.SigmaMetres, MostSigmaMetres)).Sum(s => s * s));
        return excess > ClearInU * u ? new Contradiction(length, around, excess) : null;
    }

    /// <summary>The shortest way by other lengths from one end to the other; null when there is none shorter than the length itself.</summary>
    private static List<Observation.PlanDistance>? ShortestAround(
        Observation.PlanDistance length,
        IReadOnlyList<Observation.PlanDistance> lengths
    )
    {
        var reached = new Dictionary<string, Observation.PlanDistance?>(StringComparer.Ordinal);
        var waiting = new PriorityQueue<(string Point, Observation.PlanDistance? By), double>();
        waiting.Enqueue((length.From, null), 0);
        while (waiting.TryDequeue(out var next, out var far) && far < length.ValueMetres)
        {
            if (!reached.TryAdd(next.Point, next.By))
            {
                continue;
            }

            if (next.Point == length.To)
            {
                return WayBack(length, reached);
            }

            foreach (var other in lengths.Where(o => o != length && (o.From == next.Point || o.To == next.Point)))
            {
                waiting.Enqueue((OtherEnd(other, next.Point), other), far + other.ValueMetres);
            }
        }

        return null;
    }

    private static List<Observation.PlanDistance> WayBack(
        Observation.PlanDistance length,
        Dictionary<string, Observation.PlanDistance?> reached
    )
    {
        var way = new List<Observation.PlanDistance>();
        for (var at = length.To; reached[at] is { } by; at = OtherEnd(by, at))
        {
            way.Insert(0, by);
        }

        return way;
    }

    private static string OtherEnd(Observation.PlanDistance length, string point) => length.From == point ? length.To : length.From;
}
