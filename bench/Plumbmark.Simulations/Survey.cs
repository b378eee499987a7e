using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Lengths;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Simulations;

/// <summary>An invented frame, measured by an invented owner with a tape, a level and a plumb bob: what he reads is rounded and typed.</summary>
internal sealed class Survey
{
    private const double End = 0.0005;
    public const double Drop = 0.0005;
    private readonly Random _random;
    private readonly bool _isInches;
    private readonly Dictionary<string, Spot> _marks;

    public Survey(Random random, int lengthsEach = 8, bool hasDirect = false, int drops = 1, bool? isInches = null)
    {
        _random = random;
        _isInches = isInches ?? random.Next(2) == 0;
        Spots = Frame.Ladder(4 + random.Next(5), random, 1.8 + random.NextDouble(), 0.35 + 0.15 * random.NextDouble());
        Division = _isInches ? 0.0254 / 16 : 0.001;
        Scale = 2e-4 / Math.Sqrt(3) * Frame.Normal(random);
        Zero = 3e-4 / Math.Sqrt(3) * Frame.Normal(random);
        _marks = Spots.ToDictionary(
            p => p.Id,
            p => p with { X = p.X + Drop * Frame.Normal(random), Y = p.Y + Drop * Frame.Normal(random) }
        );
        foreach (var (a, b) in Chosen(lengthsEach))
        {
            Add(
                $"p {a.Id} {b.Id}",
                Frame.Plan(_marks[a.Id], _marks[b.Id]),
                isLength: true,
                (id, v, s) => new PlanDistance(id, a.Id, b.Id, v, s, "tape")
            );
            if (hasDirect)
            {
                Add($"d {a.Id} {b.Id}", Frame.Direct(a, b), isLength: true, (id, v, s) => new DirectDistance(id, a.Id, b.Id, v, s, "tape"));
            }
        }

        foreach (var p in Spots)
        {
            Add($"h {p.Id}", p.Z, isLength: false, (id, v, s) => new Height(id, p.Id, v, s));
            for (var k = 1; k < drops; k++)
            {
                var mark = _marks[p.Id];
                Readings.Add(
                    new DropShift(
                        $"drop {k} {p.Id}",
                        p.Id,
                        p.X + Drop * Frame.Normal(random) - mark.X,
                        p.Y + Drop * Frame.Normal(random) - mark.Y
                    )
                );
            }
        }
    }

    public List<Spot> Spots { get; }

    public double Division { get; }

    public double Scale { get; }

    public double Zero { get; }

    public List<Observation> Readings { get; } = [];

    public Dictionary<string, Length> Typed { get; } = new(StringComparer.Ordinal);

    public IEnumerable<MirrorPair> Mirrors => Spots.Where(p => p.Id.EndsWith('L')).Select(p => new MirrorPair(p.Id, p.Id[..^1] + "R"));

    public Network Network() =>
        new(
            Spots.Select(p => new NetworkPoint(p.Id)
            {
                SketchXMetres = p.X + 0.01 * Frame.Normal(_random),
                SketchYMetres = p.Y + 0.01 * Frame.Normal(_random),
                SketchZMetres = p.Z,
                DropSigmaMetres = Drop,
            }),
            Readings,
            [new NetworkTool("tape") { ZeroSigmaMetres = 3e-4 / Math.Sqrt(3), ScaleSigma = 2e-4 / Math.Sqrt(3) }],
            Mirrors
        );

    /// <summary>What the texts tell about slips.</summary>
    public BlunderHints Hints() =>
        new()
        {
            TypedIn = Typed.ToDictionary(t => t.Key, t => t.Value.Unit, StringComparer.Ordinal),
            Meanings =
            [
                .. from reading in Readings
                where Typed.ContainsKey(reading.Id)
                from slip in LengthSlips.Of(Typed[reading.Id])
                select new Alternative(slip.Kind, reading with { ValueMetres = slip.Believed.Metres }),
            ],
        };

    /// <summary>Enters another text in place of a reading's.</summary>
    public void Enter(string id, Length typed)
    {
        Typed[id] = typed;
        var index = Readings.FindIndex(r => r.Id == id);
        Readings[index] = Readings[index] with { ValueMetres = typed.Metres };
    }

    /// <summary>What the owner would have read between two other points, typed.</summary>
    public Length ReadPlan(string from, string to) => Read(Frame.Plan(_marks[from], _marks[to]), isLength: true);

    /// <summary>What the owner would have read from point to point, typed.</summary>
    public Length ReadDirect(string from, string to) =>
        Read(Frame.Direct(Spots.Single(s => s.Id == from), Spots.Single(s => s.Id == to)), isLength: true);

    /// <summary>Spoils the first drop of a point and takes all its plan lengths from the spoilt mark.</summary>
    public void SpoilDrop(string point, double dx, double dy)
    {
        var old = _marks[point];
        _marks[point] = old with { X = old.X + dx, Y = old.Y + dy };
        for (var i = 0; i < Readings.Count; i++)
        {
            Readings[i] = Readings[i] switch
            {
                PlanDistance o when o.From == point || o.To == point => Retyped(o),
                DropShift o when o.Point == point => o with { DxMetres = o.DxMetres - dx, DyMetres = o.DyMetres - dy },
                var o => o,
            };
        }
    }

    /// <summary>By how much each plan length would change if a mark lay elsewhere, metres; no noise in it.</summary>
    public Dictionary<string, double> ChangesBy(string point, double dx, double dy)
    {
        var moved = _marks[point] with { X = _marks[point].X + dx, Y = _marks[point].Y + dy };
        Spot At(string id) => id == point ? moved : _marks[id];
        return Readings
            .OfType<PlanDistance>()
            .Where(o => o.From == point || o.To == point)
            .ToDictionary(
                o => o.Id,
                o => Frame.Plan(At(o.From), At(o.To)) - Frame.Plan(_marks[o.From], _marks[o.To]),
                StringComparer.Ordinal
            );
    }

    private PlanDistance Retyped(PlanDistance o)
    {
        Typed[o.Id] = ReadPlan(o.From, o.To);
        return o with { ValueMetres = Typed[o.Id].Metres };
    }

    private IEnumerable<(Spot A, Spot B)> Pairs() =>
        from i in Enumerable.Range(0, Spots.Count)
        from j in Enumerable.Range(i + 1, Spots.Count - i - 1)
        select (Spots[i], Spots[j]);

    // Each point to about so many others, the nearer the likelier, never to fewer than half as many.
    private List<(Spot A, Spot B)> Chosen(int lengthsEach)
    {
        var count = Spots.ToDictionary(p => p.Id, _ => 0);
        var chosen = new List<(Spot A, Spot B)>();
        foreach (var (a, b) in Pairs().OrderBy(p => Frame.Plan(p.A, p.B) * (0.6 + 0.8 * _random.NextDouble())))
        {
            if (count[a.Id] < lengthsEach && count[b.Id] < lengthsEach)
            {
                chosen.Add((a, b));
                count[a.Id]++;
                count[b.Id]++;
            }
        }

        return [.. chosen.OrderBy(_ => _random.Next())];
    }

    private void Add(string id, double length, bool isLength, Func<string, double, double, Observation> make)
    {
        var typed = Read(length, isLength);
        var sigma = Math.Sqrt(Division * Division / 12 + (isLength ? 2 : 1) * End * End);
        Typed[id] = typed;
        Readings.Add(make(id, typed.Metres, sigma));
    }

    private Length Read(double length, bool isLength)
    {
        var shown = isLength
            ? (1 + Scale) * length + Zero + Math.Sqrt(2) * End * Frame.Normal(_random)
            : length + End * Frame.Normal(_random);
        var divisions = (long)Math.Round(shown / Division);
        if (!_isInches)
        {
            return Length.FromNumber(divisions, LengthUnit.Millimetre);
        }

        var (whole, part) = (divisions / 16, divisions % 16);
        var common = part == 0 ? 1 : (long)System.Numerics.BigInteger.GreatestCommonDivisor(part, 16);
        var text = part == 0 ? $"{whole}" : $"{whole} {part / common}/{16 / common}";
        return LengthText.Read(text, LengthUnit.Inch).Match(l => l, _ => throw new InvalidOperationException(text));
    }
}
