using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>Everything that the overall answer is made of.</summary>
/// <param name="Car">The car.</param>
/// <param name="Evaluation">What the believed readings say; null when they cannot be put together.</param>
/// <param name="Suspects">Readings and points not believed.</param>
/// <param name="Others">What would be said if the doubted readings were believed after all, or others doubted instead.</param>
/// <param name="Floating">Points that nothing ties to the rest.</param>
/// <param name="Comparisons">Lengths read on both sides.</param>
/// <param name="Next">What to measure next.</param>
internal sealed record OverallCase(
    CarFile Car,
    FrameEvaluation? Evaluation,
    IReadOnlyList<Suspect> Suspects,
    IReadOnlyList<Verdict> Others,
    IReadOnlyList<FloatingGroup> Floating,
    IReadOnlyList<SideComparison> Comparisons,
    IReadOnlyList<NextReading> Next
)
{
    /// <summary>
    /// The verdict: that of the believed readings, unless a doubt would change it. True must hold either way. Out needs only that no way says true:
    /// with a contradiction left among the readings everything is unsure, and that does not speak for the frame.
    /// </summary>
    public Verdict Verdict =>
        Evaluation?.Verdict switch
        {
            Verdict.True when Others.All(o => o == Verdict.True) => Verdict.True,
            Verdict.Out when !Others.Contains(Verdict.True) => Verdict.Out,
            _ => Verdict.CannotTellYet,
        };

    /// <summary>Why no figure fits the lengths, in sentences; empty when that is not known.</summary>
    public IReadOnlyList<string> NoFigure { get; init; } = [];

    /// <summary>The checks of the believed readings.</summary>
    public IReadOnlyList<Check> Checks => [.. (Evaluation?.Checks ?? []).Select(c => c.Check)];

    /// <summary>Whether any limit is known at all.</summary>
    public bool HasLimit => Car.Frame.Limits is not null and not { Mirror: null, Height: null, Point: null };
}
