using CsCheck;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Whatever is handed over, there is an answer or an explanation: never NaN, never an exception, never without end.</summary>
public class NetworkFuzzLaws
{
    private static readonly double[] s_values = [0, 1e-6, 0.01, 0.5, 1, 1, 1.5, 2, 3, 1000, 5e6];
    private static readonly double[] s_sigmas = [1e-9, 1e-6, 1e-4, 1e-3, 1e-3, 1e-3, 0.1, 10, 1e6];
    private static readonly double[] s_places = [0, 0, 1, 1, 2, -1, 0.5, 1e-9, 3e6, 3e6 + 1];

    private static Network Nonsense(Random random)
    {
        T Any<T>(IReadOnlyList<T> list) => list[random.Next(list.Count)];
        Coordinate Known() =>
            random.Next(12) switch
            {
                0 => new Coordinate.Fixed(Any(s_places)),
                1 => new Coordinate.Uncertain(Any(s_places), Any(s_sigmas)),
                _ => Coordinate.Unknown,
            };
        double? Sketch() => random.Next(3) == 0 ? null : Any(s_places) + (random.Next(2) == 0 ? random.NextDouble() : 0);
        var points = Enumerable
            .Range(0, 2 + random.Next(6))
            .Select(i => new NetworkPoint($"P{i}")
            {
                X = Known(),
                Y = Known(),
                Z = Known(),
                SketchXMetres = Sketch(),
                SketchYMetres = Sketch(),
                SketchZMetres = Sketch(),
                DropSigmaMetres = random.Next(2) == 0 ? 0 : Any(s_sigmas),
            })
            .ToList();
        var readings = new List<Observation>();
        for (var k = random.Next(25); k >= 0; k--)
        {
            var p = points.OrderBy(_ => random.Next()).Select(q => q.Id).Concat(["P0", "P1", "P0"]).ToArray();
            var (v, s) = (Any(s_values) * (1 + 0.001 * random.NextDouble()), Any(s_sigmas));
            var (id, tool) = ($"r{k}", random.Next(3) == 0 ? "tape" : null);
            readings.Add(
                random.Next(13) switch
                {
                    0 or 1 or 2 => new PlanDistance(id, p[0], p[1], v, s, tool),
                    3 or 4 => new DirectDistance(id, p[0], p[1], v, s, tool),
                    5 => new Height(id, p[0], v, s, tool),
                    6 => new Rise(id, p[0], p[1], -v, s, tool),
                    7 when p.Take(3).Distinct().Count() == 3 => new Offset(id, p[0], p[1], p[2], -v, s, tool),
                    8 => new CoordinatePrior(id, p[0], Any<Axis>([Axis.X, Axis.Y, Axis.Z]), v, s),
                    9 => new DropShift(id, p[0], 0.001 * random.NextDouble(), 0.001),
                    10 => new DropDistance(id, p[0], 0.001 * random.NextDouble()),
                    11 => new OffsetDrop(id, p[0], p[1], 0.1, -v, s),
                    12 when p.Take(3).Distinct().Count() == 3 => new BarDrop(id, p[0], p[1], p[2], v, s),
                    _ => new Height(id, p[1], v, s, null, (x, y) => 0.01 * Math.Sin(x) + 0.001 * y),
                }
            );
        }

        return new Network(
            points,
            readings,
            [new NetworkTool("tape") { ScaleSigma = 1e-4, ZeroSigmaMetres = random.Next(2) * 1e-3 }],
            [new("P0", "P1")]
        );
    }

    [Fact]
    public void AnyNetwork_IsAnsweredOrExplained() =>
        Gen.Int.Sample(
            seed =>
            {
                var network = Nonsense(new Random(seed));
                var outcome = NetworkAdjustment.Solve(network);
                if (outcome.FitOrNull is not { } fit)
                {
                    Assert.True(outcome is NetworkOutcome.Refused { Faults.Count: > 0 } or NetworkOutcome.NotConverged, $"{outcome}");
                    return;
                }

                Assert.All(
                    fit.Points,
                    p =>
                        Assert.All(
                            new[] { p.XMetres, p.YMetres, p.ZMetres, p.UxMetres, p.UyMetres, p.UzMetres },
                            v => Assert.True(v is null || double.IsFinite(v.Value), $"{p}")
                        )
                );
                Assert.All(
                    fit.Readings,
                    r =>
                        Assert.True(
                            double.IsFinite(r.ResidualMetres)
                                && r.RedundancyNumber is >= 0 and <= 1
                                && double.IsFinite(r.Standardised ?? 0),
                            $"{r}"
                        )
                );
                Assert.True(double.IsFinite(fit.WeightedSquares) && fit.Redundancy >= 0, $"{fit.WeightedSquares} {fit.Redundancy}");
                Assert.NotNull(fit.TiedReadings());
                BlunderSearch.Of(fit);
            },
            iter: int.Parse(Environment.GetEnvironmentVariable("FUZZ") ?? "60"),
            threads: 1
        );
}
