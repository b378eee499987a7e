using System.Diagnostics;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Bending;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Benchmarks;

/// <summary>Each goal with what was measured: warmed, in one process, minimum, median and maximum, and what one run allocates.</summary>
internal static class Goals
{
    public static void Run(TextWriter output)
    {
        output.WriteLine(
            $"{Environment.ProcessorCount} processors; times in ms, warmed; the machine does other work at the same time, so the minimum says what the code costs"
        );
        output.WriteLine($"{"", -62}{"goal", 8}{"min", 9}{"median", 9}{"max", 9}{"kB/run", 9}");
        var frame = Problems.Frame(60, 400);
        var last = frame.Observations[^1];
        var fit = NetworkAdjustment.Solve(frame).FitOrNull!;
        var less = NetworkAdjustment.Solve(frame.Without(last.Id)).FitOrNull!;
        var spoilt = NetworkAdjustment.Solve(Problems.WithAnInch(frame, 200)).FitOrNull!;
        Row(output, "60 points, 400 readings: places, covariance, redundancy", null, 200, () => NetworkAdjustment.Solve(frame));
        Row(output, "  every slip of every reading", null, 200, () => SingleSlips.Of(fit));
        Row(output, "  both", 5, 200, () => SingleSlips.Of(NetworkAdjustment.Solve(frame).FitOrNull!));
        Row(output, "  an inch in one length found and named, networks solved afresh", null, 50, () => BlunderSearch.Of(spoilt));
        Row(output, "one reading added to that frame", 0.5, 400, () => NetworkAdjustment.Add(less, last));
        Growth(output);
        var hall = Problems.Hall(100, 10, 6000);
        Row(output, "1,000 points, 6,000 readings", 3000, 7, () => NetworkAdjustment.Solve(hall));
        var (design, candidates) = Problems.Plan();
        Row(output, $"greedy plan: 30 of {candidates.Count} candidates on 40 points", 50, 15, () => Greedy.Choose(design, candidates, 30));
        var plate = Problems.Plate(1000);
        Row(output, "plane of 1,000 points, minimum zone", 10, 200, () => MinimumZone.Plane(plate));
        var (belief, bite) = Problems.Press();
        Row(
            output,
            "press log: one bite learnt and the next travel",
            1,
            200,
            () => NextTravel.From(belief.After(bite), 1e-3, hasSet: true)
        );
        var corner = Corner.Of(Problems.Corner);
        var car = DemoCar.File();
        Row(
            output,
            "readings to frame to angles: 100,000 cars drawn within the readings",
            2000,
            3,
            () => RoadInspection.Of(car, trials: 100_000)
        );
        const int Positions = 200_000;
        Row(
            output,
            $"wishbone: {Positions} positions on two cores (goal: a million in 1,000)",
            Positions / 1000.0,
            15,
            () => Positions2(corner, Positions)
        );
    }

    // How the time grows with a dense frame: the exponent between neighbouring rows; the aim is no more than 3.
    private static void Growth(TextWriter output)
    {
        var last = 0.0;
        foreach (var points in new[] { 30, 60, 120, 240 })
        {
            var network = Problems.Frame(points, points * 20 / 3);
            var median = Row(output, $"{points} points, {points * 20 / 3} readings", null, 30, () => NetworkAdjustment.Solve(network));
            if (last > 0)
            {
                output.WriteLine($"  grows with the points to the power of {Math.Log2(median / last):F2} (aim: at most 3)");
            }

            last = median;
        }
    }

    private static object Positions2(Corner corner, int positions)
    {
        var sums = new double[2];
        Parallel.For(
            0,
            2,
            t =>
            {
                var sum = 0.0;
                for (var i = t; i < positions; i += 2)
                {
                    corner.Solve(0.25 + 0.12 * i / positions, Problems.Corner.TrackRodInner, out var state);
                    sum += WheelAngles.Of(state).CamberRadians;
                }

                sums[t] = sum;
            }
        );
        return sums;
    }

    private static double Row(TextWriter output, string name, double? goalMs, int times, Func<object> run)
    {
        for (var i = 0; i < Math.Max(3, times); i++)
        {
            run();
        }

        var durations = new double[times];
        var before = GC.GetTotalAllocatedBytes(precise: true);
        for (var i = 0; i < times; i++)
        {
            var watch = Stopwatch.StartNew();
            run();
            durations[i] = watch.Elapsed.TotalMilliseconds;
        }

        var each = (GC.GetTotalAllocatedBytes(precise: true) - before) / times / 1024.0;
        Array.Sort(durations);
        output.WriteLine(
            $"{name, -62}{(goalMs is { } g ? $"{g:G4}" : ""), 8}{durations[0], 9:F3}{durations[times / 2], 9:F3}{durations[^1], 9:F3}{each, 9:F0}"
        );
        return durations[times / 2];
    }
}
