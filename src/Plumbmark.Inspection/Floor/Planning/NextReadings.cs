using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>The readings worth taking next, best first.</summary>
internal static class NextReadings
{
    // All of a frame of sixty points, and a second's work on one of two hundred.
    private const int MostTried = 2000;

    public static IReadOnlyList<NextReading> Of(CarFile car, FrameSolution solution, IReadOnlyList<Check> known, FloorOptions options)
    {
        if (options.NextReadings == 0)
        {
            return [];
        }

        // Without a limit there is no verdict to work for; what restorers call square keeps the order sensible.
        var limits = car.Frame.Limits ?? PracticeLimit.Usual.Limits;
        var start = new PlanStart(car, solution.Readings, solution.Fit, known, limits, options);
        var left = start.KeepThoseThatTellMost(MostTried);
        List<NextReading> next = [.. new ReadingPlanner(start).Choose(options.NextReadings).Select(PlanWriting.AsNext)];
        return left == 0 ? next : [.. next.Select(n => n with { Sentence = $"{n.Sentence} {PlanWords.NotTried(left)}" })];
    }
}
