namespace Plumbmark.Inspection.Floor.Changes;

/// <summary>One value at two moments.</summary>
/// <param name="Kind">sideShift, stagger, width, heightDifference, or the kind of a check.</param>
/// <param name="Points">The points it concerns.</param>
/// <param name="BeforeMetres">The value before, in metres, signed as the kind has it.</param>
/// <param name="AfterMetres">The value after.</param>
/// <param name="UMetres">Standard uncertainty of the difference, the two moments taken as measured independently.</param>
/// <param name="Finding">Whether it changed.</param>
/// <param name="VerdictBefore">The verdict before; null without a limit.</param>
/// <param name="VerdictAfter">The verdict after; null without a limit.</param>
public sealed record FrameChange(
    string Kind,
    IReadOnlyList<string> Points,
    double BeforeMetres,
    double AfterMetres,
    double UMetres,
    ChangeFinding Finding,
    Verdict? VerdictBefore,
    Verdict? VerdictAfter
)
{
    /// <summary>After minus before, in metres.</summary>
    public double ChangeMetres => AfterMetres - BeforeMetres;
}
