using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>When a value counts as within its limit: true from 95 % on, out from 5 % down, otherwise can't tell yet.</summary>
/// <remarks>
/// ISO 14253-1:2017 (default conformance probability 95 %) and JCGM 106:2012, 7.4: the probability within -T to T of a normal value y with
/// standard uncertainty u is Φ((T - y) / u) - Φ((-T - y) / u).
/// </remarks>
internal static class CheckRule
{
    /// <summary>The probability asked for either way.</summary>
    public const double Asked = 0.95;

    /// <summary>How much family-wise error the frame as a whole may have.</summary>
    public const double FamilyError = 0.05;

    /// <summary>Probability that the true value lies within the limit either way.</summary>
    public static double ProbabilityWithin(double valueMetres, double uMetres, double limitMetres)
    {
        var value = Math.Abs(valueMetres);
        if (uMetres <= 0)
        {
            return value <= limitMetres ? 1 : 0;
        }

        return Math.Clamp(Normal.Cumulative((limitMetres - value) / uMetres) - Normal.Cumulative((-limitMetres - value) / uMetres), 0, 1);
    }

    /// <summary>The verdict that follows.</summary>
    public static Verdict VerdictOf(double probabilityWithin) =>
        probabilityWithin >= Asked ? Verdict.True
        : probabilityWithin <= 1 - Asked ? Verdict.Out
        : Verdict.CannotTellYet;

    /// <summary>
    /// The checks that are out after allowing for how many there were (Holm, Scandinavian Journal of Statistics 6, 1979, 65-70).
    /// </summary>
    public static IReadOnlyList<Check> OutAfterCounting(IReadOnlyList<Check> checks)
    {
        var judged = checks.Where(c => c.ProbabilityWithin is not null).Select(c => (Check: c, P: NotBeyond(c))).OrderBy(c => c.P).ToList();
        var left = judged.Count;
        return [.. judged.TakeWhile(c => c.P <= FamilyError / left--).Select(c => c.Check)];
    }

    /// <summary>
    /// Probability that the value is not beyond the limit on the side where it reads. Where u is small beside the limit this is P(within); where it is
    /// large, P(within) is small for want of knowledge alone, and that must not call a frame out.
    /// </summary>
    private static double NotBeyond(Check check) =>
        check.UMetres > 0
            ? Normal.Cumulative((check.LimitMetres!.Value - Math.Abs(check.ValueMetres)) / check.UMetres)
            : check.ProbabilityWithin!.Value;
}
