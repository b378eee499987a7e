using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>A whole plan: as few minutes as can be found that settle everything which can be settled at all.</summary>
/// <remarks>
/// <para>
/// First greedy, best reading for a minute next, with rank-one updates of the covariance (<see cref="NetworkDesign"/>). Then needless readings are
/// left out, always the one that is missed least. Then, as long as it pays, some of those missed least are torn out and the greedy choice goes on from
/// there (ruin and recreate: Schrimpf and others, Journal of Computational Physics 159, 2000, 139-171).
/// </para>
/// <para>
/// What a target is made of depends a little on the design, because a centre line is drawn through the pairs that are known best. It is worked out
/// again now and then, and always before a plan is called complete.
/// </para>
/// </remarks>
internal sealed class PlanSearch
{
    private const int RefreshEvery = 6; // readings chosen between two times that the targets are worked out again
    private const int MostFresh = 12; // candidates looked at again before each choice; the others keep their last worth
    private const int MostRuins = 12;
    private const int MostPointsToRuin = 30; // larger frames are only pruned: their plans should not keep anybody waiting

    private readonly PlanStart _start;
    private readonly HashSet<(string Id, bool IsForm)> _reachable;
    private List<int> _chosen = []; // numbers of groups, in the order of choice
    private NetworkDesign _design;
    private IReadOnlyList<PlanTarget> _targets = [];

    public PlanSearch(PlanStart start)
    {
        (_start, _design) = (start, start.Design);
        var all = start.Groups.SelectMany(g => g).Aggregate(start.Design, (design, c) => design.With(c.Observation));
        var targets = start.Targets(all);
        HasTargets = targets.Count > 0;
        _reachable = [.. targets.Where(t => t.IsSettled).Select(NameOf)];
        IsAllInReach = targets.All(t => t.IsSettled);
    }

    /// <summary>Whether there is anything that readings could settle: points drawn, pairs or book figures, and a limit.</summary>
    public bool HasTargets { get; }

    /// <summary>Whether all of it would be settled if every reading were taken.</summary>
    public bool IsAllInReach { get; }

    /// <summary>Whether the plan settles all that is in reach.</summary>
    public bool IsSettled { get; private set; }

    /// <summary>The plan, in the order of choice; at most so many readings.</summary>
    public IReadOnlyList<PlannedReading> Find(int most)
    {
        IsSettled = Grow(most);
        if (IsSettled)
        {
            Prune();
            for (var ruin = 0; ruin < MostRuins && Marks().Count <= MostPointsToRuin; ruin++)
            {
                Ruin(ruin, most);
            }
        }

        return Planned();
    }

    // A check and a form of damage may have one name, as twist has.
    private static (string Id, bool IsForm) NameOf(PlanTarget target) => (target.Id, target.IsForm);

    private HashSet<string> Marks() => [.. _chosen.SelectMany(g => _start.Groups[g][0].Marks)];

    private HashSet<string> Dropped() => [.. _start.Dropped, .. Marks()];

    private double Minutes() => Planned(_chosen, _ => []).Sum(p => p.Minutes);

    /// <summary>Chooses until all is settled; false when nothing helps or there are too many.</summary>
    private bool Grow(int most)
    {
        Refresh();
        var worth = new double[_start.Groups.Count];
        Array.Fill(worth, double.PositiveInfinity);
        for (var since = 1; ; since++)
        {
            var open = Open();
            if (open.Count == 0)
            {
                // With what the pairs are worth now it may not be settled after all.
                Refresh();
                open = Open();
                if (open.Count == 0)
                {
                    return true;
                }
            }

            if (_chosen.Count >= most || Best(open, worth) is not { } best)
            {
                return false;
            }

            Take(best);
            if (since % RefreshEvery == 0)
            {
                Refresh();
                Array.Fill(worth, double.PositiveInfinity);
            }
        }
    }

    /// <summary>The group whose next reading is worth most for a minute; only those that were worth most before are looked at again.</summary>
    private int? Best(IReadOnlyList<PlanTarget> open, double[] worth)
    {
        var dropped = Dropped();
        var taken = _chosen.CountBy(g => g).ToDictionary();
        var (best, fresh) = (-1, 0);
        foreach (var g in Enumerable.Range(0, worth.Length).OrderByDescending(g => worth[g]))
        {
            if (best >= 0 && fresh >= MostFresh && worth[g] <= worth[best])
            {
                break;
            }

            var at = taken.GetValueOrDefault(g);
            if (at >= _start.Groups[g].Length || (_start.Groups[g][at] is { Kind: "drop" } drop && !dropped.Contains(drop.Point!)))
            {
                worth[g] = at >= _start.Groups[g].Length ? 0 : worth[g];
                continue;
            }

            var candidate = _start.Groups[g][at];
            var effect = _design.Effect(candidate.Observation);
            worth[g] = open.Sum(t => t.Unsettled(t.UMetres) - t.Unsettled(After(t, effect))) / _start.MinutesOf(candidate, dropped);
            fresh++;
            best = best < 0 || worth[g] > worth[best] ? g : best;
        }

        return best >= 0 && worth[best] > 0 ? best : null;
    }

    private static double After(PlanTarget target, DesignEffect effect) =>
        Math.Sqrt(Math.Max(0, (target.UMetres * target.UMetres) - effect.Reduction(target.Gradient)));

    /// <summary>Leaves out, as long as everything stays settled, always the reading that is missed least for its minutes.</summary>
    private void Prune()
    {
        while (MissedLeast(mustSettle: true) is { } needless)
        {
            var (before, chosen, targets) = (_design, _chosen, _targets);
            GiveBack(needless);
            Refresh();
            if (Open().Count > 0)
            {
                // By the old worth of the pairs it was needless, by the new one it is not: that is the end of it.
                (_design, _chosen, _targets) = (before, chosen, targets);
                break;
            }
        }
    }

    /// <summary>Tears out some of the readings missed least, chooses anew from there, and keeps the better plan.</summary>
    private void Ruin(int round, int most)
    {
        var (before, chosen, targets, minutes) = (_design, _chosen, _targets, Minutes());
        var torn = 2 + (round % 4 * 2);
        for (var i = 0; i < torn && MissedLeast(mustSettle: false, skip: (round + i) % 3) is { } group; i++)
        {
            GiveBack(group);
        }

        var isBetter = Grow(most);
        if (isBetter)
        {
            Prune();
            isBetter = Minutes() < minutes - 1e-9;
        }

        if (!isBetter)
        {
            (_design, _chosen, _targets) = (before, chosen, targets);
        }
    }

    /// <summary>The group whose last reading is missed least; null when every one is needed.</summary>
    private int? MissedLeast(bool mustSettle, int skip = 0)
    {
        var found = new List<(int Group, double Miss)>();
        foreach (var group in _chosen.Distinct())
        {
            var without = _design.Without(LastOf(group).Observation);
            var after = _targets.Where(t => _reachable.Contains(NameOf(t))).Select(t => At(t, without)).ToList();
            if (!mustSettle || after.TrueForAll(t => t.IsSettled))
            {
                found.Add((group, after.Sum(t => Math.Pow(t.UMetres / t.LimitMetres, 6))));
            }
        }

        return found.Count == 0 ? null : found.OrderBy(f => f.Miss).ElementAt(Math.Min(skip, found.Count - 1)).Group;
    }

    private Candidate LastOf(int group) => _start.Groups[group][_chosen.Count(g => g == group) - 1];

    private void Take(int group)
    {
        _chosen = [.. _chosen, group];
        Move(_design.With(LastOf(group).Observation));
    }

    private void GiveBack(int group)
    {
        Move(_design.Without(LastOf(group).Observation));
        var last = _chosen.LastIndexOf(group);
        _chosen = [.. _chosen.Where((_, i) => i != last)];
    }

    private void Move(NetworkDesign design)
    {
        _design = design;
        _targets = [.. _targets.Select(t => At(t, design))];
    }

    private static PlanTarget At(PlanTarget target, NetworkDesign design) =>
        target with
        {
            UMetres = Math.Sqrt(Math.Max(0, design.Variance(target.Gradient))),
        };

    private void Refresh() => _targets = _start.Targets(_design);

    private List<PlanTarget> Open() => [.. _targets.Where(t => !t.IsSettled && _reachable.Contains(NameOf(t)))];

    private IReadOnlyList<PlannedReading> Planned() => Planned(_chosen, NeededFor);

    private IReadOnlyList<PlannedReading> Planned(IReadOnlyList<int> chosen, Func<int, IReadOnlyList<string>> settles)
    {
        var (dropped, taken) = (_start.Dropped.ToHashSet(StringComparer.Ordinal), new Dictionary<int, int>());
        var planned = new List<PlannedReading>();
        foreach (var group in chosen)
        {
            var at = taken[group] = taken.GetValueOrDefault(group, -1) + 1;
            var candidate = _start.Groups[group][at];
            planned.Add(new PlannedReading(candidate, _start.MinutesOf(candidate, dropped), settles(group)));
            dropped.UnionWith(candidate.Marks);
        }

        return planned;
    }

    /// <summary>What would be open without it, the furthest first.</summary>
    private IReadOnlyList<string> NeededFor(int group)
    {
        const int MostNamed = 3;
        var without = _design.Without(LastOf(group).Observation);
        return
        [
            .. _targets
                .Select(t => At(t, without))
                .Where(t => !t.IsSettled && _reachable.Contains(NameOf(t)))
                .OrderByDescending(t => t.UMetres / t.LimitMetres)
                .Select(t => t.Id)
                .Distinct(StringComparer.Ordinal)
                .Take(MostNamed),
        ];
    }
}
