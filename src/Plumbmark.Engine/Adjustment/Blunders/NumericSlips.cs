using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>The slips that can be told from a reading's number and points alone, without the text as typed.</summary>
public static class NumericSlips
{
    private const double InchMetres = 0.0254;

    // An inch slipped on a metric tape, or a centimetre on an inch tape: only with a tape that shows both.
    private const double OtherUnit = 0.1;

    private static readonly (BlunderKind Kind, double Metres, LengthUnit Unit)[] s_steps =
    [
        (BlunderKind.OneInch, InchMetres, LengthUnit.Inch),
        (BlunderKind.TenInches, 10 * InchMetres, LengthUnit.Inch),
        (BlunderKind.OneFoot, 12 * InchMetres, LengthUnit.Inch),
        (BlunderKind.HundredMillimetres, 0.1, LengthUnit.Millimetre),
        (BlunderKind.TenMillimetres, 0.01, LengthUnit.Millimetre),
    ];

    /// <summary>What the reading may have been meant to be.</summary>
    /// <param name="reading">The reading as entered.</param>
    /// <param name="network">Its network: which points mirror each other, which heights are known.</param>
    /// <param name="hints">Units and hole diameters, where known.</param>
    public static IEnumerable<Alternative> Of(Observation reading, Network network, BlunderHints hints) =>
        Of(reading, Partners(network), hints);

    /// <summary>The same for many readings of one network.</summary>
    internal static List<Alternative> Of(Observation reading, Dictionary<string, string> partners, BlunderHints hints)
    {
        var slips = new List<Alternative>(16);
        AddSteps(slips, reading, hints.TypedIn.TryGetValue(reading.Id, out var typed) ? typed : null);
        if (hints.HoleDiametersMetres.Count > 0)
        {
            var holes = NetworkCheck
                .PointsOf(reading)
                .Where(hints.HoleDiametersMetres.ContainsKey)
                .Select(p => hints.HoleDiametersMetres[p]);
            slips.AddRange(Holes(reading, holes));
        }

        slips.AddRange(Signs(reading));
        slips.AddRange(PlanAndDirect(reading));
        slips.AddRange(Sides(reading, partners));
        return slips;
    }

    /// <summary>For each point that has one, its counterpart on the other side.</summary>
    internal static Dictionary<string, string> Partners(Network network)
    {
        var partners = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var pair in network.MirrorPairs)
        {
            partners[pair.Left] = pair.Right;
            partners[pair.Right] = pair.Left;
        }

        return partners;
    }

    private static void AddSteps(List<Alternative> slips, Observation reading, LengthUnit? unit)
    {
        var mayBeNegative = reading is Observation.Height or Observation.Rise or Observation.Offset;
        if (!mayBeNegative && reading is not (Observation.PlanDistance or Observation.DirectDistance))
        {
            return;
        }

        foreach (var step in s_steps)
        {
            var weight = unit is null || unit == step.Unit ? 1 : OtherUnit;
            for (var sign = 1; sign >= -1; sign -= 2)
            {
                var value = reading.ValueMetres - sign * step.Metres;
                if (value > 0 || mayBeNegative)
                {
                    slips.Add(new Alternative(step.Kind, reading with { ValueMetres = value }, weight));
                }
            }
        }
    }

    // Edge instead of centre at one end, nearer or farther.
    private static IEnumerable<Alternative> Holes(Observation reading, IEnumerable<double> diameters) =>
        reading is Observation.PlanDistance or Observation.DirectDistance
            ? from diameter in diameters.Where(d => d > 0).Distinct()
            from sign in (int[])[1, -1]
            select new Alternative(BlunderKind.HalfHole, reading with { ValueMetres = reading.ValueMetres - sign * diameter / 2 })
            : [];

    private static IEnumerable<Alternative> Signs(Observation reading) =>
        reading switch
        {
            Observation.Offset or Observation.Rise => [new(BlunderKind.TwiceOffset, reading with { ValueMetres = -reading.ValueMetres })],
            Observation.OffsetDrop o => [new(BlunderKind.TwiceOffset, o with { DxMetres = -o.DxMetres, DyMetres = -o.DyMetres })],
            Observation.HoleEdgeDrop o => [new(BlunderKind.TwiceOffset, o with { DirectionRadians = o.DirectionRadians + Math.PI })],
            _ => [],
        };

    private static IEnumerable<Alternative> PlanAndDirect(Observation reading) =>
        reading switch
        {
            Observation.PlanDistance o =>
            [
                new(
                    BlunderKind.PlanDirectConfused,
                    new Observation.DirectDistance(o.Id, o.From, o.To, o.ValueMetres, o.SigmaMetres, o.Tool)
                ),
            ],
            Observation.DirectDistance o =>
            [
                new(BlunderKind.PlanDirectConfused, new Observation.PlanDistance(o.Id, o.From, o.To, o.ValueMetres, o.SigmaMetres, o.Tool)),
            ],
            _ => [],
        };

    /// <summary>What a reading may have been between if left and right were exchanged at one end or at both.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="network">The network whose mirror pairs say what is opposite to what.</param>
    public static IEnumerable<Alternative> SidesOf(Observation reading, Network network)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(network);
        return Sides(reading, Partners(network));
    }

    private static IEnumerable<Alternative> Sides(Observation reading, Dictionary<string, string> partners)
    {
        if (partners.Count == 0)
        {
            return [];
        }

        string Other(string point) => partners.GetValueOrDefault(point, point);
        IEnumerable<(string From, string To)> Ends(string from, string to) =>
            ((IEnumerable<(string From, string To)>)[(Other(from), to), (from, Other(to)), (Other(from), Other(to))])
                .Where(e => e.From != e.To && e != (from, to) && e != (to, from))
                .Distinct();

        return reading switch
        {
            Observation.PlanDistance o => Ends(o.From, o.To)
                .Select(e => new Alternative(BlunderKind.SidesSwapped, o with { From = e.From, To = e.To })),
            Observation.DirectDistance o => Ends(o.From, o.To)
                .Select(e => new Alternative(BlunderKind.SidesSwapped, o with { From = e.From, To = e.To })),
            Observation.Rise o => Ends(o.From, o.To)
                .Select(e => new Alternative(BlunderKind.SidesSwapped, o with { From = e.From, To = e.To })),
            Observation.Height o when Other(o.Point) != o.Point => [new(BlunderKind.SidesSwapped, o with { Point = Other(o.Point) })],
            _ => [],
        };
    }
}
