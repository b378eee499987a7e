using CsCheck;
using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>What must hold for every network, whatever its readings.</summary>
public class NetworkAdjustmentLaws
{
    private const double Sigma = 0.0008;

    // Rounding of sums over some hundred readings, relative.
    private const double Rounding = 1e-9;

    private static NetworkFit Fit(Network network) => Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;

    private static readonly Gen<(List<Frames.Truth> Truth, List<Observation> Readings, Random Random)> s_frame = Gen.Int[0, 1_000_000]
        .Select(seed =>
        {
            var random = new Random(seed);
            var truth = Frames.Ladder(4 + random.Next(4), random);
            List<Observation> readings =
            [
                .. Frames.PlanLengths(truth, Sigma, 1.7, random),
                .. Frames.DirectLengths(truth, Sigma, 0.9, random),
                .. Frames.Heights(truth, Sigma, random),
                new Rise("rise", truth[0].Id, truth[^1].Id, truth[^1].Z - truth[0].Z, Sigma),
                new Offset("offset", truth[2].Id, truth[0].Id, truth[^2].Id, OffsetOf(truth[2], truth[0], truth[^2]), Sigma),
            ];
            return (truth, readings, random);
        });

    private static double OffsetOf(Frames.Truth p, Frames.Truth from, Frames.Truth to) =>
        ((to.X - from.X) * (p.Y - from.Y) - (to.Y - from.Y) * (p.X - from.X)) / double.Hypot(to.X - from.X, to.Y - from.Y);

    // Distances between all points: what a free network can tell.
    private static double[] Estimable(NetworkFit fit) =>
        [
            .. from a in fit.Points
            from b in fit.Points
            where string.CompareOrdinal(a.Id, b.Id) < 0
            orderby a.Id, b.Id
            let d = fit.Covariance.Evaluate(Distance(fit, a.Id, b.Id))
            from value in (double[])[d.Value, d.Sigma]
            select value,
        ];

    private static PointFunction Distance(NetworkFit fit, string a, string b)
    {
        var (ax, ay) = (fit.Covariance.IndexOf(a, Axis.X)!.Value, fit.Covariance.IndexOf(a, Axis.Y)!.Value);
        var (bx, by) = (fit.Covariance.IndexOf(b, Axis.X)!.Value, fit.Covariance.IndexOf(b, Axis.Y)!.Value);
        return c => double.Hypot(c[ax] - c[bx], c[ay] - c[by]);
    }

    private static void Same(double[] expected, double[] actual, double factor = 1) =>
        Assert.All(expected.Zip(actual), p => Assert.True(Math.Abs(p.First * factor - p.Second) <= 1e-8 * factor, $"{p}"));

    [Fact]
    public void MovingTheDatum_ChangesNoDistanceAndNoResidual() =>
        s_frame.Sample(
            f =>
            {
                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                var (sin, cos) = Math.SinCos(f.Random.NextDouble() * 6);
                var moved = f.Truth.Select(p => p with { X = cos * p.X - sin * p.Y + 7, Y = sin * p.X + cos * p.Y - 3 });
                var other = Fit(new Network(Frames.Sketched(moved), f.Readings));
                Same(Estimable(fit), Estimable(other));
                Same([.. fit.Readings.Select(r => r.ResidualMetres)], [.. other.Readings.Select(r => r.ResidualMetres)]);
                Same([.. fit.Readings.Select(r => r.RedundancyNumber)], [.. other.Readings.Select(r => r.RedundancyNumber)]);
                Assert.Equal(fit.WeightedSquares, other.WeightedSquares, 1e-6);
            },
            iter: 25
        );

    [Fact]
    public void ShufflingPointsAndReadings_ChangesNothing() =>
        s_frame.Sample(
            f =>
            {
                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                var points = Frames.Sketched(f.Truth).OrderBy(_ => f.Random.Next()).ToList();
                var other = Fit(new Network(points, f.Readings.OrderBy(_ => f.Random.Next())));
                Same(Estimable(fit), Estimable(other));
                foreach (var point in fit.Points)
                {
                    Assert.Equal(point.XMetres!.Value, other.Point(point.Id).XMetres!.Value, 1e-9);
                    Assert.Equal(point.UyMetres!.Value, other.Point(point.Id).UyMetres!.Value, 1e-9);
                }
            },
            iter: 25
        );

    [Theory]
    [InlineData(1 / 0.0254)]
    [InlineData(1000)]
    [InlineData(1e-3)]
    public void AnotherUnit_ScalesEverythingAlike(double factor) =>
        s_frame.Sample(
            f =>
            {
                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                var scaled = f.Truth.Select(p => p with { X = p.X * factor, Y = p.Y * factor, Z = p.Z * factor });
                var readings = f.Readings.Select(o =>
                    o with
                    {
                        ValueMetres = o.ValueMetres * factor,
                        SigmaMetres = o.SigmaMetres * factor,
                    }
                );
                var other = Fit(new Network(Frames.Sketched(scaled), readings));
                Same(Estimable(fit), Estimable(other), factor);
                Assert.Equal(fit.WeightedSquares, other.WeightedSquares, 1e-6 * fit.WeightedSquares);
            },
            iter: 10
        );

    [Fact]
    public void TheMirrorImage_HasTheSameDistancesAndUncertainties() =>
        s_frame.Sample(
            f =>
            {
                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                var mirrored = f.Truth.Select(p => p with { Y = -p.Y });
                var readings = f.Readings.Select(o => o is Offset ? o with { ValueMetres = -o.ValueMetres } : o);
                var other = Fit(new Network(Frames.Sketched(mirrored), readings));
                Same(Estimable(fit), Estimable(other));
                Assert.All(fit.Points, p => Assert.Equal(p.YMetres!.Value, -other.Point(p.Id).YMetres!.Value, 1e-9));
            },
            iter: 25
        );

    [Fact]
    public void OneReadingMore_RaisesNoUncertainty() =>
        s_frame.Sample(
            f =>
            {
                var left = f.Random.Next(f.Readings.Count);
                var less = NetworkAdjustment.Solve(new Network(Frames.Sketched(f.Truth), f.Readings.Where((_, i) => i != left))).FitOrNull!;
                var design = NetworkDesign.Of(new Network(Frames.Sketched(f.Truth), f.Readings.Where((_, i) => i != left)));
                var more = design.With(f.Readings[left]);
                for (var i = 0; i < design.Count; i++)
                {
                    Assert.True(more[i, i] <= design[i, i] * (1 + Rounding));
                }

                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                foreach (var (a, b) in f.Truth.Zip(f.Truth.Skip(1)))
                {
                    var before = less.Covariance.Evaluate(Distance(less, a.Id, b.Id)).Sigma;
                    var after = fit.Covariance.Evaluate(Distance(fit, a.Id, b.Id)).Sigma;
                    // The two fits differ by the reading's noise, hence by its curvature.
                    Assert.True(after <= before * (1 + 1e-3), $"{before} {after}");
                }
            },
            iter: 25
        );

    [Fact]
    public void Covariance_IsSymmetricAndHasNoNegativeVariance() =>
        s_frame.Sample(
            f =>
            {
                var covariance = Fit(new Network(Frames.Sketched(f.Truth, dropSigma: 0.0005), f.Readings)).Covariance;
                var full = covariance.Full();
                var n = covariance.Count;
                for (var i = 0; i < n; i++)
                {
                    for (var j = 0; j < i; j++)
                    {
                        Assert.Equal(full[i * n + j], full[j * n + i], 1e-18);
                        Assert.Equal(full[i * n + j], covariance[i, j], 1e-18);
                    }
                }

                var eigen = Plumbmark.Engine.LeastSquares.SymmetricEigen.Of(full, n);
                Assert.True(eigen.Values[^1] >= -Rounding * eigen.Values[0]);
            },
            iter: 25
        );

    [Fact]
    public void RedundancyNumbers_AreBetweenZeroAndOneAndAddUp() =>
        s_frame.Sample(
            f =>
            {
                var fit = Fit(new Network(Frames.Sketched(f.Truth), f.Readings));
                Assert.All(fit.Readings, r => Assert.InRange(r.RedundancyNumber, 0, 1));
                Assert.Equal(fit.Redundancy, fit.Readings.Sum(r => r.RedundancyNumber), 1e-8);
            },
            iter: 25
        );

    [Fact]
    public void SymmetricTwinReadings_CancelATapesScaleAndItsUncertaintyExactly()
    {
        // A frame that mirrors exactly, each length read on the left and on the right with the same tape.
        List<Frames.Truth> truth =
        [
            .. from i in Enumerable.Range(0, 5)
            from side in (int[])[1, -1]
            select new Frames.Truth($"{Frames.Name(i)}.{(side > 0 ? "L" : "R")}", 1 - 0.5 * i, side * (0.4 + 0.03 * i), 0),
        ];
        NetworkFit WithScale(double scale, double scaleSigma) =>
            Fit(
                new Network(
                    Frames.Sketched(truth),
                    Frames.PlanLengths(truth, Sigma, 1.6).Select(o => o with { ValueMetres = o.ValueMetres * (1 + scale), Tool = "tape" }),
                    [new NetworkTool("tape") { ScaleSigma = scaleSigma }]
                )
            );
        var (known, unknown) = (WithScale(0, 0), WithScale(0.002, 0.001));
        foreach (var (from, to) in ((string, string)[])[("A", "B"), ("A", "C"), ("B", "D"), ("A", "E")])
        {
            FunctionEstimate Difference(NetworkFit fit)
            {
                var (left, right) = (Distance(fit, $"{from}.L", $"{to}.L"), Distance(fit, $"{from}.R", $"{to}.R"));
                var (across, other) = (Distance(fit, $"{from}.L", $"{to}.R"), Distance(fit, $"{from}.R", $"{to}.L"));
                return fit.Covariance.Evaluate(c => left(c) - right(c) + 2 * (across(c) - other(c)));
            }

            Assert.Equal(0, Difference(unknown).Value, 1e-12);
            Assert.Equal(Difference(known).Sigma, Difference(unknown).Sigma, 1e-6 * Difference(known).Sigma);
        }

        // A length alone does feel it.
        var (a, b) = (Distance(known, "A.L", "E.L"), Distance(unknown, "A.L", "E.L"));
        Assert.True(unknown.Covariance.Evaluate(b).Sigma > 2 * known.Covariance.Evaluate(a).Sigma);
    }

    [Fact]
    public void AddingAReadingToAFit_EqualsSolvingWithIt() =>
        s_frame.Sample(
            f =>
            {
                var added = f.Readings[f.Random.Next(f.Readings.Count)];
                var network = new Network(Frames.Sketched(f.Truth), f.Readings.Where(r => r != added).Append(added));
                if (NetworkAdjustment.Solve(network.Without(added.Id)) is not NetworkOutcome.Adjusted { Fit: var before })
                {
                    return;
                }

                var (fresh, updated) = (Fit(network), Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Add(before, added)).Fit);
                Assert.Equal(fresh.Redundancy, updated.Redundancy);
                Assert.Equal(fresh.WeightedSquares, updated.WeightedSquares, 1e-6);
                var (expected, actual) = (Estimable(fresh), Estimable(updated));
                for (var i = 0; i < expected.Length; i += 2)
                {
                    Assert.Equal(expected[i], actual[i], 1e-9);
                    Assert.Equal(expected[i + 1], actual[i + 1], 1e-3 * expected[i + 1]);
                }

                Assert.All(fresh.Readings.Zip(updated.Readings), p => Assert.Equal(p.First.ResidualMetres, p.Second.ResidualMetres, 1e-9));
            },
            iter: 40
        );

    [Fact]
    public void AddingAReadingThatOnlyChecks_NeedsNoIteration()
    {
        var truth = Frames.Ladder(6, new Random(5));
        List<Observation> readings = [.. Frames.PlanLengths(truth, Sigma, 1.7, new Random(6))];
        var before = Fit(new Network(Frames.Sketched(truth), readings.Skip(1)));
        var after = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Add(before, readings[0])).Fit;
        Assert.Empty(after.Summary.Iterations);

        // A height where there was none is another matter.
        var height = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Add(before, new Height("h", truth[0].Id, 0.3, Sigma))).Fit;
        Assert.Equal(0.3, height.Point(truth[0].Id).ZMetres!.Value, 1e-12);
        Assert.NotEmpty(height.Summary.Iterations);
    }
}
