using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>The whole plan for a frame: which lengths, heights and drops, in walking order.</summary>
public static class FloorPlanner
{
    private const int MostReadings = 400; // beyond that a frame is not measured in a day

    /// <summary>
    /// What to measure, from where the readings stand, until every suspension, spring and steering check of a sound frame would be settled to the
    /// limit.
    /// </summary>
    /// <param name="car">The car with its points drawn.</param>
    /// <param name="limits">The limits to settle to; null for the car's own, or what restorers call square when it has none.</param>
    /// <param name="options">Minutes per kind of reading.</param>
    public static MeasuringPlan For(CarFile car, Limits? limits = null, FloorOptions? options = null)
    {
        car = KnownPoints.Only(car);
        var chosenLimits = limits ?? car.Frame.Limits ?? PracticeLimit.Usual.Limits;
        var solution = FrameSolution.Of(car);
        var search = new PlanSearch(new PlanStart(car, solution.Readings, solution.Fit, [], chosenLimits, options ?? FloorOptions.Default));
        var chosen = search.Find(MostReadings);
        var isComplete = search is { HasTargets: true, IsAllInReach: true, IsSettled: true };
        return PlanWriting.Of(car, chosen, LimitOf(chosenLimits), isComplete);
    }

    private static double LimitOf(Limits limits) =>
        new[] { limits.Mirror, limits.Height, limits.Point }.Where(l => l is not null).Select(l => l!.Value.Metres).DefaultIfEmpty(0).Min();
}
