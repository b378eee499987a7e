using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Doubts;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>A network solved by itself, with no word about frames: what <c>plumbmark adjust</c> prints.</summary>
/// <param name="Network">What went in.</param>
/// <param name="Outcome">What came of it.</param>
/// <param name="Suspects">Readings and points that the fit does not believe, each with its reason; nothing is left out of the fit for it.</param>
public sealed record AdjustAnswer(FrameNetwork Network, NetworkOutcome Outcome, IReadOnlyList<Suspect> Suspects)
{
    /// <summary>Whether every point touched by a reading has been placed.</summary>
    public bool IsComplete => Outcome is NetworkOutcome.Adjusted;

    /// <summary>Whether marks were taken as the points themselves, because the file does not speak of plumb drops.</summary>
    public bool MarksArePoints { get; init; }

    /// <summary>Solves the network of a car's readings.</summary>
    /// <remarks>
    /// That a point hangs over its mark by a plumb line is an assumption about frames. A file that states no dropSigma and holds no drop is solved without it,
    /// as a surveyor's network.
    /// </remarks>
    public static AdjustAnswer Of(CarFile car)
    {
        var speaksOfDrops =
            car.Frame.Points.Any(p => p.DropSigma is not null || p.CannotDrop)
            || car.Readings.Any(r => r is Reading.Drop or Reading.Indirect);
        if (!speaksOfDrops)
        {
            var points = car.Frame.Points.Select(p => p with { DropSigma = Engine.Lengths.Length.Zero });
            car = car with { Frame = car.Frame with { Points = [.. points] } };
        }

        var solution = FrameSolution.Of(car);
        var suspects = DoubtWords.Of(car, FrameDoubts.Of(car, solution), LengthWords.For(car));
        return new AdjustAnswer(solution.Readings, solution.Outcome, suspects) { MarksArePoints = !speaksOfDrops };
    }
}
