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
        Assert.Equal(expected, CheckRule.VerdictOf(3e-3 - (uInsideTheLimit * U), U, 3e-3));
        Assert.Equal(expected, CheckRule.VerdictOf(-3e-3 + (uInsideTheLimit * U), U, 3e-3));
    }

    // u > T / 1.9600 leaves no value that could be called true (own computation: 2 Φ(T/u) - 1 < 0.95).
    [Fact]
    public void TooUnsureAMeasurement_CanNeverSayTrue()
    {
        Assert.Equal(Verdict.CannotTellYet, CheckRule.VerdictOf(0, 3e-3 / 1.95, 3e-3));
        Assert.Equal(Verdict.True, CheckRule.VerdictOf(0, 3e-3 / 1.97, 3e-3));
    }

    // P(within) falls below 5 % for want of knowledge alone when u is beyond 16 T (own computation); ISO 14253-1 calls out only beyond T + 1.6449 u.
    [Fact]
    public void WantOfKnowledge_CallsNothingOut()
    {
        Assert.InRange(CheckRule.ProbabilityWithin(0, 50e-3, 3e-3), 0, 0.05);
        Assert.Equal(Verdict.CannotTellYet, CheckRule.VerdictOf(0, 50e-3, 3e-3));
        Assert.Equal(Verdict.CannotTellYet, CheckRule.VerdictOf(0, double.PositiveInfinity, 3e-3));
        Assert.Equal(1, CheckRule.NotBeyond(9e-3, double.PositiveInfinity, 3e-3));
        Assert.Equal(0, CheckRule.ProbabilityWithin(0, double.PositiveInfinity, 3e-3));
        Assert.Equal(Verdict.Out, CheckRule.VerdictOf(3e-3 + (1.65 * 50e-3), 50e-3, 3e-3));
    }

    [Fact]
    public void AKnownPlace_IsWithinOrNot()
    {
        Assert.Equal(1, CheckRule.ProbabilityWithin(3e-3, 0, 3e-3));
        Assert.Equal(0, CheckRule.ProbabilityWithin(3.1e-3, 0, 3e-3));
    }

    // Holm 1979: of m checks the smallest probability is held against 0.05/m, the next against 0.05/(m - 1), until the first that is not below.
    // Of a value y with u = 1 mm and a limit of 3 mm the probability is Φ(3 - y); the y for each by the quantiles of the normal law (own computation).
    [Fact]
    public void OutAfterCounting_StepsDownAsHolmDoes()
    {
        var (p012, p013, p016, p03, p6) = (5.25713, 5.22621, 5.14441, 4.88079, 2.74665);
        Assert.Equal(["a", "c"], Out(("c", p016), ("b", p6), ("a", p012), ("d", p03), ("e", null)));
        Assert.Empty(Out(("a", p013), ("b", p6), ("c", p016), ("d", p03)));
    }

    private static IEnumerable<string> Out(params (string Id, double? Value)[] checks) =>
        CheckRule
            .OutAfterCounting([
                .. checks.Select(c => new Check(
                    c.Id,
                    "stagger",
                    (c.Value ?? 9) * 1e-3,
                    1e-3,
                    c.Value is null ? null : 3e-3,
                    LimitSource.Own,
                    null,
                    null,
                    [],
                    true
                )),
            ])
            .Select(c => c.Id);
}
