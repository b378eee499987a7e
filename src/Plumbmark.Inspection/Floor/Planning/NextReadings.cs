using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>The readings worth taking next, best first.</summary>
internal static class NextReadings
{
    public static IReadOnlyList<NextReading> Of(CarFile car, FrameSolution solution, IReadOnlyList<Check> known, FloorOptions options)
    {
        if (options.NextReadings == 0)
        {
            return [];
        }

        // Without a limit there is no verdict to work for; what restorers call square keeps the order sensible.
        var limits = car.Frame.Limits ?? PracticeLimit.Usual.Limits;
        var planner = new ReadingPlanner(new PlanStart(car, solution.Readings, solution.Fit, known, limits, options));
        return [.. planner.Choose(options.NextReadings).Select(PlanWriting.AsNext)];
    }
}
