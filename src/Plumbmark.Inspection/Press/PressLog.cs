using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Press;

/// <summary>A press job read from its first bite to its last: what each told, and what comes next.</summary>
public sealed class PressLog
{
    private const double CoverageFactor = 2; // 95 % of a normal distribution, both sides
    private const double SeenSet = 4; // a total set of this many standard uncertainties of a reading is a set
    private const double ShiftDeviations = 3; // a sound job shifts further in about 1 of 100; bench/results/press.txt
    private const double LoadDrop = 0.9; // a gauge reads within a few per cent; a tenth less at more travel is no reading error
    private const double NormalReach = 1.959964; // from the middle to the end of a 95 % interval, in standard deviations

    private static readonly (BiteSign Sign, StopReason Reason)[] s_signs =
    [
        (BiteSign.Tick, StopReason.Tick),
        (BiteSign.Flaking, StopReason.Flaking),
        (BiteSign.LoadFell, StopReason.LoadFell),
        (BiteSign.WrongPlane, StopReason.WrongPlane),
        (BiteSign.Buckled, StopReason.Buckled),
    ];

    private readonly PressJob _job;
    private readonly PressPlan _plan;
    private readonly List<LoggedBite> _bites = [];

    private PressLog(PressJob job, PressPlan plan)
    {
        (_job, _plan, Belief) = (job, plan, plan.StartBelief());
        foreach (var record in job.StandingBites)
        {
            Log(record);
        }
    }

    /// <summary>The bites that stand, in order.</summary>
    public IReadOnlyList<LoggedBite> Bites => _bites;

    /// <summary>What is believed about the spring-back now.</summary>
    public BiteBelief Belief { get; private set; }

    /// <summary>How far the part is out now, where it is measured, m; below 0 is past straight.</summary>
    public double LeftMetres => _bites.Count > 0 ? _bites[^1].LeftMetres : _plan.OutByMetres;

    /// <summary>Standard uncertainty of <see cref="LeftMetres"/>, m.</summary>
    public double LeftUncertaintyMetres => _bites.Count > 0 ? _job.Limits.Reading.Metres : _plan.OutByUncertaintyMetres;

    /// <summary>Whether the part is straight within the limit chosen; null where no limit is known.</summary>
    public Verdict? Straightness
    {
        get
        {
            if (_job.Limits.Straight?.Metres is not { } limit)
            {
                return null;
            }

            var u = LeftUncertaintyMetres;
            var within = Normal.Cumulative((limit - LeftMetres) / u) - Normal.Cumulative((-limit - LeftMetres) / u);
            return within >= 0.95 ? Verdict.True
                : within <= 0.05 ? Verdict.Out
                : Verdict.CannotTellYet;
        }
    }

    /// <summary>The log of a job with its plan.</summary>
    public static PressLog Of(PressJob job, PressPlan plan) => new(job, plan);

    /// <summary>Where the job stands.</summary>
    public PressState State()
    {
        var pending = Pending();
        var final = pending.Where(IsFinal).ToList();
        if (final.Count > 0)
        {
            return new PressState.Over(final);
        }

        if (pending.Count > 0)
        {
            return new PressState.Stopped(pending, _bites[^1].Record.Id);
        }

        var cannotSee = _job.Limits.Straight is null && Math.Abs(LeftMetres) <= CoverageFactor * LeftUncertaintyMetres;
        if (Straightness == Verdict.True || cannotSee)
        {
            return new PressState.Straight(Straightness, IsTestedNow());
        }

        // Within the limit but on the far side, and not surely: pressing on would only go further past.
        if (LeftMetres <= 0)
        {
            return new PressState.Over([StopReason.PastStraight]);
        }

        return _bites.Count >= _job.Limits.Bites ? new PressState.Over([StopReason.TooManyBites]) : Next();
    }

    private PressState Next()
    {
        var left = LeftMetres / _plan.Lever;
        var hasSet = Belief.SetSoFarMetres > SeenSet * _plan.Noise.StraightnessMetres;
        var next = NextTravel.From(Belief, left, hasSet, _plan.WallSetMetres);
        if (Belief.OuterStrainAt(Belief.SetSoFarMetres + next.SetMetres.Middle) > _job.Limits.Strain)
        {
            return new PressState.Over([StopReason.StrainSpent]);
        }

        return new PressState.NextBite(next, _job.Limits.Straight is { } limit && LeftMetres <= limit.Metres);
    }

    private void Log(BiteRecord record)
    {
        var before = LeftMetres;
        var left = record.LeftLater?.Metres ?? record.Left?.Metres ?? (before - (record.Set!.Value.Metres * _plan.Lever));
        var bite = new ObservedBite(record.Travel.Metres, (_plan.OutByMetres - before) / _plan.Lever, (before - left) / _plan.Lever);
        var expected = Belief.SetForTravelMetres(bite.TravelMetres);
        var stops = Stops(record, bite, expected, left);
        Belief = Belief.After(bite);
        var total = bite.SetBeforeMetres + bite.SetMetres;
        _bites.Add(
            new(
                record,
                bite.SetMetres,
                total,
                left,
                expected,
                bite.SetMetres < CoverageFactor * _plan.Noise.StraightnessMetres,
                Belief.OuterStrainAt(total),
                stops
            )
        );
    }

    private List<StopReason> Stops(BiteRecord record, ObservedBite bite, Interval expected, double left)
    {
        var stops = s_signs.Where(s => record.Signs.Contains(s.Sign)).Select(s => s.Reason).ToList();
        var strongest = _bites.Where(b => b.Record.Load is not null).MaxBy(b => b.Record.Load);
        if (
            record.Load < LoadDrop * strongest?.Record.Load
            && record.Travel >= strongest?.Record.Travel
            && !stops.Contains(StopReason.LoadFell)
        )
        {
            stops.Add(StopReason.LoadFell);
        }

        // Only against what earlier bites have told: a first bite that differs from the handbook is no shift.
        var deviation = Math.Max(_plan.Noise.CameBackMetres, (expected.High - expected.Low) / (2 * NormalReach));
        var told = _bites.Any(b => !b.SetNothing);
        if (told && Math.Abs(bite.SetMetres - expected.Middle) > ShiftDeviations * deviation)
        {
            stops.Add(StopReason.SpringBackShifted);
        }

        if (left < -(_job.Limits.Straight?.Metres ?? (CoverageFactor * _job.Limits.Reading.Metres)))
        {
            stops.Add(StopReason.PastStraight);
        }

        return stops;
    }

    /// <summary>What still stops the job: reasons of bites that no later crack test has cleared, and those that nothing clears.</summary>
    private List<StopReason> Pending()
    {
        var order = _bites.Select((b, i) => (b.Record.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        var inspected = _job
            .CrackTests.Where(t => !t.Found && Gate.IsCrackTest(t, _job.Part) && t.AfterBite is not null)
            .Select(t => order.GetValueOrDefault(t.AfterBite!, -1))
            .Append(-1)
            .Max();
        return [.. _bites.SelectMany((b, i) => b.Stops.Where(s => i > inspected || IsFinal(s))).Distinct()];
    }

    private bool IsTestedNow() =>
        _bites.Count > 0 && _job.CrackTests.Any(t => !t.Found && t.AfterBite == _bites[^1].Record.Id && Gate.IsCrackTest(t, _job.Part));

    private static bool IsFinal(StopReason reason) =>
        reason is StopReason.PastStraight or StopReason.TooManyBites or StopReason.StrainSpent or StopReason.Buckled;
}
