using Microsoft.Extensions.Logging;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>What the readings of a car say, worked out once for each state of its journal.</summary>
/// <param name="workOut">From a car to its answer.</param>
/// <param name="log">Is told of what cannot be worked out.</param>
public sealed class FloorAnswers(Func<CarFile, FloorAnswer> workOut, ILogger<FloorAnswers> log)
{
    private readonly KeptAnswers<CarState, FloorAnswer> _answers = new("the frame", log);
    private readonly KeptAnswers<PlanAsked, MeasuringPlan> _plans = new("what to measure", log);

    // Limits and minutes are records and compare by what they say.
    private sealed record PlanAsked(CarState Car, Limits? Limits, ReadingMinutes Minutes);

    /// <summary>The plan for a car as it stands. It takes seconds for a fresh frame, so it is kept for whoever asks the same.</summary>
    /// <exception cref="NoAnswerException">It could not be worked out.</exception>
    public MeasuringPlan PlanFor(OpenCar car, Limits? limits, FloorOptions options) =>
        _plans.For(new PlanAsked(CarState.Of(car), limits, options.Minutes), () => FloorPlanner.For(car.File, limits, options));

    /// <summary>The answer for a car as it stands.</summary>
    /// <exception cref="NoAnswerException">It could not be worked out.</exception>
    public FloorAnswer For(OpenCar car) => _answers.For(CarState.Of(car), () => workOut(car.File));

    /// <summary>The answer for a page on which readings are entered: where none could be worked out, one that says so and nothing else.</summary>
    public FloorAnswer ForEntry(OpenCar car)
    {
        try
        {
            return For(car);
        }
        catch (NoAnswerException)
        {
            var overall = new OverallAnswer(Verdict.CannotTellYet, NoAnswerWords.Headline, NoAnswerWords.Why, []);
            return new FloorAnswer(overall, [], new AdjustmentSummary(0, null, null), [], [], [], [], [], [], [], []);
        }
    }
}
