using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class MonteCarloTests
{
    [Fact]
    public void SameSeed_SameDigits()
    {
        MonteCarloOutcome Run(ulong seed) => MonteCarlo.Propagate(draw => draw.Normal() * draw.StudentT(4), 1000, seed);
        var (first, again, other) = (Estimate(Run(7)), Estimate(Run(7)), Estimate(Run(8)));
        Assert.Equal(first, again);
        Assert.NotEqual(first, other);
    }

    [Fact]
    public void Draws_FollowTheirDistributions()
    {
        // Kolmogorov and Smirnov: with 20 000 draws the largest gap exceeds 1.95/√n = 0.0138 once in a thousand.
        var draw = new RandomStream(1);
        Follows(() => draw.Uniform(), x => Math.Clamp(x, 0, 1));
        Follows(() => draw.Rectangular(-2, 6), x => (x + 2) / 8);
        Follows(() => draw.Triangular(0, 2), x => x < 1 ? x * x / 2 : 1 - (2 - x) * (2 - x) / 2);
        Follows(() => draw.Normal(3, 2), x => Normal.Cumulative((x - 3) / 2));
        Follows(() => draw.StudentT(3), x => StudentT.Cumulative(x, 3));
        Follows(() => draw.StudentT(30), x => StudentT.Cumulative(x, 30));
        Follows(() => draw.StudentT(double.PositiveInfinity), Normal.Cumulative);
    }

    [Fact]
    public void AnyTrialWithoutResult_IsTold()
    {
        var outcome = MonteCarlo.Propagate(draw => draw.Uniform() < 0.25 ? double.NaN : 1, 1000, seed: 3);
        var undefined = Assert.IsType<MonteCarloOutcome.Undefined>(outcome);
        Assert.Equal(1000, undefined.Trials);
        Assert.InRange(undefined.Count, 180, 320);
        // A result that the trial forgets to fill in is no result.
        Assert.All(MonteCarlo.Propagate((_, _) => { }, 2, 5, seed: 1), o => Assert.IsType<MonteCarloOutcome.Undefined>(o));
    }

    [Fact]
    public void SeveralResults_ShareTheirTrials()
    {
        var outcomes = MonteCarlo.Propagate(
            (draw, results) => (results[0], results[1]) = draw.Normal() is var x ? (x, -x) : default,
            2,
            500,
            seed: 4
        );
        Assert.Equal(Estimate(outcomes[0]), -Estimate(outcomes[1]), tolerance: 1e-15);
    }

    [Fact]
    public void Intervals_CoverWhatTheySay() =>
        Gen.Select(Gen.Double[-10, 10].Array[2, 300], Gen.Double[0.05, 0.99])
            .Sample(
                (values, coverage) =>
                {
                    var next = 0;
                    var result = Assert
                        .IsType<MonteCarloOutcome.Propagated>(MonteCarlo.Propagate(_ => values[next++], values.Length, 0))
                        .Distribution;
                    var (symmetric, shortest) = (result.SymmetricInterval(coverage), result.ShortestInterval(coverage));
                    var covered = Math.Clamp(Math.Floor(coverage * values.Length + 0.5), 1, values.Length - 1);
                    Assert.True(values.Count(v => v >= symmetric.Low && v <= symmetric.High) >= covered + 1);
                    Assert.True(values.Count(v => v >= shortest.Low && v <= shortest.High) >= covered + 1);
                    Assert.True(shortest.Width <= symmetric.Width);
                    Assert.InRange(result.Estimate, values.Min() - 1e-12, values.Max() + 1e-12);
                }
            );

    [Fact]
    public void TwoTrials_AreTheFewest()
    {
        var next = 0;
        var result = Assert.IsType<MonteCarloOutcome.Propagated>(MonteCarlo.Propagate(_ => next++, 2, 0)).Distribution;
        Assert.Equal((0.5, Math.Sqrt(0.5)), (result.Estimate, result.StandardUncertainty));
        Assert.Equal(new CoverageInterval(0, 1), result.SymmetricInterval(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.Propagate(_ => 1.0, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MonteCarlo.Propagate((_, _) => { }, 0, 10, 0));
    }

    private static double Estimate(MonteCarloOutcome outcome) => outcome.Match(d => d.Estimate, _ => double.NaN);

    private static void Follows(Func<double> draw, Func<double, double> cumulative)
    {
        const int N = 20_000;
        var ordered = Enumerable.Range(0, N).Select(_ => draw()).Order().ToArray();
        var gap = ordered
            .Select((x, i) => Math.Max(Math.Abs(cumulative(x) - i / (double)N), Math.Abs(cumulative(x) - (i + 1) / (double)N)))
            .Max();
        Assert.True(gap < 1.95 / Math.Sqrt(N), $"gap {gap}");
    }
}
