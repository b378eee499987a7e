namespace Plumbmark.Inspection.Bench;

/// <summary>The loose parts of a car, and the variants that its owner knows of.</summary>
/// <param name="Items">The parts.</param>
/// <param name="Variants">What the book says of each type; the Book may hold more.</param>
public sealed record PartsSection(IReadOnlyList<Part> Items, IReadOnlyList<PartVariant> Variants)
{
    /// <summary>No parts.</summary>
    public static PartsSection Empty { get; } = new([], []);

    /// <summary>Parts put away from the bench with their measures, so that they come back whole; not written to a car file.</summary>
    internal IReadOnlyList<Part> Away { get; init; } = [];

    internal IReadOnlyList<Measure> PutAwayMeasures(string id) => Away.FirstOrDefault(p => p.Id == id)?.Measures ?? [];

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => Items.Count == 0 && Variants.Count == 0;

    /// <summary>The part of that name; null when there is none.</summary>
    public Part? Part(string id) => Items.FirstOrDefault(p => p.Id == id);

    /// <summary>Parts whose name or any of whose numbers contains what is looked for, blanks and strokes set aside.</summary>
    public IEnumerable<Part> Find(string text)
    {
        var wanted = Bare(text);
        return Items.Where(p =>
            wanted.Length == 0
            || Bare(p.Id).Contains(wanted, StringComparison.Ordinal)
            || Bare(p.Card.Name).Contains(wanted, StringComparison.Ordinal)
            || Bare(PartWords.For(p.Kind)).Contains(wanted, StringComparison.Ordinal)
            || p.Card.Numbers.Any(n => Bare(n.Text).Contains(wanted, StringComparison.Ordinal))
        );
    }

    internal static string Bare(string? text) => string.Concat((text ?? "").ToUpperInvariant().Where(char.IsLetterOrDigit));
}
