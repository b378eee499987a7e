using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>When a value counts as within its limit: true from 95 % on, out from 5 % down, otherwise can't tell yet.</summary>
/// <remarks>
/// ISO 14253-1:2017 (default conformance probability 95 %: <see cref="DecisionRule.Default"/>) and JCGM 106:2012, 7.4
/// (<see cref="ConformityProbability"/>); over the checks of a frame <see cref="HolmStepDown"/>.
/// </remarks>
internal static class CheckRule
{
    /// <summary>The probability asked for either way.</summary>
    public static double Asked => DecisionRule.Default.Probability;

    /// <summary>How much family-wise error the frame as a whole may have.</summary>
    public const double FamilyError = 0.05;

    /// <summary>Probability that the true value lies within the limit either way; of an endless uncertainty none.</summary>
    public static double ProbabilityWithin(
        double valueMetres,
        double uMetres,
        double limitMetres,
        double degreesOfFreedom = double.PositiveInfinity
    ) => double.IsFinite(uMetres) ? ConformityProbability.Between(valueMetres, uMetres, -limitMetres, limitMetres, degreesOfFreedom) : 0;

    /// <summary>
    /// Probability that the value is not beyond the limit on the side where it reads. Where u is small beside the limit this is P(within); where it is
    /// large, P(within) is small for want of knowledge alone, and that must call nothing out.
    /// </summary>
    public static double NotBeyond(
        double valueMetres,
        double uMetres,
        double limitMetres,
        double degreesOfFreedom = double.PositiveInfinity
    ) => double.IsFinite(uMetres) ? ConformityProbability.AtMost(Math.Abs(valueMetres), uMetres, limitMetres, degreesOfFreedom) : 1;

    /// <summary>The verdict on one value.</summary>
    public static Verdict VerdictOf(
        double valueMetres,
        double uMetres,
        double limitMetres,
        double degreesOfFreedom = double.PositiveInfinity
    ) =>
        DecisionRule.Default.Decide(ProbabilityWithin(valueMetres, uMetres, limitMetres, degreesOfFreedom)) switch
        {
            Conformity.Conforms => Verdict.True,
            Conformity.DoesNotConform when NotBeyond(valueMetres, uMetres, limitMetres, degreesOfFreedom) <= 1 - Asked => Verdict.Out,
            _ => Verdict.CannotTellYet,
        };

    /// <summary>The checks that are out after allowing for how many there were, the clearest first.</summary>
    public static IReadOnlyList<Check> OutAfterCounting(IReadOnlyList<Check> checks)
    {
        var judged = checks
            .Where(c => c.LimitMetres is not null)
            .Select(c => (Check: c, P: NotBeyond(c.ValueMetres, c.UMetres, c.LimitMetres!.Value, c.DegreesOfFreedom)))
            .OrderBy(c => c.P)
            .ToList();
        var adjusted = HolmStepDown.Adjusted(judged.ConvertAll(c => c.P));
        return [.. judged.Where((_, i) => adjusted[i] <= FamilyError).Select(c => c.Check)];
    }
}
