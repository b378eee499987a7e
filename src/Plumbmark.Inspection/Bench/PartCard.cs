namespace Plumbmark.Inspection.Bench;

/// <summary>What is known of a part besides its measurements, as it would stand on the tag tied to it.</summary>
/// <param name="Name">What its owner calls it; null when the kind is enough.</param>
/// <param name="Numbers">Numbers cast, stamped or written on it.</param>
/// <param name="Source">Where it came from; null when not told.</param>
/// <param name="Photos">Names of photos kept with the car, the first one the one that is shown.</param>
/// <param name="History">What happened to it, oldest first.</param>
public sealed record PartCard(
    string? Name = null,
    IReadOnlyList<CardNumber>? Numbers = null,
    string? Source = null,
    IReadOnlyList<string>? Photos = null,
    IReadOnlyList<string>? History = null
)
{
    /// <summary>An empty card.</summary>
    public static PartCard Empty { get; } = new();

    /// <summary>Numbers found on the part; empty when none.</summary>
    public IReadOnlyList<CardNumber> Numbers { get; init; } = Numbers ?? [];

    /// <summary>Photos; empty when none.</summary>
    public IReadOnlyList<string> Photos { get; init; } = Photos ?? [];

    /// <summary>What happened to it; empty when nothing is told.</summary>
    public IReadOnlyList<string> History { get; init; } = History ?? [];
}
