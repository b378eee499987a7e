using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>Asks of each check what an unnoticed error of one reading would do to it.</summary>
internal static class HiddenErrors
{
    /// <summary>The most harmful one; null when no reading is checked by others.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="gradient">What the check is a sum of: <see cref="CheckGradient"/>.</param>
    public static HiddenError? Of(NetworkFit fit, double[] gradient) =>
        fit.WorstUndetected(gradient) is var (reading, change) ? new HiddenError(reading, change) : null;
}
