using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>A planned reading with what it is for.</summary>
/// <param name="Candidate">The reading.</param>
/// <param name="Minutes">Its minutes, those of first drops included.</param>
/// <param name="Settles">What it settles, or comes nearest to settling.</param>
internal sealed record PlannedReading(Candidate Candidate, double Minutes, IReadOnlyList<string> Settles);

/// <summary>
/// Chooses readings one after the other: each time the one that lowers the expected number of unsettled checks and blind spots most for a
/// minute of work, until all are settled.
/// </summary>
/// <remarks>
/// Greedy with rank-one updates of the covariance (<see cref="NetworkDesign"/>). The expected number is the sum over the targets of
/// <see cref="PlanTarget.Unsettled"/>.
/// </remarks>
internal sealed class ReadingPlanner
{
    private readonly CarFile _car;
    private readonly FloorOptions _options;
    private readonly Limits _limits;
    private readonly NetworkFit? _fit;
    private readonly IReadOnlyList<Check> _known;

    // Like readings in the order in which they can be taken: a length is repeated only after its first.
    private readonly List<Queue<Candidate>> _candidates;
    private readonly HashSet<string> _dropped;
    private readonly double _turnRadians;
    private HashSet<string>? _reachable;
    private NetworkDesign _design;

    public ReadingPlanner(
        CarFile car,
        FrameNetwork readings,
        NetworkFit? fit,
        IReadOnlyList<Check> known,
        Limits limits,
        FloorOptions options
    )
    {
        (_car, _fit, _known, _limits, _options) = (car, fit, known, limits, options);
        _design = NetworkDesign.Of(WithTools(car, readings.Network), fit);
        _turnRadians = DesignFrame.Of(car.Frame.Points, _design, fit).TurnRadians;
        _candidates =
        [
            .. Candidates.Of(car, readings).GroupBy(c => (c.From, c.To, c.Point, c.Kind == "drop")).Select(g => new Queue<Candidate>(g)),
        ];
        _dropped = [.. car.StandingReadings.Where(r => r is Reading.Plan or Reading.Offset or Reading.Drop).SelectMany(r => r.Points)];
        _dropped.UnionWith(car.Frame.Points.Where(p => p.DropSigma is { } s && s == Engine.Lengths.Length.Zero).Select(p => p.Id));
    }

    /// <summary>The tape is known before its first reading.</summary>
    private static Network WithTools(CarFile car, Network network) =>
        new(network.Points, network.Observations, network.Tools.Concat(Candidates.Tools(car)).DistinctBy(t => t.Id), network.MirrorPairs);

    /// <summary>What is still unsettled after the readings chosen so far, of what readings can settle at all.</summary>
    public IReadOnlyList<PlanTarget> Unsettled() => [.. Targets().Where(t => !t.IsSettled && _reachable?.Contains(t.Id) != false)];

    /// <summary>Looks only at what could be settled if every candidate were taken; the rest is named.</summary>
    public IReadOnlyList<string> LeaveOutOfReach()
    {
        var all = _candidates.SelectMany(c => c).Aggregate(_design, (design, candidate) => design.With(candidate.Observation));
        var targets = PlanTargets.Of(_car.Frame.Points, _limits, all, _fit, _known, _turnRadians);
        _reachable = [.. targets.Where(t => t.IsSettled).Select(t => t.Id)];
        return [.. targets.Where(t => !t.IsSettled).Select(t => t.Id)];
    }

    /// <summary>Chooses up to so many readings; fewer when everything is settled or nothing helps.</summary>
    public IReadOnlyList<PlannedReading> Choose(int most)
    {
        var chosen = new List<PlannedReading>();
        while (chosen.Count < most)
        {
            var targets = Unsettled();
            if (targets.Count == 0 || Best(targets) is not { } best)
            {
                break;
            }

            chosen.Add(best);
            _design = _design.With(best.Candidate.Observation);
            _candidates.First(c => c.Count > 0 && c.Peek() == best.Candidate).Dequeue();
            _dropped.UnionWith(best.Candidate.Kind == "height" ? [] : best.Candidate.Points);
        }

        return chosen;
    }

    /// <summary>Whether there is anything that readings could settle: points drawn, pairs or book figures, and a limit.</summary>
    public bool HasTargets => Targets().Count > 0;

    /// <summary>
    /// Chooses readings, then leaves out again each one that the others have made needless: the first steps are taken before the last are
    /// known.
    /// </summary>
    public IReadOnlyList<PlannedReading> ChoosePruned(int most)
    {
        var chosen = Choose(most).ToList();
        if (Unsettled().Count > 0)
        {
            return chosen;
        }

        foreach (var reading in chosen.ToList())
        {
            var before = _design;
            _design = _design.Without(reading.Candidate.Observation);
            if (Unsettled().Count == 0)
            {
                chosen.Remove(reading);
            }
            else
            {
                _design = before;
            }
        }

        return chosen;
    }

    private IReadOnlyList<PlanTarget> Targets() => PlanTargets.Of(_car.Frame.Points, _limits, _design, _fit, _known, _turnRadians);

    private PlannedReading? Best(IReadOnlyList<PlanTarget> targets)
    {
        var (best, bestScore) = ((Candidate?)null, 0.0);
        foreach (var candidate in _candidates.Where(c => c.Count > 0).Select(c => c.Peek()).Where(IsPossible))
        {
            var score = Gain(candidate, targets) / MinutesOf(candidate);
            if (score > bestScore)
            {
                (best, bestScore) = (candidate, score);
            }
        }

        return best is null ? null : new PlannedReading(best, MinutesOf(best), SettledBy(best, targets));
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

    private double MinutesOf(Candidate candidate)
    {
        var minutes = _options.Minutes;
        return candidate.Kind switch
        {
            "height" => minutes.Height,
            "drop" => minutes.Drop,
            "direct" => minutes.Direct,
            _ => minutes.Plan + (minutes.FirstDrop * candidate.Points.Count(p => !_dropped.Contains(p))),
        };
    }

    /// <summary>The targets that the reading alone settles; else the three that it brings nearest.</summary>
    private IReadOnlyList<string> SettledBy(Candidate candidate, IReadOnlyList<PlanTarget> targets)
    {
        var effect = _design.Effect(candidate.Observation);
        var settled = targets.Where(t => (t with { UMetres = After(t, effect) }).IsSettled).Select(t => t.Id).ToList();
        return settled.Count > 0
            ? settled
            :
            [
                .. targets
                    .Select(t => (t.Id, Share: After(t, effect) / t.UMetres))
                    .Where(t => t.Share < 0.95)
                    .OrderBy(t => t.Share)
                    .Take(3)
                    .Select(t => t.Id),
            ];
    }
}
