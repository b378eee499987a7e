using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Simulations;

/// <summary>How often the stated 95 % intervals hold the truth, over random frames of several shapes.</summary>
/// <remarks>
/// A frame without a datum has no true coordinates, only true distances and height differences; those are counted: every pair of points, value ± 1.96 u.
/// </remarks>
internal static class CoverageSimulation
{
    private const int FramesEach = 2000;
    private const double Sigma = 0.0008;
    private const double DropSigma = 0.0005;

    public static void Run(TextWriter output)
    {
        output.WriteLine(
            $"{FramesEach} random frames in each row: share of true distances between points inside value ± 1.96 u, in per cent."
        );
        output.WriteLine(
            "scale, zero: the tape's true errors are drawn from its class II prior and unknown to the fit; drops: plumb error of 0.5 mm."
        );
        output.WriteLine();
        output.WriteLine($"{"frame", -44}{"lengths", 9}{"pair %", 9}{"height %", 10}{"mean vPv/f", 12}{"skipped", 9}");
        foreach (var (shape, seed) in new[] { ("ladder", 1), ("cross", 2), ("perimeter", 3), ("scatter", 4) })
        {
            Row(output, shape, seed, "tape known, no drop error", scale: false, drops: 0);
            Row(output, shape, seed, "tape known, one drop", scale: false, drops: 1);
            Row(output, shape, seed, "tape unknown, one drop", scale: true, drops: 1);
            Row(output, shape, seed, "tape unknown, three drops", scale: true, drops: 3);
            Row(output, shape, seed, "tape unknown, plan and direct mixed", scale: true, drops: 1, isMixed: true);
        }
    }

    private static void Row(TextWriter output, string shape, int seed, string name, bool scale, int drops, bool isMixed = false)
    {
        var skipped = 0;
        var (inside, pairs, heightsInside, heights, factor, lengths) = (0L, 0L, 0L, 0L, 0.0, 0L);
        for (var f = 0; f < FramesEach; f++)
        {
            var random = new Random(100_000 * seed + f);
            var spots = Shape(shape, random);
            var network = Measure(spots, random, scale, drops, isMixed);
            if (NetworkAdjustment.Solve(network) is not NetworkOutcome.Adjusted { Fit: var fit } || fit.Covariance.Count < 3 * spots.Count)
            {
                // A point without lengths has no place to be right or wrong about.
                skipped++;
                continue;
            }

            lengths += network.Observations.Count(o => o is PlanDistance or DirectDistance);
            factor += fit.VarianceFactor ?? 1;
            var c = fit.Covariance;
            for (var i = 0; i < spots.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    var (a, b) = (spots[i], spots[j]);
                    int[] at = [.. new[] { a, b }.SelectMany(s => new[] { Axis.X, Axis.Y, Axis.Z }.Select(x => c.IndexOf(s.Id, x)!.Value))];
                    var (dx, dy) = (c.ValuesMetres[at[3]] - c.ValuesMetres[at[0]], c.ValuesMetres[at[4]] - c.ValuesMetres[at[1]]);
                    var d = double.Hypot(dx, dy);
                    double[] g = [-dx / d, -dy / d, 0, dx / d, dy / d, 0];
                    inside += Math.Abs(d - Frame.Plan(a, b)) <= 1.959964 * Deviation(c, at, g) ? 1 : 0;
                    pairs++;
                    var rise = c.ValuesMetres[at[5]] - c.ValuesMetres[at[2]];
                    heightsInside += Math.Abs(rise - (b.Z - a.Z)) <= 1.959964 * Deviation(c, at, [0, 0, -1, 0, 0, 1]) ? 1 : 0;
                    heights++;
                }
            }
        }

        output.WriteLine(
            $"{shape + ": " + name, -44}{lengths / (double)FramesEach, 9:F1}{100.0 * inside / pairs, 9:F2}{100.0 * heightsInside / heights, 10:F2}{factor / (FramesEach - skipped), 12:F3}{skipped, 9}"
        );
    }

    private static double Deviation(NetworkCovariance c, int[] at, double[] g)
    {
        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
        {
            for (var j = 0; j < at.Length; j++)
            {
                sum += g[i] is 0 || g[j] is 0 ? 0 : g[i] * g[j] * c[at[i], at[j]];
            }
        }

        return Math.Sqrt(sum);
    }

    private static List<Spot> Shape(string shape, Random random)
    {
        double Any(double size) => size * (random.NextDouble() - 0.5);
        Spot At(int i, double x, double y) => new($"P{i}", x + Any(0.1), y + Any(0.1), 0.3 + Any(0.4));
        return shape switch
        {
            "ladder" => [.. Enumerable.Range(0, 10).Select(i => At(i, 2.4 * (0.5 - i / 2 / 4.0), (i % 2 == 0 ? 1 : -1) * 0.42))],
            "cross" =>
            [
                .. Enumerable
                    .Range(0, 9)
                    .Select(i =>
                        At(i, 1.2 * Math.Cos(0.7854 * i) * (i % 2 == 0 ? 1 : 0.5), 0.5 * Math.Sin(0.7854 * i + 0.1) * (i == 8 ? 0 : 1))
                    ),
            ],
            "perimeter" => [.. Enumerable.Range(0, 12).Select(i => At(i, 1.3 * Math.Cos(0.5236 * i), 0.6 * Math.Sin(0.5236 * i)))],
            _ => [.. Enumerable.Range(0, 7 + random.Next(6)).Select(i => At(i, Any(2.6), Any(1.2)))],
        };
    }

    private static Network Measure(List<Spot> spots, Random random, bool isTapeUnknown, int drops, bool isMixed)
    {
        double Noise(double sigma) => sigma * Frame.Normal(random);
        var (scaleSigma, zeroSigma) = isTapeUnknown ? (2e-4 / Math.Sqrt(3), 3e-4 / Math.Sqrt(3)) : (0, 0);
        var (scale, zero) = (Noise(scaleSigma), Noise(zeroSigma));
        var dropSigma = drops > 0 ? DropSigma : 0;
        var marks = spots.Select(p => p with { X = p.X + Noise(dropSigma), Y = p.Y + Noise(dropSigma) }).ToList();
        var readings = new List<Observation>();
        for (var i = 0; i < spots.Count; i++)
        {
            readings.Add(new Height($"h{i}", spots[i].Id, spots[i].Z + Noise(Sigma), Sigma));
            for (var k = 1; k < drops; k++)
            {
                readings.Add(
                    new DropShift(
                        $"drop {i} {k}",
                        spots[i].Id,
                        spots[i].X + Noise(dropSigma) - marks[i].X,
                        spots[i].Y + Noise(dropSigma) - marks[i].Y
                    )
                );
            }

            for (var j = 0; j < i; j++)
            {
                if (random.NextDouble() < 0.8)
                {
                    var plan = (1 + scale) * Frame.Plan(marks[i], marks[j]) + zero + Noise(Sigma);
                    readings.Add(new PlanDistance($"p{i}-{j}", spots[i].Id, spots[j].Id, plan, Sigma, "tape"));
                }

                if (isMixed && random.NextDouble() < 0.4)
                {
                    var direct = (1 + scale) * Frame.Direct(spots[i], spots[j]) + zero + Noise(Sigma);
                    readings.Add(new DirectDistance($"d{i}-{j}", spots[i].Id, spots[j].Id, direct, Sigma, "tape"));
                }
            }
        }

        return new Network(
            spots.Select(p => new NetworkPoint(p.Id)
            {
                SketchXMetres = p.X + Noise(0.01),
                SketchYMetres = p.Y + Noise(0.01),
                SketchZMetres = p.Z,
                DropSigmaMetres = dropSigma,
            }),
            readings,
            [new NetworkTool("tape") { ScaleSigma = scaleSigma, ZeroSigmaMetres = zeroSigma }]
        );
    }
}
