using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>Where planning starts: what is known, what could be read, and what should be settled.</summary>
internal sealed class PlanStart
{
    private readonly CarFile _car;
    private readonly Limits _limits;
    private readonly NetworkFit? _fit;
    private readonly IReadOnlyList<Check> _known;
    private readonly ReadingMinutes _minutes;
    private readonly double _turnRadians;
    private readonly Network _network;

    public PlanStart(CarFile car, FrameNetwork readings, NetworkFit? fit, IReadOnlyList<Check> known, Limits limits, FloorOptions options)
    {
        (_car, _fit, _known, _limits, _minutes) = (car, fit, known, limits, options.Minutes);
        _network = WithTools(car, readings.Network);
        Design = NetworkDesign.Of(_network, fit);
        _turnRadians = DesignFrame.Of(car.Frame.Points, Design, fit).TurnRadians;
        Groups = [.. Candidates.Of(car, readings).GroupBy(c => (c.From, c.To, c.Point, c.Kind == "drop")).Select(g => g.ToArray())];
        var dropped = car.StandingReadings.Where(r => r is Reading.Plan or Reading.Offset or Reading.Drop).SelectMany(r => r.Points);
        var exact = car.Frame.Points.Where(p => p.DropSigma is { } s && s == Engine.Lengths.Length.Zero).Select(p => p.Id);
        Dropped = dropped.Concat(exact).ToHashSet(StringComparer.Ordinal);
        Taped =
        [
            .. car
                .StandingReadings.OfType<Reading.Plan>()
                .Select(r => r.Points.Order(StringComparer.Ordinal).ToArray())
                .DistinctBy(p => string.Join('\n', p)),
        ];
    }

    /// <summary>What is known.</summary>
    public NetworkDesign Design { get; }

    /// <summary>Like readings in the order in which they can be taken: a length is repeated only after its first.</summary>
    public IReadOnlyList<Candidate[]> Groups { get; private set; }

    /// <summary>Leaves to be tried only so many, if there are more: those that lower the uncertainty of the whole frame most, whatever it is needed for.</summary>
    /// <returns>How many are left out.</returns>
    public int KeepThoseThatTellMost(int most)
    {
        var all = Groups;
        if (all.Count > most)
        {
            var kept = all.OrderByDescending(g => Design.Effect(g[0].Observation).TraceReduction()).Take(most).ToHashSet();
            Groups = [.. all.Where(kept.Contains)];
        }

        return all.Count - Groups.Count;
    }

    /// <summary>What would be known if every reading were taken.</summary>
    public NetworkDesign DesignOfAll()
    {
        var all = _network.Observations.Concat(Groups.SelectMany(g => g).Select(c => c.Observation));
        return NetworkDesign.Of(new Network(_network.Points, all, _network.Tools, _network.MirrorPairs), _fit);
    }

    /// <summary>Points that have a mark already, or need none.</summary>
    public IReadOnlySet<string> Dropped { get; }

    /// <summary>Lengths between marks taken so far, each once: their two points.</summary>
    public IReadOnlyList<string[]> Taped { get; }

    /// <summary>What should be settled, as a design leaves it.</summary>
    public IReadOnlyList<PlanTarget> Targets(NetworkDesign design) =>
        PlanTargets.Of(_car.Frame.Points, _limits, design, _fit, _known, _turnRadians);

    /// <summary>Minutes of a reading, those of first drops included.</summary>
    public double MinutesOf(Candidate candidate, IReadOnlySet<string> dropped) =>
        candidate.Kind switch
        {
            "height" => _minutes.Height,
            "drop" => _minutes.Drop,
            "direct" => _minutes.Direct,
            _ => _minutes.Plan + (_minutes.FirstDrop * candidate.Marks.Count(p => !dropped.Contains(p))),
        };

    /// <summary>The tape is known before its first reading.</summary>
    private static Network WithTools(CarFile car, Network network) =>
        new(network.Points, network.Observations, network.Tools.Concat(Candidates.Tools(car)).DistinctBy(t => t.Id), network.MirrorPairs);
}
