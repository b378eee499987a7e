using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Book.Nominals;

/// <summary>Which observations bear on a fit: a length to a point that nothing else ties down says nothing, and many of them make the search long.</summary>
internal static class Bearing
{
    /// <summary>Without lengths to points whose place in plan they cannot settle; coordinates and heights stay.</summary>
    public static IReadOnlyList<Observation> Settling(IReadOnlyList<Observation> observations) =>
        Pruned(observations, (point, all) => all.Count(o => IsInPlan(o) && Touches(o, point)) < 2, IsLength);

    /// <summary>Without everything about points that have no observation to spare, so that only what can disagree is left.</summary>
    public static IReadOnlyList<Observation> Disagreeing(IReadOnlyList<Observation> observations) =>
        Pruned(observations, (point, all) => !HasSpare(point, all), _ => true);

    private static bool HasSpare(string point, IReadOnlyList<Observation> all)
    {
        var touching = all.Where(o => Touches(o, point)).ToList();
        var hasHeight = touching.Exists(o => !IsInPlan(o) || o is Observation.DirectDistance);
        var isInPlan = touching.Exists(IsInPlan);
        return touching.Count > (isInPlan ? 2 : 0) + (hasHeight ? 1 : 0);
    }

    private static IReadOnlyList<Observation> Pruned(
        IReadOnlyList<Observation> observations,
        Func<string, IReadOnlyList<Observation>, bool> isIdle,
        Func<Observation, bool> goes
    )
    {
        var left = observations;
        while (true)
        {
            var idle = left.SelectMany(Points)
                .Distinct(StringComparer.Ordinal)
                .Where(p => isIdle(p, left))
                .ToHashSet(StringComparer.Ordinal);
            IReadOnlyList<Observation> next = [.. left.Where(o => !goes(o) || !Points(o).Any(idle.Contains))];
            if (next.Count == left.Count)
            {
                return next;
            }

            left = next;
        }
    }

    private static bool IsLength(Observation o) => o is Observation.PlanDistance or Observation.DirectDistance;

    private static bool IsInPlan(Observation o) => IsLength(o) || o is Observation.CoordinatePrior { Axis: not Axis.Z };

    private static bool Touches(Observation o, string point) => Points(o).Contains(point);

    private static IEnumerable<string> Points(Observation observation) =>
        observation switch
        {
            Observation.PlanDistance o => [o.From, o.To],
            Observation.DirectDistance o => [o.From, o.To],
            Observation.Rise o => [o.From, o.To],
            Observation.Height o => [o.Point],
            Observation.CoordinatePrior o => [o.Point],
            _ => [],
        };
}
