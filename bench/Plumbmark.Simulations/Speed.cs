using System.Diagnostics;
using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Simulations;

/// <summary>How long one fit takes, warmed: points with covariance, residuals, redundancy numbers.</summary>
internal static class Speed
{
    public static void Run(TextWriter output)
    {
        output.WriteLine("network                                   unknowns  readings steps   best ms median ms    cpu ms");
        Time(output, "60 points in space, 5 mm sketch", Space(30, 2.6, 400, 1), 60);
        Time(output, "60 points, plan and heights", PlanAndHeights(30, 1.2, 1), 60);
        Time(output, "8 points, plan and heights", PlanAndHeights(4, 3, 2), 200);
        Time(output, "1000 points in space, 6000 readings", Hall(100, 10, 4), 3);
    }

    private static void Time(TextWriter output, string name, Network network, int times)
    {
        for (var i = 0; i < Math.Max(2, times); i++)
        {
            NetworkAdjustment.Solve(network);
        }

        var durations = new List<double>();
        var (unknowns, iterations) = (0, 0);
        var processor = Process.GetCurrentProcess().TotalProcessorTime;
        for (var i = 0; i < times; i++)
        {
            var watch = Stopwatch.StartNew();
            var fit = NetworkAdjustment.Solve(network).FitOrNull!;
            durations.Add(watch.Elapsed.TotalMilliseconds);
            (unknowns, iterations) = (fit.Covariance.Count, fit.Summary.Iterations.Count);
        }

        durations.Sort();
        var each = (Process.GetCurrentProcess().TotalProcessorTime - processor).TotalMilliseconds / times;
        output.WriteLine(
            $"{name, -42}{unknowns, 8}{network.Observations.Count, 10}{iterations, 6}{durations[0], 10:F2}{durations[times / 2], 10:F2}{each, 10:F2}"
        );
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

    // A hall of marks half a metre apart, each measured directly to its nearest neighbours on all sides, and every height.
    private static Network Hall(int rows, int columns, int seed)
    {
        var random = new Random(seed);
        var spots = (
            from i in Enumerable.Range(0, rows)
            from j in Enumerable.Range(0, columns)
            select new Spot($"{i}/{j}", 0.5 * i + 0.1 * random.NextDouble(), 0.5 * j + 0.1 * random.NextDouble(), 0.2 * random.NextDouble())
        ).ToList();
        var lengths =
            from a in Enumerable.Range(0, spots.Count)
            from b in Enumerable.Range(a + 1, Math.Min(3 * columns, spots.Count - a - 1))
            let d = Frame.Direct(spots[a], spots[b])
            orderby d
            select new DirectDistance($"d{a}-{b}", spots[a].Id, spots[b].Id, d + 0.0008 * Frame.Normal(random), 0.0008);
        var heights = spots.Select((p, i) => new Height($"h{i}", p.Id, p.Z + 0.0008 * Frame.Normal(random), 0.0008));
        return new Network(Points(spots, random), [.. heights, .. lengths.Take(5000)]);
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
