using System.Diagnostics;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>The readings that stand, as a network of observations in metres, each with its uncertainty (docs/method.md, 2).</summary>
/// <remarks>
/// A reading that states its own sigma is used with that and shares nothing. One with a tool that states a sigma has that as its own spread.
/// All others: the division's rounding and 0.5 mm for each end set by eye, brought up to date by the tool's repeats; and the zero and
/// scale of a tape are shared by all its readings, with its class as prior.
/// </remarks>
public sealed class FrameNetwork
{
    private readonly CarFile _car;
    private readonly Dictionary<string, Tool> _tools;
    private readonly Dictionary<(string? Tool, bool IsBetweenMarks), ReadingSpread> _spreads;

    private readonly Dictionary<string, (string, double)> _learntSpreads;
    private readonly FloorMap? _floor;

    private FrameNetwork(CarFile car)
    {
        _car = car;
        _floor = FloorSurface.Through(car.Level?.Floor ?? [])?.AsMap();
        _tools = car.Tools.DistinctBy(t => t.Id).ToDictionary(t => t.Id, StringComparer.Ordinal);
        _spreads = SpreadsByTool();
        _learntSpreads = LearntSpreads();
        var observations = car.StandingReadings.Select(Observed).ToList();
        DropRepeats = RepeatedDrops.Pool(observations);
        var assumed = new PooledRepeatability(CommonPractice.DropMetres, RepeatedDrops.DefaultDegreesOfFreedom);
        DropSpread = DropRepeats is null ? assumed : assumed.With(DropRepeats);
        var pairs = FramePairs.Of(car.Frame.Points).Select(p => new MirrorPair(car.Frame.Points[p.Left].Id, car.Frame.Points[p.Right].Id));
        Network = new Network(car.Frame.Points.Select(Point), observations, SharedTools(observations), pairs);
    }

    /// <summary>The network.</summary>
    public Network Network { get; }

    /// <summary>How sure single readings are, tool by tool.</summary>
    public IReadOnlyCollection<ReadingSpread> Spreads => _spreads.Values;

    /// <summary>What the repeated drops say by themselves; null when nothing was dropped twice.</summary>
    public PooledRepeatability? DropRepeats { get; }

    /// <summary>The spread of one drop per axis that is used for points that do not state theirs. Cover it with Student's t.</summary>
    public PooledRepeatability DropSpread { get; }

    /// <summary>The network of a car's readings that stand.</summary>
    public static FrameNetwork Of(CarFile car) => new(car);

    /// <summary>
    /// The spread that a reading takes its sigma from, when repeats had a say in it; null when it is stated, or assumed and never tried: then it is taken as
    /// known.
    /// </summary>
    public (string Name, double DegreesOfFreedom)? LearntSpreadOf(string readingId) =>
        _learntSpreads.TryGetValue(readingId, out var spread) ? spread : null;

    private Dictionary<string, (string, double)> LearntSpreads()
    {
        var learnt = new Dictionary<string, (string, double)>(StringComparer.Ordinal);
        foreach (var reading in _car.StandingReadings.Where(r => r.Sigma is null && ToolOf(r)?.Sigma is null))
        {
            if (_spreads.GetValueOrDefault((reading.Tool, IsBetweenMarks(reading))) is { Repeats: not null } spread)
            {
                learnt[reading.Id] = (
                    $"{reading.Tool} {(IsBetweenMarks(reading) ? Texts.Say("floor.frame-network.between-marks") : "height")}",
                    spread.Used.DegreesOfFreedom
                );
            }
        }

        return learnt;
    }

    /// <summary>The degrees of freedom of the spread of drops, when repeats had a say in it and the point does not state its own; else null.</summary>
    public double? LearntDropsOf(string pointId) =>
        DropRepeats is not null && _car.Frame.Point(pointId)?.DropSigma is null ? DropSpread.DegreesOfFreedom : null;

    private static bool IsBetweenMarks(Reading reading) => reading is not Reading.Height;

    private Tool? ToolOf(Reading reading) => reading.Tool is { } id ? _tools.GetValueOrDefault(id) : null;

    // A length that was read an inch apart tells of a slip and not of the tape: a repeat further from the middle one than so many spreads is left out.
    // The spread is what most repeats show, where there are enough of them, so that a tape much worse than assumed is still learnt.
    private static IEnumerable<List<double>> WithoutSlips(IEnumerable<List<double>> groups, double assumedMetres)
    {
        const double Slip = 5;
        const int Enough = 5;
        var repeated = groups.Where(g => g.Count > 1).Select(g => (Readings: g, Middle: Middle(g))).ToList();
        var apart = repeated.SelectMany(g => g.Readings.Select(r => Math.Abs(r - g.Middle))).ToList();
        var most = Slip * Math.Max(assumedMetres, apart.Count >= Enough ? Middle(apart) : 0);
        return repeated.Select(g => g.Readings.FindAll(r => Math.Abs(r - g.Middle) <= most));
    }

    private static double Middle(List<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }

    private Dictionary<(string?, bool), ReadingSpread> SpreadsByTool()
    {
        var spreads = new Dictionary<(string?, bool), ReadingSpread>();
        var used = _car.StandingReadings.Where(r =>
            r is not (Reading.Drop or Reading.Indirect) && r.Sigma is null && ToolOf(r)?.Sigma is null
        );
        foreach (var group in used.GroupBy(r => (r.Tool, IsBetweenMarks(r))))
        {
            var (tool, isBetweenMarks) = group.Key;
            var assumed = ToolHabits.Reading(_car, tool is null ? null : _tools.GetValueOrDefault(tool), isBetweenMarks);
            var repeats = PooledRepeatability.Of(
                WithoutSlips(group.GroupBy(WhatWasRead).Select(g => g.Select(ValueMetres).ToList()), assumed.StandardUncertaintyMetres)
            );
            spreads[group.Key] = ReadingSpread.Of(tool, isBetweenMarks, assumed.StandardUncertaintyMetres, repeats);
        }

        return spreads;
    }

    // The same length read from either end is the same length; a rise is not.
    private static (string Kind, string Ends) WhatWasRead(Reading reading)
    {
        var ends = reading is Reading.Plan or Reading.Direct ? reading.Points.Order(StringComparer.Ordinal) : reading.Points;
        return (reading.GetType().Name, string.Join('\n', ends));
    }

    private static double ValueMetres(Reading reading) =>
        reading switch
        {
            Reading.Plan r => (r.Value - (r.StartAt ?? default)).Metres,
            Reading.Direct r => (r.Value - (r.StartAt ?? default)).Metres,
            { Shown: { } length } => length.Metres,
            _ => throw new UnreachableException(),
        };

    private NetworkPoint Point(FramePoint point)
    {
        Coordinate Known(Engine.Lengths.Length? value) =>
            (point.IsFixed, value, point.FixedSigma) switch
            {
                (true, { } v, { } sigma) => new Coordinate.Uncertain(v.Metres, sigma.Metres),
                (true, { } v, null) => new Coordinate.Fixed(v.Metres),
                _ => Coordinate.Unknown,
            };
        var (sketch, nominal) = (point.Sketch, point.Nominal);
        return new NetworkPoint(point.Id)
        {
            X = Known(sketch?.X),
            Y = Known(sketch?.Y),
            Z = Known(sketch?.Z),
            SketchXMetres = (sketch?.X ?? nominal?.X)?.Metres,
            SketchYMetres = (sketch?.Y ?? nominal?.Y)?.Metres,
            SketchZMetres = (sketch?.Z ?? nominal?.Z)?.Metres,
            DropSigmaMetres = point.DropSigma?.Metres ?? DropSpread.StandardDeviation,
        };
    }

    private Observation Observed(Reading reading)
    {
        var sigma = reading is Reading.Drop or Reading.Indirect ? 0 : SigmaMetres(reading);
        var tool = SharedTool(reading);
        return reading switch
        {
            Reading.Plan r => new Observation.PlanDistance(r.Id, r.From, r.To, ValueMetres(r), sigma, tool),
            Reading.Direct r => new Observation.DirectDistance(r.Id, r.From, r.To, ValueMetres(r), sigma, tool),
            Reading.Height r => new Observation.Height(r.Id, r.Point, ValueMetres(r), sigma, tool, r.IsAboveFloor ? _floor : null),
            Reading.Rise r => new Observation.Rise(r.Id, r.From, r.To, ValueMetres(r), sigma, tool),
            Reading.Offset r => new Observation.Offset(r.Id, r.Point, r.From, r.To, ValueMetres(r), sigma, tool),
            Reading.Drop { Distance: { } distance } r => new Observation.DropDistance(r.Id, r.Point, distance.Metres),
            Reading.Drop { Dx: { } dx, Dy: { } dy } r => new Observation.DropShift(r.Id, r.Point, dx.Metres, dy.Metres),
            Reading.Indirect r => IndirectDrops.Observed(r, reading.Sigma?.Metres, DropSigmaOf),
            _ => throw new UnreachableException(),
        };
    }

    // A mark that is a point of its own carries its own drop error; here only what the way adds.
    private double DropSigmaOf(string point) => _car.Frame.Point(point)?.DropSigma?.Metres ?? CommonPractice.DropMetres;

    private double SigmaMetres(Reading reading) =>
        (reading.Sigma ?? ToolOf(reading)?.Sigma)?.Metres ?? _spreads[(reading.Tool, IsBetweenMarks(reading))].Used.StandardDeviation;

    private string? SharedTool(Reading reading)
    {
        if (reading.Sigma is not null || (reading.Tool is null && reading is not (Reading.Plan or Reading.Direct)))
        {
            return null;
        }

        var id = reading.Tool ?? ToolHabits.UnnamedTape;
        return ToolHabits.Shared(id, ToolOf(reading)) is null ? null : id;
    }

    private IEnumerable<NetworkTool> SharedTools(IEnumerable<Observation> observations) =>
        observations
            .Select(o => o.Tool)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Select(id => ToolHabits.Shared(id, _tools.GetValueOrDefault(id))!);
}
