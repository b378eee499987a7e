using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>A dimension held against something: the book, the other side, or nothing at all where it should be nothing.</summary>
/// <remarks>The verdict is that of ISO 14253-1 and JCGM 106: true from a probability of 0.95 of being within, out up to 0.05, otherwise can't tell yet.</remarks>
/// <param name="Against">Against what.</param>
/// <param name="Reference">The variant or the partner's name; null when it should be nothing.</param>
/// <param name="Nominal">What it is held against, in the dimension's unit; null when it should be nothing.</param>
/// <param name="Deviation">How far it is from there, in the dimension's unit.</param>
/// <param name="U">Standard uncertainty of the deviation.</param>
/// <param name="Limit">The limit; null when none is known.</param>
/// <param name="ProbabilityWithin">Probability that the true deviation is within the limit; null without one.</param>
/// <param name="Verdict">The verdict; null without a limit.</param>
public sealed record Comparison(
    ComparedWith Against,
    string? Reference,
    double? Nominal,
    double Deviation,
    double U,
    UsedLimit? Limit,
    double? ProbabilityWithin,
    Verdict? Verdict
)
{
    /// <summary>The part that an out difference between the sides is put down to when it is not this one; null otherwise.</summary>
    public string? PutDownTo { get; init; }

    /// <summary>
    /// Probability of not being beyond the limit on the side where the deviation reads; null without a limit. Where u is large beside the limit, <see cref="ProbabilityWithin"/> is small for want of knowledge
    /// alone, and that must call nothing out.
    /// </summary>
    internal double? NotBeyond { get; init; }

    /// <summary>Compares a deviation with a limit; without one there is no verdict, only the number.</summary>
    internal static Comparison Of(
        ComparedWith against,
        string? reference,
        double? nominal,
        double deviation,
        double u,
        UsedLimit? limit,
        DimensionNature nature
    )
    {
        if (limit is null)
        {
            return new Comparison(against, reference, nominal, deviation, u, null, null, null);
        }

        var (within, beyond) = (Probability(deviation, u, limit.Si, nature), NotBeyondOf(deviation, u, limit.Si, nature));
        return new Comparison(against, reference, nominal, deviation, u, limit, within, VerdictOf(within, beyond)) { NotBeyond = beyond };
    }

    private static Verdict VerdictOf(double within, double notBeyond) =>
        DecisionRule.Default.Decide(within) == Conformity.Conforms ? Floor.Verdict.True
        : DecisionRule.Default.Decide(notBeyond) == Conformity.DoesNotConform ? Floor.Verdict.Out
        : Floor.Verdict.CannotTellYet;

    private static double NotBeyondOf(double deviation, double u, double limit, DimensionNature nature) =>
        nature is DimensionNature.Clearance or DimensionNature.Grip
            ? Probability(deviation, u, limit, nature)
            : ConformityProbability.AtMost(Math.Abs(deviation), u, limit);

    private static double Probability(double deviation, double u, double limit, DimensionNature nature) =>
        nature switch
        {
            DimensionNature.Clearance => ConformityProbability.AtMost(deviation, u, limit),
            DimensionNature.Grip => ConformityProbability.AtLeast(deviation, u, limit),
            _ => ConformityProbability.Between(deviation, u, -limit, limit),
        };
}
