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
        double? probability = limit is null ? null : Probability(deviation, u, limit.Si, nature);
        return new Comparison(against, reference, nominal, deviation, u, limit, probability, probability is { } p ? VerdictOf(p) : null);
    }

    internal static Verdict VerdictOf(double probabilityWithin) =>
        DecisionRule.Default.Decide(probabilityWithin) switch
        {
            Conformity.Conforms => Floor.Verdict.True,
            Conformity.DoesNotConform => Floor.Verdict.Out,
            _ => Floor.Verdict.CannotTellYet,
        };

    private static double Probability(double deviation, double u, double limit, DimensionNature nature) =>
        nature switch
        {
            DimensionNature.Clearance => ConformityProbability.AtMost(deviation, u, limit),
            DimensionNature.Grip => ConformityProbability.AtLeast(deviation, u, limit),
            _ => ConformityProbability.Between(deviation, u, -limit, limit),
        };
}
