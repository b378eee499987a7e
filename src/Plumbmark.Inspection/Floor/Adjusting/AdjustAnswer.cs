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

    /// <summary>Solves the network of a car's readings.</summary>
    public static AdjustAnswer Of(CarFile car)
    {
        var solution = FrameSolution.Of(car);
        var suspects = DoubtWords.Of(car, FrameDoubts.Of(car, solution), LengthWords.For(car));
        return new AdjustAnswer(solution.Readings, solution.Outcome, suspects);
    }
}
