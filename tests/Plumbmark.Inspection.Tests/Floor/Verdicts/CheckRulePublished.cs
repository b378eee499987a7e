using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

public class CheckRulePublished
{
    // JCGM 106:2012, 7.4, equation for a normal distribution and two limits; numbers by own computation for ±3 mm and u = 0.8 mm.
    [Theory]
    [InlineData(2.0, 0.894350)]
    [InlineData(3.0, 0.500000)]
    [InlineData(-3.5, 0.265986)]
    public void ProbabilityWithin_IsThatOfTheNormalLaw(double value, double expected) =>
        Assert.Equal(expected, CheckRule.ProbabilityWithin(value * 1e-3, 0.8e-3, 3e-3), 5e-7); // printed to six digits

    // ISO 14253-1:2017, default 95 %: the guard band is 1.6449 u where u is small against the limit (from memory; quantile by own computation).
    [Theory]
    [InlineData(1.6448, Verdict.CannotTellYet)]
    [InlineData(1.6450, Verdict.True)]
    [InlineData(-1.6448, Verdict.CannotTellYet)]
    [InlineData(-1.6450, Verdict.Out)]
    public void Verdict_ChangesAtTheGuardBand(double uInsideTheLimit, Verdict expected)
    {
        const double U = 0.2e-3;
        var within = CheckRule.ProbabilityWithin(3e-3 - (uInsideTheLimit * U), U, 3e-3);
        Assert.Equal(expected, CheckRule.VerdictOf(within));
    }

    // u > T / 1.9600 leaves no value that could be called true (own computation: 2 Φ(T/u) - 1 < 0.95).
    [Fact]
    public void TooUnsureAMeasurement_CanNeverSayTrue()
    {
        Assert.Equal(Verdict.CannotTellYet, CheckRule.VerdictOf(CheckRule.ProbabilityWithin(0, 3e-3 / 1.95, 3e-3)));
        Assert.Equal(Verdict.True, CheckRule.VerdictOf(CheckRule.ProbabilityWithin(0, 3e-3 / 1.97, 3e-3)));
    }

    [Fact]
    public void AKnownPlace_IsWithinOrNot()
    {
        Assert.Equal(1, CheckRule.ProbabilityWithin(3e-3, 0, 3e-3));
        Assert.Equal(0, CheckRule.ProbabilityWithin(3.1e-3, 0, 3e-3));
    }

    // Holm 1979: of m checks the smallest probability is held against 0.05/m, the next against 0.05/(m - 1), until the first that is not below.
    [Fact]
    public void OutAfterCounting_StepsDownAsHolmDoes()
    {
        Check[] checks = [Of("a", 0.012), Of("b", 0.6), Of("c", 0.016), Of("d", 0.03), Of("e", null)];
        Assert.Equal(["a", "c"], CheckRule.OutAfterCounting(checks).Select(c => c.Id));
        Assert.Empty(CheckRule.OutAfterCounting([Of("a", 0.013), Of("b", 0.6), Of("c", 0.016), Of("d", 0.03)]));
    }

    private static Check Of(string id, double? within) => new(id, "stagger", 0, 0, 1, LimitSource.Own, within, null, [], true);
}
