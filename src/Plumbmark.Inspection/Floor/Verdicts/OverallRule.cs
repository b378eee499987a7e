namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>The verdict on the frame as a whole.</summary>
/// <remarks>
/// Out if any check is out after allowing for how many there were; true only if every suspension, spring and steering check is true and
/// there is no blind spot; otherwise can't tell yet. A check without a limit gives no verdict, and then the frame has none.
/// </remarks>
internal static class OverallRule
{
    public static Verdict VerdictOf(IReadOnlyList<Check> checks, IReadOnlyList<BlindSpot> blind)
    {
        if (CheckRule.OutAfterCounting(checks).Count > 0)
        {
            return Verdict.Out;
        }

        var needed = checks.Where(c => c.MustBeTrue).ToList();
        return needed.Count > 0 && needed.TrueForAll(c => c.Verdict == Verdict.True) && blind.Count == 0
            ? Verdict.True
            : Verdict.CannotTellYet;
    }
}
