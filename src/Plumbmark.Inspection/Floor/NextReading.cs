namespace Plumbmark.Inspection.Floor;

/// <summary>A reading worth taking next.</summary>
/// <param name="Kind">plan, direct, height, rise, drop or repeat.</param>
/// <param name="From">Where it starts; null for a height or a drop.</param>
/// <param name="To">Where it ends; null for a height or a drop.</param>
/// <param name="Point">The point of a height or a drop; null otherwise.</param>
/// <param name="Settles">The checks and blind spots that it is expected to settle.</param>
/// <param name="Minutes">Minutes of work expected.</param>
/// <param name="Sentence">What to do and what it is good for.</param>
public sealed record NextReading(
    string Kind,
    string? From,
    string? To,
    string? Point,
    IReadOnlyList<string> Settles,
    double Minutes,
    string Sentence
)
{
    /// <summary>How often: drops of one point are planned together.</summary>
    public int Times { get; init; } = 1;
}
