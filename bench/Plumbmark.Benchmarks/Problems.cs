using Plumbmark.Engine;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Linkage;
using Plumbmark.Testing;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Benchmarks;

/// <summary>The problems that are timed: invented, the same every time.</summary>
internal static class Problems
{
    public const double Sigma = 0.0008;

    private sealed record Spot(string Id, double X, double Y, double Z);

    /// <summary>A frame in space: pairs of points along two rails, each height, and direct lengths across it, long and short.</summary>
    /// <param name="points">How many points.</param>
    /// <param name="readings">How many readings.</param>
    /// <param name="isFixed">Whether the first pair holds the frame in plan; else inner constraints do.</param>
    public static Network Frame(int points, int readings, bool isFixed = false)
    {
        var random = new Random(points);
        var spots = Enumerable
            .Range(0, points)
            .Select(i => new Spot(
                $"P{i}",
                2.6 * (0.5 - i / 2 * 2.0 / points) + 0.02 * Any(random),
                (i % 2 == 0 ? 0.4 : -0.4) * (1 + 0.3 * Math.Sin(i / 2)) + 0.02 * Any(random),
                0.3 + 0.25 * random.NextDouble()
            ))
            .ToList();
        return Measured(spots, spots.Count, readings, isFixed, random, isNearest: false);
    }

    /// <summary>A hall of a hundred by ten marks half a metre apart, each measured to its neighbours on all sides, and every height.</summary>
    public static Network Hall(int rows, int columns, int readings, bool isFixed = false)
    {
        var random = new Random(rows);
        var spots = (
            from i in Enumerable.Range(0, rows)
            from j in Enumerable.Range(0, columns)
            select new Spot($"{i}/{j}", 0.5 * i + 0.1 * random.NextDouble(), 0.5 * j + 0.1 * random.NextDouble(), 0.2 * random.NextDouble())
        ).ToList();
        return Measured(spots, 3 * columns, readings, isFixed, random, isNearest: true);
    }

    private static Network Measured(List<Spot> spots, int reach, int readings, bool isFixed, Random random, bool isNearest)
    {
        var lengths =
            from a in Enumerable.Range(0, spots.Count)
            from b in Enumerable.Range(a + 1, Math.Min(reach, spots.Count - a - 1))
            let d = Distance(spots[a], spots[b])
            orderby isNearest ? d : random.NextDouble()
            select new DirectDistance($"d{a}-{b}", spots[a].Id, spots[b].Id, d + Sigma * Normal(random), Sigma);
        var heights = spots.Select((p, i) => new Height($"h{i}", p.Id, p.Z + Sigma * Normal(random), Sigma));
        var points = spots.Select(
            (p, i) =>
                new NetworkPoint(p.Id)
                {
                    X = isFixed && i < 2 ? new Coordinate.Fixed(p.X) : Coordinate.Unknown,
                    Y = isFixed && i < 2 ? new Coordinate.Fixed(p.Y) : Coordinate.Unknown,
                    SketchXMetres = p.X + (isFixed && i < 2 ? 0 : 0.005 * Normal(random)),
                    SketchYMetres = p.Y + (isFixed && i < 2 ? 0 : 0.005 * Normal(random)),
                    SketchZMetres = p.Z + 0.005 * Normal(random),
                }
        );
        return new Network(points, [.. heights, .. lengths.Take(readings - spots.Count)]);
    }

    /// <summary>The same network with one length an inch too long.</summary>
    public static Network WithAnInch(Network network, int which) =>
        new(
            network.Points,
            network.Observations.Select((o, i) => i == which ? o with { ValueMetres = o.ValueMetres + 0.0254 } : o),
            network.Tools,
            network.MirrorPairs
        );

    /// <summary>Forty points with a few readings, and eight hundred more that could be taken.</summary>
    public static (NetworkDesign Design, List<Observation> Candidates) Plan()
    {
        var network = Frame(40, 100);
        var taken = network.Observations.Select(o => o.Id).ToHashSet(StringComparer.Ordinal);
        var candidates = Frame(40, 40 + 40 * 39 / 2).Observations.Where(o => !taken.Contains(o.Id)).Take(680).ToList();
        candidates.AddRange(
            network.Observations.Concat(candidates).Take(800 - candidates.Count).Select(o => o with { Id = o.Id + " again" }).ToList()
        );
        return (NetworkDesign.Of(network), candidates);
    }

    /// <summary>A surface plate's worth of points: a tilted plane with a little form error.</summary>
    public static Vector3[] Plate(int points)
    {
        var random = new Random(points);
        return
        [
            .. Enumerable
                .Range(0, points)
                .Select(_ =>
                {
                    var (x, y) = (2 * random.NextDouble(), random.NextDouble());
                    return new Vector3(x, y, 0.1 + 0.02 * x - 0.03 * y + 1e-4 * Math.Sin(3 * x + 2 * y) + 5e-5 * Any(random));
                }),
        ];
    }

    public static CornerPoints Corner => ReferenceWishbone.Points;

    /// <summary>A press job before its first bite, and the bite.</summary>
    public static (BiteBelief Belief, ObservedBite Bite) Press()
    {
        var range = new YieldRange(240e6, 360e6);
        var section = CrossSection.Rectangle(0.03, 0.012);
        var bend = new ThreePointBend(new MomentCurvature(section, new Steel(205e9, range.MiddlePascals, 0.004)), 0.2, 0.2);
        var prior = BitePrior.From(bend, range, 0.08, readAtPart: true);
        var model = new BiteModel(section, bend.Curve.Steel.YieldStrain, prior, new BiteNoise(0.1e-3, 0.1e-3));
        return (model.Start, new ObservedBite(bend.BiteForSet(0.5e-3)!.TravelMetres, 0, 0.5e-3));
    }

    private static double Distance(Spot a, Spot b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2) + Math.Pow(a.Z - b.Z, 2));

    private static double Any(Random random) => random.NextDouble() - 0.5;

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
