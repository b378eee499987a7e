using System.Diagnostics;
using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Simulations;

/// <summary>How long one fit takes, warmed: points with covariance, residuals, redundancy numbers.</summary>
internal static class Speed
{
    public static void Run(TextWriter output)
    {
        output.WriteLine("network                                   unknowns  readings   median ms");
        Time(output, "60 points in space, 5 mm sketch", Space(30, 2.6, 400, 1), 60);
        Time(output, "60 points, plan and heights", PlanAndHeights(30, 1.2, 1), 60);
        Time(output, "8 points, plan and heights", PlanAndHeights(4, 3, 2), 200);
        Time(output, "1000 points in space, 6000 readings", Space(500, 43, 6000, 3), 3);
    }

    private static void Time(TextWriter output, string name, Network network, int times)
    {
        for (var i = 0; i < Math.Max(2, times); i++)
        {
            NetworkAdjustment.Solve(network);
        }

        var durations = new List<double>();
        var unknowns = 0;
        for (var i = 0; i < times; i++)
        {
            var watch = Stopwatch.StartNew();
            var fit = NetworkAdjustment.Solve(network).FitOrNull!;
            durations.Add(watch.Elapsed.TotalMilliseconds);
            unknowns = fit.Covariance.Count;
        }

        durations.Sort();
        output.WriteLine($"{name, -42}{unknowns, 8}{network.Observations.Count, 10}{durations[times / 2], 12:F2}");
    }

    private static IEnumerable<NetworkPoint> Points(IEnumerable<Spot> spots, Random random) =>
        spots.Select(p => new NetworkPoint(p.Id)
        {
            SketchXMetres = p.X + 0.005 * Frame.Normal(random),
            SketchYMetres = p.Y + 0.005 * Frame.Normal(random),
            SketchZMetres = p.Z + 0.005 * Frame.Normal(random),
        });

    // Direct lengths between near points, shortest first, and a height of each point.
    private static Network Space(int pairs, double length, int readings, int seed)
    {
        var random = new Random(seed);
        var spots = Frame.Ladder(pairs, random, length, 0.4);
        var near =
            from i in Enumerable.Range(0, spots.Count)
            from j in Enumerable.Range(i + 1, Math.Min(60, spots.Count - i - 1))
            orderby Frame.Direct(spots[i], spots[j])
            select new DirectDistance(
                $"d{i}-{j}",
                spots[i].Id,
                spots[j].Id,
                Frame.Direct(spots[i], spots[j]) + 0.0008 * Frame.Normal(random),
                0.0008
            );
        var heights = spots.Select((p, i) => new Height($"h{i}", p.Id, p.Z + 0.0008 * Frame.Normal(random), 0.0008));
        return new Network(Points(spots, random), [.. heights, .. near.Take(readings - spots.Count)]);
    }

    private static Network PlanAndHeights(int pairs, double reach, int seed)
    {
        var random = new Random(seed);
        var spots = Frame.Ladder(pairs, random, 2.6, 0.4);
        var lengths =
            from i in Enumerable.Range(0, spots.Count)
            from j in Enumerable.Range(i + 1, spots.Count - i - 1)
            where Frame.Plan(spots[i], spots[j]) < reach
            select new PlanDistance(
                $"p{i}-{j}",
                spots[i].Id,
                spots[j].Id,
                Frame.Plan(spots[i], spots[j]) + 0.0008 * Frame.Normal(random),
                0.0008
            );
        var heights = spots.Select((p, i) => new Height($"h{i}", p.Id, p.Z + 0.0008 * Frame.Normal(random), 0.0008));
        return new Network(Points(spots, random), [.. heights, .. lengths]);
    }
}
