using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class PooledRepeatabilityTests
{
    [Fact]
    public void NoRepeats_TellNothing()
    {
        Assert.Null(PooledRepeatability.Of([]));
        Assert.Null(
            PooledRepeatability.Of([
                [1.0],
                [2.0],
                [],
            ])
        );
    }

    [Fact]
    public void Pairs_PoolToTheRootMeanSquareDifference()
    {
        // Own computation: for pairs s_p² = Σ d²/(2m); d = 2, 4: s_p² = 20/4.
        var pooled = PooledRepeatability.Of([
            [10, 12],
            [100, 96],
            [55],
        ]);
        Assert.NotNull(pooled);
        Assert.Equal((Math.Sqrt(5), 2), (pooled.StandardDeviation, pooled.DegreesOfFreedom));
    }

    [Fact]
    public void ProbabilityOfAtLeast_ComparesWithAnAssumedSpread()
    {
        var pooled = new PooledRepeatability(1, 10);
        // Chi-square table, ν = 10: 18.307 at 5 %.
        Assert.Equal(0.05, pooled.ProbabilityOfAtLeast(Math.Sqrt(10 / 18.3070)), tolerance: 1e-5);
        Assert.True(pooled.ProbabilityOfAtLeast(100) > 0.999);
        Assert.True(pooled.ProbabilityOfAtLeast(0.1) < 1e-9);
    }

    [Fact]
    public void UpperBound_IsTheTextbooksChiSquareBound()
    {
        // Chi-square table, ν = 10: 3.940 is exceeded by 95 %.
        Assert.Equal(Math.Sqrt(10 / 3.940), new PooledRepeatability(1, 10).UpperBound(0.95), tolerance: 2e-4);
    }

    // NIST StRD, univariate: certified standard deviations; the sets stress exactly this sum.
    [Theory]
    [InlineData("NumAcc1.dat", 1, 14)]
    [InlineData("NumAcc2.dat", 0.1, 12)]
    [InlineData("NumAcc3.dat", 0.1, 8)] // 1000000.1 to 1000000.3 in doubles: the data themselves have 9 digits of spread
    [InlineData("NumAcc4.dat", 0.1, 7)]
    [InlineData("Michelso.dat", 0.0790105478190518, 12)]
    [InlineData("Mavro.dat", 0.000429123454003053, 11)]
    [InlineData("Lew.dat", 277.332168044316, 13)]
    [InlineData("Lottery.dat", 291.699727470969, 13)]
    public void Of_NistSets_AgreesInDigits(string file, double certified, int digits)
    {
        var numbers = File.ReadLines(Plumbmark.Testing.Repository.PathTo("reference", "nist", file))
            .SkipWhile(line => !line.StartsWith("Data: Y", StringComparison.Ordinal))
            .Skip(2) // the head and the line below it
            .Where(line => line.Trim().Length > 0)
            .Select(line => double.Parse(line, System.Globalization.CultureInfo.InvariantCulture))
            .ToArray();
        var pooled = PooledRepeatability.Of([numbers])!;
        var agreeing = -Math.Log10(Math.Max(Math.Abs(pooled.StandardDeviation - certified) / certified, 1e-16));
        Assert.True(agreeing >= digits, $"{file}: {agreeing:F1} digits, {numbers.Length} numbers");
    }

    [Fact]
    public void With_ADefaultDoubtedByAQuarter_MovesItLittleByFewRepeats()
    {
        // 0.5 mm known to a quarter is worth 8 degrees of freedom (G.4.2); three repeats of 1 mm spread add 2: √((8·0.25 + 2·1)/10).
        var usual = UncertaintyComponent.Standard("drop", 0.5).DoubtedBy(0.25);
        var learnt = new PooledRepeatability(usual.StandardUncertainty, usual.DegreesOfFreedom).With(new PooledRepeatability(1, 2));
        Assert.Equal(Math.Sqrt(0.4), learnt.StandardDeviation, tolerance: 1e-12);
        Assert.Equal(10, learnt.DegreesOfFreedom, tolerance: 1e-12);
    }

    [Fact]
    public void With_IsPoolingAllGroupsAtOnce() =>
        Gen.Select(Gen.Double[-5, 5].Array[2, 6].Array[1, 4], Gen.Double[-5, 5].Array[2, 6].Array[1, 4])
            .Sample(
                (some, others) =>
                {
                    var together = PooledRepeatability.Of([.. some, .. others])!;
                    var joined = PooledRepeatability.Of(some)!.With(PooledRepeatability.Of(others)!);
                    Assert.Equal(together.StandardDeviation, joined.StandardDeviation, tolerance: 1e-12);
                    Assert.Equal(together.DegreesOfFreedom, joined.DegreesOfFreedom);
                }
            );

    [Fact]
    public void ShiftingAGroup_ChangesNothing() =>
        Gen.Select(Gen.Double[-5, 5].Array[2, 6].Array[1, 5], Gen.Double[-100, 100])
            .Sample(
                (groups, shift) =>
                {
                    var before = PooledRepeatability.Of(groups)!;
                    var after = PooledRepeatability.Of(groups.Select((g, i) => g.Select(x => x + i * shift).ToArray()))!;
                    Assert.Equal(before.StandardDeviation, after.StandardDeviation, tolerance: 1e-10);
                    Assert.Equal(groups.Sum(g => g.Length - 1), before.DegreesOfFreedom);
                }
            );
}
