using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Invented frames with pairs of points along two rails, and readings of them made by a seeded generator.</summary>
internal static class Frames
{
    public sealed record Truth(string Id, double X, double Y, double Z);

    /// <summary>Pairs A.L, A.R, B.L, … from front to rear, a little irregular so that nothing is degenerate.</summary>
    public static List<Truth> Ladder(int pairs, Random random, double length = 2.5, double halfWidth = 0.4)
    {
        var points = new List<Truth>();
        for (var i = 0; i < pairs; i++)
        {
            var x = length * (0.5 - (double)i / Math.Max(1, pairs - 1));
            foreach (var (side, sign) in ((string, int)[])[("L", 1), ("R", -1)])
            {
                points.Add(
                    new(
                        $"{Name(i)}.{side}",
                        x + 0.02 * (random.NextDouble() - 0.5),
                        sign * halfWidth * (1 + 0.3 * Math.Sin(i)) + 0.02 * (random.NextDouble() - 0.5),
                        0.3 + 0.1 * random.NextDouble()
                    )
                );
            }
        }

        return points;
    }

    public static string Name(int i) => i < 26 ? ((char)('A' + i)).ToString() : Name(i / 26 - 1) + (char)('A' + i % 26);

    /// <summary>Plan lengths between all points at most a reach apart.</summary>
    public static IEnumerable<PlanDistance> PlanLengths(IReadOnlyList<Truth> truth, double sigma, double reach, Random? noise = null) =>
        from i in Enumerable.Range(0, truth.Count)
        from j in Enumerable.Range(i + 1, truth.Count - i - 1)
        let d = double.Hypot(truth[j].X - truth[i].X, truth[j].Y - truth[i].Y)
        where d <= reach
        select new PlanDistance($"p{i}-{j}", truth[i].Id, truth[j].Id, d + sigma * Normal(noise), sigma);

    public static IEnumerable<DirectDistance> DirectLengths(IReadOnlyList<Truth> truth, double sigma, double reach, Random? noise = null) =>
        from i in Enumerable.Range(0, truth.Count)
        from j in Enumerable.Range(i + 1, truth.Count - i - 1)
        let d = Math.Sqrt(
            Math.Pow(truth[j].X - truth[i].X, 2) + Math.Pow(truth[j].Y - truth[i].Y, 2) + Math.Pow(truth[j].Z - truth[i].Z, 2)
        )
        where d <= reach
        select new DirectDistance($"d{i}-{j}", truth[i].Id, truth[j].Id, d + sigma * Normal(noise), sigma);

    public static IEnumerable<Height> Heights(IReadOnlyList<Truth> truth, double sigma, Random? noise = null) =>
        truth.Select((p, i) => new Height($"h{i}", p.Id, p.Z + sigma * Normal(noise), sigma));

    public static IEnumerable<NetworkPoint> Sketched(
        IEnumerable<Truth> truth,
        double rough = 0,
        Random? random = null,
        double dropSigma = 0
    ) =>
        truth.Select(p => new NetworkPoint(p.Id)
        {
            SketchXMetres = p.X + rough * Normal(random),
            SketchYMetres = p.Y + rough * Normal(random),
            SketchZMetres = p.Z,
            DropSigmaMetres = dropSigma,
        });

    public static IEnumerable<NetworkPoint> Unsketched(IEnumerable<Truth> truth) => truth.Select(p => new NetworkPoint(p.Id));

    public static IEnumerable<MirrorPair> Pairs(IEnumerable<Truth> truth) =>
        truth.Where(p => p.Id.EndsWith(".L", StringComparison.Ordinal)).Select(p => new MirrorPair(p.Id, p.Id[..^1] + "R"));

    /// <summary>Largest difference between a fitted and a true distance, over all pairs: free of any datum.</summary>
    public static double WorstDistance(NetworkFit fit, IReadOnlyList<Truth> truth)
    {
        var worst = 0.0;
        for (var i = 0; i < truth.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (fit.Point(truth[i].Id), fit.Point(truth[j].Id));
                var fitted = double.Hypot(a.XMetres!.Value - b.XMetres!.Value, a.YMetres!.Value - b.YMetres!.Value);
                var actual = double.Hypot(truth[i].X - truth[j].X, truth[i].Y - truth[j].Y);
                worst = Math.Max(worst, Math.Abs(fitted - actual));
            }
        }

        return worst;
    }

    /// <summary>A standard normal number; zero without a generator.</summary>
    public static double Normal(Random? random) =>
        random is null ? 0 : Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
