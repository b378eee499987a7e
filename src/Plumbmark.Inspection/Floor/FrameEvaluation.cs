using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor;

/// <summary>What one set of readings, fitted, says about the frame; which readings to believe is decided by whoever asks.</summary>
/// <param name="Frame">The points in the frame's own axes.</param>
/// <param name="Contrasts">Everything compared.</param>
/// <param name="Lie">How the frame lies.</param>
/// <param name="Explanations">What may have happened to it, most believed first.</param>
/// <param name="Checks">Everything held against a limit.</param>
/// <param name="Sight">For each form and point the smallest damage that would show.</param>
/// <param name="Spread">By how much all uncertainties were enlarged, because the readings disagree more than their tools explain; 1 when they do not.</param>
internal sealed record FrameEvaluation(
    MeasuredFrame Frame,
    Contrasts Contrasts,
    FrameLie Lie,
    IReadOnlyList<DamageExplanation> Explanations,
    IReadOnlyList<FrameCheck> Checks,
    IReadOnlyList<BlindSpot> Sight,
    double Spread
)
{
    // A misfit so large comes once in a hundred by the tools' own errors.
    private const double RareMisfit = 0.01;

    /// <summary>The damage that could hide beyond its limit.</summary>
    public IReadOnlyList<BlindSpot> Blind => [.. Sight.Where(s => !(s.SmallestSeenMetres <= s.LimitMetres))];

    /// <summary>The verdict by the rule, were there nothing else to say.</summary>
    public Verdict Verdict => OverallRule.VerdictOf([.. Checks.Select(c => c.Check)], Blind);

    /// <summary>Evaluates a fit.</summary>
    /// <param name="car">The car.</param>
    /// <param name="fit">The fit of the readings that are believed.</param>
    /// <param name="readings">How sure its readings are, and where that is from.</param>
    public static FrameEvaluation Of(CarFile car, NetworkFit fit, FrameNetwork readings)
    {
        var spread = fit is { ChiSquareProbability: < RareMisfit, Sigma0: > 1 and var sigma0 } ? sigma0 : 1;
        var measured = MeasuredFrameOfFit.Of(car.Frame.Points, fit);
        var frame = FramePlacing.InOwnAxes(spread > 1 ? measured.WithUncertaintyTimes(spread) : measured, []);
        var explanations = FormComparison.Of(frame, Contrasts.Of(frame));
        var damage = DamageReport.MovesOf(explanations);
        frame = damage.Count > 0 ? FramePlacing.InOwnAxes(frame, damage) : frame;
        var contrasts = Contrasts.Of(frame);
        var lie = FrameLie.Of(frame, contrasts, damage);
        return new FrameEvaluation(
            frame,
            contrasts,
            lie,
            explanations,
            [.. FrameChecks.Of(frame, contrasts, lie, car.Frame.Limits, explanations).Select(c => Judged(c, frame, fit, readings))],
            FrameBlindSpots.Of(frame, contrasts, lie, car.Frame.Limits),
            spread
        );
    }

    // A form of damage is known from all readings together; it has no weights of its own.
    private static FrameCheck Judged(FrameCheck check, MeasuredFrame frame, NetworkFit fit, FrameNetwork readings)
    {
        if (check.Weights.Length != frame.Values.Length)
        {
            return check;
        }

        var gradient = CheckGradient.Of(frame, fit, check.Weights);
        var degrees = fit.DegreesOfFreedomOf(gradient, readings.LearntSpreadOf, readings.LearntDropsOf);
        var hidden = fit.WorstUndetected(gradient) is var (reading, change) ? new HiddenError(reading, change) : null;
        return check with { Check = check.Check.Judged(degrees) with { Hidden = hidden } };
    }
}
