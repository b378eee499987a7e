namespace Plumbmark.Inspection.Road;

/// <summary>Everything a car file says about the wheels: how the suspension is drawn, what the book asks, which parts are off their drawing, what can be adjusted, what was read.</summary>
/// <param name="Front">The front suspension as drawn; null when not told.</param>
/// <param name="Rear">The rear suspension; null when not told.</param>
/// <param name="Book">The angles and lengths the book asks for, with their limits.</param>
/// <param name="Parts">Parts and places measured off their drawing.</param>
/// <param name="Adjusters">What can be adjusted and how far.</param>
/// <param name="Wheels">The readings of the wheel check, in the order taken, those taken back included.</param>
public sealed record RoadSection(
    FrontDrawing? Front,
    RearDrawing? Rear,
    IReadOnlyList<AskedFigure> Book,
    IReadOnlyList<PartDeviation> Parts,
    IReadOnlyList<Adjuster> Adjusters,
    IReadOnlyList<WheelReading> Wheels
)
{
    /// <summary>What is allowed for what nobody has measured; null for the usual allowance.</summary>
    public UnmeasuredAllowance? Unmeasured { get; init; }

    /// <summary>A section with nothing in it.</summary>
    public static RoadSection Empty { get; } = new(null, null, [], [], [], []);
}
