using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>A whole plan: as few minutes as can be found that settle everything which can be settled at all.</summary>
/// <remarks>
/// <para>
/// First greedy, best reading for a minute next, with rank-one updates of what is known (<see cref="AimedDesign"/>). Then needless readings are
/// left out, always the one that is missed least. The same the other way round: everything once, and then left out what is missed least; the quicker
/// of the two goes on. Then some of those missed least, or all that touch one point, are torn out and the greedy choice goes on from there; what is
/// not quicker is taken back (ruin and recreate: Schrimpf and others, Journal of Computational Physics 159, 2000, 139-171).
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
    private const int MostTurns = 5;
    private const int MostRuins = 60;
    private const int SpareLengths = 2; // with one too many a slip is noticed, with two it can be found as well
    private const int MostPointsToRuin = 20; // larger frames are only pruned: their plans should not keep anybody waiting

    private readonly PlanStart _start;
    private readonly AimedDesign _design;
    private double[] _changes = []; // of the targets' variances, m²: room to work in
    private HashSet<(string Id, bool IsForm)>? _reachable; // null until something stays open: then it is asked what can be settled at all
    private List<int> _chosen = []; // numbers of groups, in the order of choice
    private IReadOnlyList<PlanTarget> _targets = [];

    public PlanSearch(PlanStart start)
    {
        _start = start;
        _design = new AimedDesign(start.Design, [.. start.Groups.Select(g => g[0].Observation)]);
        Refresh();
        HasTargets = _targets.Count > 0;
    }

    /// <summary>Whether there is anything that readings could settle: points drawn, pairs or book figures, and a limit.</summary>
    public bool HasTargets { get; }

    /// <summary>Whether all of it would be settled if every reading were taken.</summary>
    public bool IsAllInReach { get; private set; } = true;

    /// <summary>Whether the plan settles all that is in reach.</summary>
    public bool IsSettled { get; private set; }

    /// <summary>The plan, in the order of choice; at most so many readings.</summary>
    public IReadOnlyList<PlannedReading> Find(int most)
    {
        var nothing = _design.Keep();
        IsSettled = Grow(most);
        if (!IsSettled)
        {
            // Readings went into what no reading settles: once more, without it.
            var all = _start.Targets(_start.DesignOfAll());
            _reachable = [.. all.Where(t => t.IsSettled).Select(NameOf)];
            IsAllInReach = all.All(t => t.IsSettled);
            if (!IsAllInReach)
            {
                _chosen = [];
                _design.Restore(nothing);
                IsSettled = Grow(most);
            }
        }

        if (IsSettled)
        {
            IsSettled = Tidy(most);
        }

        if (IsSmall)
        {
            Improve(most);
        }

        return Planned();
    }

    // A check and a form of damage may have one name, as twist has.
    private static (string Id, bool IsForm) NameOf(PlanTarget target) => (target.Id, target.IsForm);

    private bool IsSmall => _start.Groups.SelectMany(g => g[0].Points).Distinct().Count() <= MostPointsToRuin;

    private HashSet<string> Marks() => [.. _chosen.SelectMany(g => _start.Groups[g][0].Marks)];

    /// <summary>Lengths between marks beyond those that place the marks: 2 n - 3 for n of them.</summary>
    private int Spare()
    {
        var lengths = _chosen.Where(g => _start.Groups[g][0].Kind == "plan").ToHashSet();
        var marks = lengths.SelectMany(g => _start.Groups[g][0].Marks).Concat(_start.Taped.SelectMany(t => t)).ToHashSet();
        return lengths.Count + _start.Taped.Count - ((2 * marks.Count) - 3);
    }

    private HashSet<string> Dropped() => [.. _start.Dropped, .. Marks()];

    private double Minutes() => Planned(_chosen, _ => []).Sum(p => p.Minutes);

    /// <summary>Chooses until all is settled; false when nothing helps or there are too many.</summary>
    private bool Grow(int most)
    {
        Refresh();
        while (Close(most, RefreshEvery))
        {
            // With what the pairs are worth now it may not be settled after all.
            Refresh();
            if (Open().Count == 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Chooses until no target is open; false when nothing helps or there are too many.</summary>
    private bool Close(int most, int refreshEvery)
    {
        var worth = new double[_start.Groups.Count];
        Array.Fill(worth, double.PositiveInfinity);
        for (var since = 1; Open() is { Count: > 0 } open; since++)
        {
            if (_chosen.Count >= most || Best(open, worth) is not { } best)
            {
                return false;
            }

            Take(best);
            if (since % refreshEvery == 0)
            {
                Refresh();
                Array.Fill(worth, double.PositiveInfinity);
            }
        }

        return true;
    }

    /// <summary>The group whose next reading is worth most for a minute; only those that were worth most before are looked at again.</summary>
    private int? Best(IReadOnlyList<int> open, double[] worth)
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
            worth[g] = Gain(g, open) / _start.MinutesOf(candidate, dropped);
            fresh++;
            best = best < 0 || worth[g] > worth[best] ? g : best;
        }

        return best >= 0 && worth[best] > 0 ? best : null;
    }

    /// <summary>By how much less unsettled the open targets would be with the group's next reading.</summary>
    private double Gain(int group, IReadOnlyList<int> open)
    {
        const double Nothing = 1e-9; // share of a variance
        _design.WhenTaken(group, _changes);
        var sum = 0.0;
        foreach (var t in open)
        {
            var (target, fall) = (_targets[t], _changes[t]);
            var variance = target.UMetres * target.UMetres;
            if (fall > Nothing * variance)
            {
                sum += target.Unsettled(target.UMetres) - target.Unsettled(Math.Sqrt(Math.Max(0, variance - fall)));
            }
        }

        return sum;
    }

    /// <summary>Leaves out, as long as everything stays settled, always the reading that is missed least for its minutes.</summary>
    private int Prune()
    {
        var left = 0;
        for (; MissedLeast(mustSettle: true) is { } needless; left++)
        {
            GiveBack(needless);
        }

        return left;
    }

    /// <summary>
    /// Prunes, works the targets out again, closes what that opened, until nothing is needless or open; false when something cannot be closed.
    /// </summary>
    private bool Tidy(int most)
    {
        for (var turn = 0; turn < MostTurns; turn++)
        {
            var left = Prune();
            Refresh();
            if (Open().Count > 0)
            {
                if (!Close(most, int.MaxValue))
                {
                    return false;
                }
            }
            else if (left == 0)
            {
                return true;
            }
        }

        return Grow(most);
    }

    /// <summary>Looks for a quicker plan, or for one that settles all where the greedy choice has lost its way.</summary>
    private void Improve(int most)
    {
        Try(() => LeaveOutOfAll(most));
        for (var ruin = 0; ruin < MostRuins && IsSettled && _chosen.Count > 0; ruin++)
        {
            Try(() => Rebuild(ruin, most));
        }
    }

    /// <summary>Takes everything once and leaves out what is not needed; false when that settles not all.</summary>
    private bool LeaveOutOfAll(int most)
    {
        foreach (var group in _chosen)
        {
            _design.GiveBack(group);
        }

        _chosen = [.. Enumerable.Range(0, _start.Groups.Count).Where(g => _start.Groups[g][0].Kind != "drop")];
        foreach (var group in _chosen)
        {
            _design.Take(group);
        }

        return Grow(int.MaxValue) && Tidy(most);
    }

    /// <summary>Tears out some of the readings and chooses anew from there; false when that settles not all.</summary>
    private bool Rebuild(int round, int most)
    {
        var minutes = Minutes();
        if (round % 2 == 0)
        {
            TearOutLeast(round / 2);
        }
        else
        {
            TearOutPoint(round / 2);
        }

        if (!Close(most, int.MaxValue))
        {
            return false;
        }

        Prune();
        return IsQuicker(minutes) && Tidy(most);
    }

    private void TearOutLeast(int round)
    {
        var torn = 2 + (round % 4 * 2);
        for (var i = 0; i < torn && MissedLeast(mustSettle: false, skip: (round + i) % 3) is { } group; i++)
        {
            GiveBack(group);
        }
    }

    private void TearOutPoint(int round)
    {
        var points = _chosen.SelectMany(g => _start.Groups[g][0].Points).Distinct().Order(StringComparer.Ordinal).ToList();
        var point = points[round % points.Count];
        foreach (var group in _chosen.Where(g => _start.Groups[g][0].Points.Contains(point)).ToList())
        {
            GiveBack(group);
        }
    }

    /// <summary>
    /// Goes a way to another plan, and comes back when it is not the better one: it settles what was open, or has lengths to spare where there were none,
    /// or is quicker.
    /// </summary>
    private void Try(Func<bool> way)
    {
        var (design, chosen, targets, minutes) = (_design.Keep(), _chosen, _targets, Minutes());
        var hadSpare = HasSpare();
        if (way() && (!IsSettled || IsBetter(hadSpare, minutes)))
        {
            IsSettled = true;
            return;
        }

        _design.Restore(design);
        (_chosen, _targets, _changes) = (chosen, targets, new double[targets.Count]);
    }

    private bool IsBetter(bool hadSpare, double minutes) => HasSpare() == hadSpare ? IsQuicker(minutes) : HasSpare();

    private bool HasSpare() => Spare() >= SpareLengths;

    private bool IsQuicker(double thanMinutes)
    {
        const double Rounding = 1e-9;
        return Minutes() < thanMinutes - Rounding;
    }

    /// <summary>The group whose last reading is missed least; null when every one is needed.</summary>
    private int? MissedLeast(bool mustSettle, int skip = 0)
    {
        var found = new List<(int Group, double Miss)>();
        var isSpare = !mustSettle || Spare() > SpareLengths;
        foreach (var group in _chosen.Distinct().Where(g => isSpare || _start.Groups[g][0].Kind != "plan"))
        {
            if (Miss(group, mustSettle) is { } miss)
            {
                found.Add((group, miss));
            }
        }

        return found.Count == 0 ? null : found.OrderBy(f => f.Miss).ElementAt(Math.Min(skip, found.Count - 1)).Group;
    }

    /// <summary>How near to their limits the targets would be without the group's last reading; null when one would be open that must not.</summary>
    private double? Miss(int group, bool mustSettle)
    {
        _design.WhenGivenBack(group, _changes);
        var miss = 0.0;
        for (var t = 0; t < _targets.Count; t++)
        {
            var target = _targets[t];
            if (!IsReachable(target))
            {
                continue;
            }

            var variance = Math.Max(0, (target.UMetres * target.UMetres) + _changes[t]);
            if (mustSettle && !target.IsSettledBy(Math.Sqrt(variance)))
            {
                return null;
            }

            var square = variance / (target.LimitMetres * target.LimitMetres);
            miss += square * square * square;
        }

        return miss;
    }

    private static PlanTarget Risen(PlanTarget target, double rise) =>
        target with
        {
            UMetres = Math.Sqrt(Math.Max(0, (target.UMetres * target.UMetres) + rise)),
        };

    private void Take(int group)
    {
        _chosen = [.. _chosen, group];
        _design.Take(group);
        Look();
    }

    private void GiveBack(int group)
    {
        _design.GiveBack(group);
        var last = _chosen.LastIndexOf(group);
        _chosen = [.. _chosen.Where((_, i) => i != last)];
        Look();
    }

    private void Look() => _targets = [.. _targets.Select((t, i) => t with { UMetres = Math.Sqrt(Math.Max(0, _design.Variance(i))) })];

    private void Refresh()
    {
        _targets = _start.Targets(_design.Now());
        _design.Aim([.. _targets.Select(t => t.Gradient)]);
        _changes = new double[_targets.Count];
    }

    private bool IsReachable(PlanTarget target) => _reachable is null || _reachable.Contains(NameOf(target));

    private List<int> Open() => [.. Enumerable.Range(0, _targets.Count).Where(t => !_targets[t].IsSettled && IsReachable(_targets[t]))];

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

    /// <summary>What would be open without it, the furthest first; of a length to spare what would come nearest to it.</summary>
    private IReadOnlyList<string> NeededFor(int group)
    {
        const int MostNamed = 3;
        _design.WhenGivenBack(group, _changes);
        var without = _targets.Select((t, i) => Risen(t, _changes[i])).Where(IsReachable).ToList();
        var open = without.Where(t => !t.IsSettled).ToList();
        return
        [
            .. (open.Count > 0 ? open : without)
                .OrderByDescending(t => t.UMetres / t.LimitMetres)
                .Select(t => t.Id)
                .Distinct(StringComparer.Ordinal)
                .Take(MostNamed),
        ];
    }
}
