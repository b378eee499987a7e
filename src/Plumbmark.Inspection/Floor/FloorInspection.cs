using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Contradictions;
using Plumbmark.Inspection.Floor.Doubts;
using Plumbmark.Inspection.Floor.Forms;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Inspection.Floor.Verdicts;

namespace Plumbmark.Inspection.Floor;

/// <summary>Is this frame true? The one way from a car file to a <see cref="FloorAnswer"/>.</summary>
public static class FloorInspection
{
    /// <summary>What the readings that stand say about the frame so far. Never fails on a readable file: too little is an answer.</summary>
    /// <param name="car">The car.</param>
    /// <param name="options">What the person chose; null for the usual.</param>
    public static FloorAnswer Of(CarFile car, FloorOptions? options = null)
    {
        options ??= FloorOptions.Default;
        car = KnownPoints.Only(car);
        var words = LengthWords.For(car);
        var solution = FrameSolution.Of(car);
        var doubts = FrameDoubts.Of(car, solution);
        var suspects = DoubtWords.Of(car, doubts, words);
        var evaluation = doubts.Believed is null ? null : FrameEvaluation.Of(car, doubts.Believed, solution.Readings);
        var others = doubts.Others.Select(fit => FrameEvaluation.Of(car, fit, solution.Readings).Verdict).ToList();
        var doubted = suspects.Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var comparisons = SideComparisons.Of(car, solution.Network, doubted, words);
        List<Check> checks = [.. (evaluation?.Checks ?? []).Select(c => c.Check)];
        var isUnexplained = evaluation is null || (!doubts.IsLocated && evaluation.Spread > 1);
        var contradictions = isUnexplained ? LengthContradictions.Of(solution.Network) : [];
        var culprits = LengthContradictions.Culprits(contradictions, solution.Network);
        List<NextReading> next =
        [
            .. SecondLooks.At(car, [.. suspects.Where(s => !s.IsSettled)], options),
            .. culprits.Select(c => Again(c, options)),
            .. NextReadings.Of(car, solution, checks, options),
        ];
        var overall = OverallWords.Answer(
            new OverallCase(car, evaluation, suspects, others, solution.Floating, comparisons, next)
            {
                NoFigure = NoFigure(solution, contradictions, culprits, words),
            },
            words
        );
        return new FloorAnswer(
            overall,
            evaluation is null ? [] : FramePoints.Of(evaluation.Frame, evaluation.Contrasts, evaluation.Lie),
            Summary(solution.Fit),
            Readings(solution.Fit),
            suspects,
            evaluation is null ? [] : FramePairEstimates.Of(evaluation.Frame, checks),
            comparisons,
            evaluation is null ? [] : DamageReport.Of(evaluation.Explanations, words),
            checks,
            evaluation?.Blind ?? [],
            next
        )
        {
            Sight = evaluation?.Sight ?? [],
            LookAlikes = evaluation is null ? [] : LookAlikeSearch.Of(car, evaluation, words),
        };
    }

    private static IReadOnlyList<string> NoFigure(
        FrameSolution solution,
        IReadOnlyList<Contradiction> contradictions,
        IReadOnlyList<Observation.PlanDistance> culprits,
        LengthWords words
    ) =>
        contradictions.Count > 0 ? [.. ContradictionWords.Of(contradictions, culprits, words)]
        : solution.Outcome is NetworkOutcome.NotConverged lost ? [NetworkWords.NotConverged(lost.Summary.Iterations.Count)]
        : [];

    private static NextReading Again(Observation.PlanDistance length, FloorOptions options) =>
        new("plan", length.From, length.To, null, [$"doubt:{length.Id}"], options.Minutes.Plan, ContradictionWords.Again(length));

    private static AdjustmentSummary Summary(NetworkFit? fit) =>
        fit is null ? new(0, null, null) : new(fit.Redundancy, fit.VarianceFactor, fit.ChiSquareProbability);

    private static IReadOnlyList<ReadingFit> Readings(NetworkFit? fit) =>
        [
            .. (fit?.Readings ?? []).Select(r => new ReadingFit(
                r.Id,
                r.ResidualMetres,
                r.Standardised,
                r.RedundancyNumber,
                r.MinimalDetectableMetres,
                r.SigmaMetres
            )),
        ];
}
