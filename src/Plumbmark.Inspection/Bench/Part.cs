namespace Plumbmark.Inspection.Bench;

/// <summary>One loose part with everything measured on it. Its left and right are the car's own.</summary>
/// <param name="Id">Its name in the file, such as <c>lever.L</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Make">How it was made; null when not told.</param>
/// <param name="Mirror">The part of the other side; null when there is none or it is not here.</param>
/// <param name="Card">Numbers, source, photos, history.</param>
/// <param name="Conditions">What was seen on it.</param>
/// <param name="ClearBy">How it was last looked over for cracks with nothing found, which means not found, not none; null when it was not. A crack that was found is <see cref="PartCondition.Cracked"/>.</param>
/// <param name="Measures">Everything measured, in the order taken, those taken back included.</param>
/// <param name="Limits">Limits its owner knows or chooses; they go before those of practice.</param>
public sealed record Part(
    string Id,
    PartKind Kind,
    PartMake? Make = null,
    string? Mirror = null,
    PartCard? Card = null,
    IReadOnlyList<PartCondition>? Conditions = null,
    CrackMethod? ClearBy = null,
    IReadOnlyList<Measure>? Measures = null,
    IReadOnlyList<PartLimit>? Limits = null
)
{
    /// <summary>Numbers, source, photos, history.</summary>
    public PartCard Card { get; init; } = Card ?? PartCard.Empty;

    /// <summary>What was seen on it; empty when nothing was.</summary>
    public IReadOnlyList<PartCondition> Conditions { get; init; } = Conditions ?? [];

    /// <summary>Everything measured.</summary>
    public IReadOnlyList<Measure> Measures { get; init; } = Measures ?? [];

    /// <summary>The owner's limits.</summary>
    public IReadOnlyList<PartLimit> Limits { get; init; } = Limits ?? [];

    /// <summary>The measures that stand.</summary>
    public IEnumerable<Measure> StandingMeasures => Measures.Where(m => m.Withdrawn is null);

    /// <summary>Whether this was seen on the part.</summary>
    public bool Is(PartCondition condition) => Conditions.Contains(condition);
}
