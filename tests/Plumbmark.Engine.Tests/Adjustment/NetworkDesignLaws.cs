using CsCheck;
using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>An update is worth the same as starting afresh.</summary>
public class NetworkDesignLaws
{
    private static readonly Gen<(Network Network, Observation Reading)> s_case = Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 14])
        .Select(
            (seed, which) =>
            {
                var network = EveryKind.Of(new Random(seed));
                return (network.Without(network.Observations[which].Id), network.Observations[which]);
            }
        )
        .Where(c => c.Item2 is not DropDistance);

    [Fact]
    public void AddingAReading_EqualsTheDesignMadeWithIt() =>
        s_case.Sample(c => Same(NetworkDesign.Of(c.Network.With(c.Reading)), NetworkDesign.Of(c.Network).With(c.Reading)), iter: 60);

    [Fact]
    public void LeavingAReadingOut_UndoesAddingIt() =>
        s_case.Sample(c => Same(NetworkDesign.Of(c.Network), NetworkDesign.Of(c.Network).With(c.Reading).Without(c.Reading)), iter: 60);

    [Fact]
    public void Effect_ForetellsWhatAddingDoes() =>
        s_case.Sample(
            c =>
            {
                var design = NetworkDesign.Of(c.Network);
                var (effect, after) = (design.Effect(c.Reading), design.With(c.Reading));
                var random = new Random(7);
                var gradient = Enumerable.Range(0, design.Count).Select(_ => random.NextDouble() - 0.5).ToArray();
                var expected = design.Variance(gradient) - effect.Reduction(gradient);
                Assert.Equal(after.Variance(gradient), expected, 1e-7 * design.Variance(gradient));
                Assert.True(effect.Reduction(gradient) >= 0);
            },
            iter: 60
        );

    [Fact]
    public void AimedAtEveryCoordinate_ForetellsTheTrace_WhateverWasTakenBefore()
    {
        var truth = Frames.Ladder(6, new Random(3));
        List<Observation> all = [.. Frames.PlanLengths(truth, 0.0008, 3), .. Frames.Heights(truth, 0.0008)];
        var design = NetworkDesign.Of(new Network(Frames.Sketched(truth, dropSigma: 0.0005), all.Take(10)));
        var aimed = new AimedDesign(design, all);
        aimed.Aim([
            .. Enumerable.Range(0, design.Count).Select(i => Enumerable.Range(0, design.Count).Select(j => i == j ? 1.0 : 0).ToArray()),
        ]);
        var falls = new double[design.Count];
        foreach (var taken in (int[])[20, 3, 41, 20])
        {
            aimed.Take(taken);
            design = design.With(all[taken]);
            for (var k = 0; k < all.Count; k++)
            {
                var expected = design.Effect(all[k]).TraceReduction();
                aimed.WhenTaken(k, falls);
                Assert.Equal(expected, falls.Sum(), 1e-6 * expected + 1e-15);
            }
        }
    }

    /// <summary>A length to a millionth of a micrometre beside a sketch good to a decimetre: a ratio of weights of 1e22.</summary>
    [Theory]
    [InlineData(1e-12)]
    [InlineData(1e-9)]
    [InlineData(1e9)]
    public void UncertaintyNobodyHas_StillHasADesign(double sigma)
    {
        var truth = Frames.Ladder(4, new Random(3));
        List<Observation> readings = [.. Frames.PlanLengths(truth, sigma, 3), .. Frames.Heights(truth, 0.0008)];
        var design = NetworkDesign.Of(new Network(Frames.Sketched(truth), readings));
        Assert.All(Enumerable.Range(0, design.Count), i => Assert.InRange(design[i, i], 0, 1.01 * NetworkDesign.LooseSigmaMetres));
        var without = design.Without(readings[0]).With(readings[0]);
        Assert.All(Enumerable.Range(0, design.Count), i => Assert.Equal(design[i, i], without[i, i], 1e-6));
    }

    [Fact]
    public void AimedDesign_ForetellsWhatTheDesignDoes_TakenAndGivenBack()
    {
        var truth = Frames.Ladder(6, new Random(3));
        List<Observation> all =
        [
            .. Frames.PlanLengths(truth, 0.0008, 3),
            .. Frames.Heights(truth, 0.0008),
            new Observation.DropShift("again", truth[0].Id, 0, 0),
        ];
        var design = NetworkDesign.Of(new Network(Frames.Sketched(truth, dropSigma: 0.0005), all.Take(10)));
        var random = new Random(4);
        double[][] sums =
        [
            .. Enumerable.Range(0, 5).Select(_ => Enumerable.Range(0, design.Count).Select(_ => random.NextDouble() - 0.5).ToArray()),
        ];
        var aimed = new AimedDesign(design, all);
        aimed.Aim(sums);
        var change = new double[sums.Length];
        foreach (
            var (k, isTaken) in new[] { (20, true), (all.Count - 1, true), (3, true), (20, false), (all.Count - 1, false), (41, true) }
        )
        {
            double[] before = [.. sums.Select(s => design.Variance(s))];
            if (isTaken)
            {
                aimed.WhenTaken(k, change);
                aimed.Take(k);
                design = design.With(all[k]);
            }
            else
            {
                aimed.WhenGivenBack(k, change);
                aimed.GiveBack(k);
                design = design.Without(all[k]);
            }

            for (var t = 0; t < sums.Length; t++)
            {
                var after = design.Variance(sums[t]);
                Assert.Equal(after, aimed.Variance(t), 1e-7 * before[t]);
                Assert.Equal(after, aimed.Now().Variance(sums[t]), 1e-7 * before[t]);
                Assert.Equal(after, before[t] + (isTaken ? -change[t] : change[t]), 1e-7 * before[t]);
            }
        }

        var moment = aimed.Keep();
        aimed.Take(5);
        aimed.Restore(moment);
        Assert.Equal(design.Variance(sums[0]), aimed.Variance(0), 1e-7 * design.Variance(sums[0]));
    }

    [Fact]
    public void LoosePrior_ChangesNoUncertaintyThatReadingsDetermine()
    {
        var truth = Frames.Ladder(6, new Random(3));
        var network = new Network(Frames.Sketched(truth), Frames.PlanLengths(truth, 0.0008, 1.7));
        var fit = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;
        var design = NetworkDesign.Of(network);
        var gradient = new double[design.Count];
        var fitGradient = new double[fit.Covariance.Count];

        // Length A.L to F.L, along its direction.
        var (a, b) = (truth[0], truth[10]);
        var d = double.Hypot(b.X - a.X, b.Y - a.Y);
        foreach (
            var (id, axis, value) in ((string, Axis, double)[])
                [
                    (a.Id, Axis.X, (a.X - b.X) / d),
                    (a.Id, Axis.Y, (a.Y - b.Y) / d),
                    (b.Id, Axis.X, (b.X - a.X) / d),
                    (b.Id, Axis.Y, (b.Y - a.Y) / d),
                ]
        )
        {
            gradient[design.IndexOf(id, axis)] = value;
            fitGradient[fit.Covariance.IndexOf(id, axis)!.Value] = value;
        }

        Assert.Equal(Math.Sqrt(fit.Covariance.Variance(fitGradient)), Math.Sqrt(design.Variance(gradient)), 1e-7);
    }

    [Fact]
    public void AFirstLengthToAPointThatWasNeverDropped_CarriesTheErrorOfItsDrop()
    {
        const double Drop = 0.002;
        NetworkPoint At(string id, double x, double drop) =>
            new(id)
            {
                SketchXMetres = x,
                SketchYMetres = 0,
                SketchZMetres = 0,
                DropSigmaMetres = drop,
            };
        double Along(double drop)
        {
            var design = NetworkDesign
                .Of(new Network([At("A", 0, drop), At("B", 1, drop)], []))
                .With(new PlanDistance("r", "A", "B", 1, 1e-4));
            var gradient = new double[design.Count];
            (gradient[design.IndexOf("A", Axis.X)], gradient[design.IndexOf("B", Axis.X)]) = (-1, 1);
            return design.Variance(gradient);
        }

        Assert.Equal(Along(0) + 2 * Drop * Drop, Along(Drop), 1e-8);
    }

    private static void Same(NetworkDesign expected, NetworkDesign actual)
    {
        for (var i = 0; i < expected.Count; i++)
        {
            for (var j = 0; j < expected.Count; j++)
            {
                // Variances are at most a square decimetre, so this is seven digits of the loosest coordinate.
                Assert.True(Math.Abs(expected[i, j] - actual[i, j]) < 1e-9, $"{i} {j}: {expected[i, j]} {actual[i, j]}");
            }
        }
    }
}
