using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor;

/// <summary>One value held against its limit.</summary>
/// <param name="Id">Its name, such as <c>side-shift:A</c>.</param>
/// <param name="Kind">sideShift, stagger, width, heightDifference, twist, sag, deviation and so on.</param>
/// <param name="ValueMetres">The value, with its sign.</param>
/// <param name="UMetres">Its standard uncertainty.</param>
/// <param name="LimitMetres">The limit either way; null when none is known, and then there is no verdict.</param>
/// <param name="LimitSource">Whose limit it is; null when there is none.</param>
/// <param name="ProbabilityWithin">Probability that the true value is within the limit; null without a limit.</param>
/// <param name="Verdict">The verdict; null without a limit.</param>
/// <param name="Points">The points it concerns.</param>
/// <param name="MustBeTrue">Whether the frame can only be true when this check is: suspension, spring and steering.</param>
public sealed record Check(
    string Id,
    string Kind,
    double ValueMetres,
    double UMetres,
    double? LimitMetres,
    LimitSource? LimitSource,
    double? ProbabilityWithin,
    Verdict? Verdict,
    IReadOnlyList<string> Points,
    bool MustBeTrue
)
{
    /// <summary>What the most harmful error that would stay unnoticed would do to the value; null when no reading is checked by others.</summary>
    public HiddenError? Hidden { get; init; }

    /// <summary>
    /// How many repeats <see cref="UMetres"/> is worth; infinite when it is taken as known. Where repeats had a say, Student's t judges instead of the normal
    /// law.
    /// </summary>
    public double DegreesOfFreedom { get; init; } = double.PositiveInfinity;

    /// <summary>The same check with its probability and verdict, its uncertainty being worth so many repeats; with none where no limit is known.</summary>
    internal Check Judged(double degreesOfFreedom) =>
        this with
        {
            DegreesOfFreedom = degreesOfFreedom,
            ProbabilityWithin = LimitMetres is { } limit
                ? CheckRule.ProbabilityWithin(ValueMetres, UMetres, limit, degreesOfFreedom)
                : null,
            Verdict = LimitMetres is { } at ? CheckRule.VerdictOf(ValueMetres, UMetres, at, degreesOfFreedom) : null,
        };
}
