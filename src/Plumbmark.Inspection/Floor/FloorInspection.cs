using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor;

/// <summary>Is this frame true? The one way from a car file to a <see cref="FloorAnswer"/>.</summary>
public static class FloorInspection
{
    /// <summary>What the readings that stand say about the frame so far. Never fails on a readable file: too little is an answer.</summary>
    public static FloorAnswer Of(CarFile car, FloorOptions? options = null)
    {
        options ??= FloorOptions.Default;
        var words = LengthWords.For(car);
        var solution = FrameSolution.Of(car);
        if (solution.Fit is not { } fit)
        {
            var standing = car.StandingReadings.Count();
            var why = standing == 0 ? "No reading has been taken yet." : "The readings cannot be put together yet.";
            return Nothing(why);
        }

        var frame = FramePlacing.InOwnAxes(MeasuredFrameOfFit.Of(car.Frame.Points, fit), []);
        var explanations = FormComparison.Of(frame, Contrasts.Of(frame));
        var damage = DamageReport.MovesOf(explanations);
        frame = damage.Count > 0 ? FramePlacing.InOwnAxes(frame, damage) : frame;
        var contrasts = Contrasts.Of(frame);
        var lie = FrameLie.Of(frame, contrasts, damage);
        var checks = FrameChecks.Of(frame, contrasts, lie, car.Frame.Limits);
        var blind = FrameBlindSpots.Of(frame, contrasts, checks, car.Frame.Limits, words);
        var all = checks.Select(c => c.Check).ToList();
        return new FloorAnswer(
            OverallRule.Of(car, all, blind, words),
            FramePoints.Of(frame, contrasts, lie),
            new AdjustmentSummary(fit.Redundancy, fit.VarianceFactor, fit.ChiSquareProbability),
            [
                .. fit.Readings.Select(r => new ReadingFit(
                    r.Id,
                    r.ResidualMetres,
                    r.Standardised,
                    r.RedundancyNumber,
                    r.MinimalDetectableMetres,
                    r.SigmaMetres
                )),
            ],
            [],
            FramePairEstimates.Of(frame, all),
            SideComparisons.Of(car, solution.Network, new HashSet<string>(), words),
            DamageReport.Of(explanations, words),
            all,
            blind,
            NextReadings.Of(car, solution, all, options)
        );
    }

    private static FloorAnswer Nothing(string why) =>
        new(
            new OverallAnswer(Verdict.CannotTellYet, "Can't tell yet.", [why], []),
            [],
            new AdjustmentSummary(0, null, null),
            [],
            [],
            [],
            [],
            [],
            [],
            [],
            []
        );
}
