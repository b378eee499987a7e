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
    /// <remarks>
    /// A frame of very many points is planned for those that matter most, spread along it, and the sentence says so: a search over every length would
    /// take minutes.
    /// </remarks>
    /// <param name="car">The car with its points drawn.</param>
    /// <param name="limits">The limits to settle to; null for the car's own, or what restorers call square when it has none.</param>
    /// <param name="options">Minutes per kind of reading.</param>
    public static MeasuringPlan For(CarFile car, Limits? limits = null, FloorOptions? options = null)
    {
        var leftAside = PointsToPlan.LeftAside(car.Frame.Points);
        car = KnownPoints.Only(car with { Frame = car.Frame with { Points = [.. car.Frame.Points.Except(leftAside)] } });
        var chosenLimits = limits ?? car.Frame.Limits ?? PracticeLimit.Usual.Limits;
        var solution = FrameSolution.Of(car);
        var search = new PlanSearch(new PlanStart(car, solution.Readings, solution.Fit, [], chosenLimits, options ?? FloorOptions.Default));
        var chosen = search.Find(MostReadings);
        var isComplete = search is { HasTargets: true, IsAllInReach: true, IsSettled: true };
        var plan = PlanWriting.Of(car, chosen, LimitOf(chosenLimits), isComplete);
        return leftAside.Count == 0
            ? plan
            : plan with
            {
                Sentence = $"{plan.Sentence} {PlanWords.LeftAside(leftAside.Count, car.Frame.Points.Count)}",
            };
    }

    private static double LimitOf(Limits limits) =>
        new[] { limits.Mirror, limits.Height, limits.Point }.Where(l => l is not null).Select(l => l!.Value.Metres).DefaultIfEmpty(0).Min();
}
