using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>A planned reading with what it is for.</summary>
/// <param name="Candidate">The reading.</param>
/// <param name="Minutes">Its minutes, those of first drops included.</param>
/// <param name="Settles">What it settles, or comes nearest to settling.</param>
internal sealed record PlannedReading(Candidate Candidate, double Minutes, IReadOnlyList<string> Settles);

/// <summary>
/// Chooses the next readings one after the other: each time the one that lowers the expected number of unsettled checks and blind spots most for a
/// minute of work, until all are settled. A whole plan is <see cref="PlanSearch"/>'s.
/// </summary>
/// <remarks>
/// Greedy with rank-one updates of the covariance (<see cref="NetworkDesign"/>). The expected number is the sum over the targets of
/// <see cref="PlanTarget.Unsettled"/>.
/// </remarks>
internal sealed class ReadingPlanner(PlanStart start)
{
    private readonly List<Queue<Candidate>> _candidates = [.. start.Groups.Select(g => new Queue<Candidate>(g))];
    private readonly HashSet<string> _dropped = [.. start.Dropped];
    private NetworkDesign _design = start.Design;

    /// <summary>Chooses up to so many readings; fewer when everything is settled or nothing helps.</summary>
    public IReadOnlyList<PlannedReading> Choose(int most)
    {
        var chosen = new List<PlannedReading>();
        while (chosen.Count < most)
        {
            var targets = start.Targets(_design).Where(t => !t.IsSettled).ToList();
            if (targets.Count == 0 || Best(targets) is not { } best)
            {
                break;
            }

            chosen.Add(best);
            _design = _design.With(best.Candidate.Observation);
            _candidates.First(c => c.Count > 0 && c.Peek() == best.Candidate).Dequeue();
            _dropped.UnionWith(best.Candidate.Marks);
        }

        return chosen;
    }

    private PlannedReading? Best(IReadOnlyList<PlanTarget> targets)
    {
        var (best, bestScore) = ((Candidate?)null, 0.0);
        foreach (var candidate in _candidates.Where(c => c.Count > 0).Select(c => c.Peek()).Where(IsPossible))
        {
            var score = Gain(candidate, targets) / start.MinutesOf(candidate, _dropped);
            if (score > bestScore)
            {
                (best, bestScore) = (candidate, score);
            }
        }

        return best is null ? null : new PlannedReading(best, start.MinutesOf(best, _dropped), SettledBy(best, targets));
    }

    /// <summary>A drop is hung again only where there is a first.</summary>
    private bool IsPossible(Candidate candidate) => candidate.Kind != "drop" || _dropped.Contains(candidate.Point!);

    private double Gain(Candidate candidate, IReadOnlyList<PlanTarget> targets)
    {
        var effect = _design.Effect(candidate.Observation);
        return targets.Sum(t => t.Unsettled(t.UMetres) - t.Unsettled(After(t, effect)));
    }

    private static double After(PlanTarget target, DesignEffect effect) =>
        Math.Sqrt(Math.Max(0, (target.UMetres * target.UMetres) - effect.Reduction(target.Gradient)));

    /// <summary>The targets that the reading alone settles; else the three that it brings nearest.</summary>
    private IReadOnlyList<string> SettledBy(Candidate candidate, IReadOnlyList<PlanTarget> targets)
    {
        var effect = _design.Effect(candidate.Observation);
        // A check and a form of damage may have one name, as twist has.
        var settled = targets.Where(t => (t with { UMetres = After(t, effect) }).IsSettled).Select(t => t.Id).Distinct().ToList();
        return settled.Count > 0
            ? settled
            :
            [
                .. targets
                    .Select(t => (t.Id, Share: After(t, effect) / t.UMetres))
                    .Where(t => t.Share < 0.95)
                    .OrderBy(t => t.Share)
                    .Select(t => t.Id)
                    .Distinct()
                    .Take(3),
            ];
    }
}
