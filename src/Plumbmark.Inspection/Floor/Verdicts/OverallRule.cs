using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>The verdict on the frame as a whole, with its reasons.</summary>
/// <remarks>
/// Out if any check is out after allowing for how many there were; true only if every suspension, spring and steering check is true and
/// there is no blind spot; otherwise can't tell yet. Without a limit there is no verdict.
/// </remarks>
internal static class OverallRule
{
    public static OverallAnswer Of(CarFile car, IReadOnlyList<Check> checks, IReadOnlyList<BlindSpot> blind, LengthWords words)
    {
        var output = CheckRule.OutAfterCounting(checks);
        if (output.Count > 0)
        {
            return new OverallAnswer(Verdict.Out, "The frame is out.", [.. output.Select(c => OverallWords.CheckOut(c, words))], []);
        }

        var needed = checks.Where(c => c.MustBeTrue).ToList();
        if (car.Frame.Limits is null or { Mirror: null, Height: null, Point: null } || needed.Any(c => c.LimitMetres is null))
        {
            return new OverallAnswer(Verdict.CannotTellYet, "Can't tell yet: no limit is known.", [OverallWords.NoLimit], []);
        }

        var unsettled = needed.Where(c => c.Verdict != Verdict.True).ToList();
        if (needed.Count > 0 && unsettled.Count == 0 && blind.Count == 0)
        {
            return new OverallAnswer(Verdict.True, "The frame is true.", [OverallWords.AllTrue(needed.Count)], []);
        }

        return new OverallAnswer(
            Verdict.CannotTellYet,
            "Can't tell yet.",
            [.. unsettled.Select(c => OverallWords.Unsettled(c, words)), .. blind.Select(b => b.Sentence)],
            []
        );
    }
}
