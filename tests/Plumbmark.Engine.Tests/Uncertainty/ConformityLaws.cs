using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class ConformityLaws
{
    private static readonly Gen<double> s_degrees = Gen.OneOf(Gen.Const(double.PositiveInfinity), Gen.Double[1, 60]);

    [Fact]
    public void Between_IsSymmetricAndAtMostEitherSide() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[0.01, 3], Gen.Double[0.1, 4], s_degrees)
            .Sample(
                (value, u, limit, nu) =>
                {
                    var within = ConformityProbability.Between(value, u, -limit, limit, nu);
                    Assert.Equal(within, ConformityProbability.Between(-value, u, -limit, limit, nu), tolerance: 1e-14);
                    Assert.InRange(
                        within,
                        0,
                        Math.Min(ConformityProbability.AtMost(value, u, limit, nu), ConformityProbability.AtLeast(value, u, -limit, nu))
                            + 1e-14
                    );
                    Assert.Equal(
                        1,
                        within + ConformityProbability.AtLeast(value, u, limit, nu) + ConformityProbability.AtMost(value, u, -limit, nu),
                        tolerance: 1e-13
                    );
                }
            );

    [Fact]
    public void Guard_IsWhereTheProbabilityIsReached() =>
        Gen.Select(Gen.Double[0.5, 5], Gen.Double[0.05, 2], Gen.Double[0.6, 0.999], s_degrees)
            .Sample(
                (limit, u, probability, nu) =>
                    GuardBand
                        .TwoSided(limit, u, probability, nu)
                        .Match(
                            guard =>
                            {
                                var at = ConformityProbability.Between(limit - guard.Width, u, -limit, limit, nu);
                                Assert.InRange(at, probability - 1e-12, 1);
                                Assert.True(guard.Width >= GuardBand.OneSided(u, probability, nu) * (1 - 1e-9));
                                var further = limit - guard.Width + 1e-6 * u;
                                Assert.True(ConformityProbability.Between(further, u, -limit, limit, nu) < probability);
                                return true;
                            },
                            none =>
                            {
                                Assert.True(none.BestProbability < probability);
                                return true;
                            }
                        )
            );

    [Fact]
    public void Decide_TurnsOverWithTheProbability()
    {
        Assert.Equal(Conformity.Conforms, DecisionRule.Default.Decide(0.95));
        Assert.Equal(Conformity.Undecided, DecisionRule.Default.Decide(0.9499));
        Assert.Equal(Conformity.Undecided, DecisionRule.Default.Decide(0.0501));
        Assert.Equal(Conformity.DoesNotConform, DecisionRule.Default.Decide(0.05));
        Assert.Equal(Conformity.Undecided, default);
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.Default.Decide(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.Asking(0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => DecisionRule.Asking(double.NaN));
    }

    [Fact]
    public void AtTheLimit_NoUncertainty_IsAllOrNothing()
    {
        Assert.Equal((1.0, 0.0), (ConformityProbability.AtMost(3, 0, 3), ConformityProbability.AtMost(3.001, 0, 3)));
        Assert.Equal(
            (1.0, 1.0, 0.0),
            (
                ConformityProbability.Between(3, 0, -3, 3),
                ConformityProbability.Between(-3, 0, -3, 3),
                ConformityProbability.Between(4, 0, -3, 3)
            )
        );
        Assert.Equal(0, Assert.IsType<GuardBand.Guard>(GuardBand.TwoSided(3, 0, 0.95)).Width);
        Assert.Throws<ArgumentOutOfRangeException>(() => ConformityProbability.Between(1, 1, 3, -3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConformityProbability.AtMost(double.NaN, 1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConformityProbability.AtMost(1, double.NaN, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ConformityProbability.AtMost(1, 1, double.NaN));
    }

    [Fact]
    public void Between_FarOutside_KeepsItsDigits()
    {
        // Φ(−17) − Φ(−23): 4.10600e-65 (tail table of the normal distribution; recomputed).
        Assert.Equal(4.10600e-65, ConformityProbability.Between(20, 1, -3, 3), tolerance: 5e-70);
        Assert.Equal(4.10600e-65, ConformityProbability.Between(-20, 1, -3, 3), tolerance: 5e-70);
    }

    [Fact]
    public void Holm_KeepsTheOrderAndLiesBetweenNoneAndFullAllowance() =>
        Gen.Double[0, 1]
            .Array[0, 20]
            .Sample(p =>
            {
                var adjusted = HolmStepDown.Adjusted(p);
                for (var i = 0; i < p.Length; i++)
                {
                    Assert.InRange(adjusted[i], p[i], Math.Min(1, p.Length * p[i]) + 1e-15 + p.Max());
                    for (var j = 0; j < p.Length; j++)
                    {
                        Assert.True(p[i] >= p[j] || adjusted[i] <= adjusted[j]);
                    }
                }
            });

    [Fact]
    public void Holm_RefusesWhatIsNoProbability()
    {
        Assert.Empty(HolmStepDown.Adjusted([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => HolmStepDown.Adjusted([0.1, double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => HolmStepDown.Adjusted([-1]));
    }

    [Fact]
    public void Holm_KeepsTheFamilyErrorOfGoodParts()
    {
        // 8 good checks, 4000 frames: false alarms on at most 5 % of the frames; the standard deviation of that share is 0.34 %.
        var draw = new RandomStream(106);
        var alarms = Enumerable
            .Range(0, 4000)
            .Count(_ => HolmStepDown.Adjusted([.. Enumerable.Range(0, 8).Select(_ => draw.Uniform())]).Min() <= 0.05);
        Assert.InRange(alarms / 4000.0, 0.05 - 4 * 0.0034, 0.05 + 4 * 0.0034);
    }
}
