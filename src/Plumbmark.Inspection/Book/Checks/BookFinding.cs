using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>One thing a page says against itself, or leaves open, with the slips that would explain it.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Dimensions">The figures it is about, by their names on the page.</param>
/// <param name="Sentence">The finding in one or two sentences.</param>
/// <param name="Slips">Slips that would explain it, likeliest first; empty when no usual slip does.</param>
public sealed record BookFinding(FindingKind Kind, IReadOnlyList<string> Dimensions, string Sentence, IReadOnlyList<LikelySlip> Slips)
{
    /// <summary>More slips than this are not told: the page cannot say which it is.</summary>
    internal const int MostSlips = 4;

    /// <summary>Whether the page contradicts itself; otherwise it only leaves something open.</summary>
    public bool IsContradiction => Kind is not (FindingKind.SerialGap or FindingKind.SenseUnsaid or FindingKind.SerialsUnordered);

    /// <summary>The sentence with the likely slips behind it.</summary>
    public override string ToString() =>
        Slips.Count == 0
            ? Sentence
            : Texts.Say("book.finding.likely-slip", Sentence, string.Join(Texts.Say("book.finding.or"), Slips.Select(s => s.Words)));

    internal static BookFinding Of(
        FindingKind kind,
        IEnumerable<string> dimensions,
        string sentence,
        IEnumerable<LikelySlip>? slips = null
    ) => new(kind, [.. dimensions.Distinct(StringComparer.Ordinal)], sentence, [.. (slips ?? []).OrderBy(s => s.Kind).Take(MostSlips)]);
}
