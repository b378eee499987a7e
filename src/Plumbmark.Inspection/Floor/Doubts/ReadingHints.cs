using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Doubts;

/// <summary>What the readings as typed tell about slips: digits, fractions, units, a start graduation that was not one; and what is known of holes.</summary>
internal static class ReadingHints
{
    /// <summary>The hints for a car's network.</summary>
    public static BlunderHints Of(CarFile car, Network network)
    {
        var observed = network.Observations.ToDictionary(o => o.Id, StringComparer.Ordinal);
        var typed = car
            .StandingReadings.Select(r => (Reading: r, Typed: r.Shown))
            .Where(r => r.Typed is not null && observed.ContainsKey(r.Reading.Id))
            .ToList();
        return new BlunderHints
        {
            TypedIn = typed.ToDictionary(r => r.Reading.Id, r => r.Typed!.Value.Unit, StringComparer.Ordinal),
            HoleDiametersMetres = Holes(car),
            Meanings =
            [
                .. typed.SelectMany(r => Meanings(r.Reading, r.Typed!.Value, observed[r.Reading.Id])),
                .. OtherSides(car.Frame.Points, network),
            ],
        };
    }

    // Left and right by name are as easily exchanged as those whose mirror is declared, which the search knows of itself.
    private static IEnumerable<Alternative> OtherSides(IReadOnlyList<FramePoint> points, Network network)
    {
        var declared = network.MirrorPairs.SelectMany(p => new[] { p.Left, p.Right }).ToHashSet(StringComparer.Ordinal);
        var lefts = points.Select(p => p.Id).Where(id => id.EndsWith(".L", StringComparison.Ordinal) && !declared.Contains(id));
        var byName = lefts
            .Select(l => new MirrorPair(l, $"{l[..^2]}.R"))
            .Where(p => !declared.Contains(p.Right) && points.Any(q => q.Id == p.Right));
        var named = new Network(network.Points, network.Observations, network.Tools, byName);
        return named.MirrorPairs.Count == 0 ? [] : named.Observations.SelectMany(o => NumericSlips.SidesOf(o, named));
    }

    // From the point itself, else from a drop that was taken from the hole's edge on purpose.
    private static Dictionary<string, double> Holes(CarFile car) =>
        car
            .Frame.Points.Where(p => p.Hole is not null)
            .Select(p => (p.Id, Diameter: p.Hole!.Value))
            .Concat(
                from reading in car.StandingReadings.OfType<Reading.Indirect>()
                let edge = reading.Way as IndirectWay.HoleEdge
                where edge is not null
                select (Id: reading.Point, edge.Diameter)
            )
            .DistinctBy(h => h.Id)
            .ToDictionary(h => h.Id, h => h.Diameter.Metres, StringComparer.Ordinal);

    private static IEnumerable<Alternative> Meanings(Reading reading, Length typed, Observation observed)
    {
        var start = reading.StartAt ?? Length.Zero;
        if (start > Length.Zero)
        {
            yield return new Alternative(BlunderKind.StartGraduation, observed with { ValueMetres = typed.Metres });
        }

        foreach (var (kind, believed) in LengthSlips.Of(typed))
        {
            var meant = (believed - start).Metres;
            if (meant > 0 || reading is not (Reading.Plan or Reading.Direct))
            {
                yield return new Alternative(kind, observed with { ValueMetres = meant });
            }
        }
    }
}
