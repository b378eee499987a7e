using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>
/// Which of two partners a difference between them belongs to. Only something outside the comparison can say: the book's figure for either of them, or one of them
/// being bent by measures of its own (a bow, a twist) while the other is true by the same.
/// </summary>
internal static class SideBlame
{
    /// <summary>Marks differences that are put down to the partner.</summary>
    public static IReadOnlyList<DimensionAnswer> Mark(BenchCase part, IReadOnlyList<DimensionAnswer> dimensions) =>
        [
            .. dimensions.Select(d =>
                d with
                {
                    Comparisons =
                    [
                        .. d.Comparisons.Select(c =>
                            c is { Against: ComparedWith.Mirror, Verdict: not (null or Verdict.True) }
                            && IsThePartner(part, dimensions, d.Value.Dimension)
                                ? c with
                                {
                                    PutDownTo = part.Partner!.Part.Id,
                                }
                                : c
                        ),
                    ],
                }
            ),
        ];

    /// <summary>Whether a difference is this part's own.</summary>
    public static bool IsThisOne(BenchCase part, IReadOnlyList<DimensionAnswer> dimensions, string dimension) =>
        ByBook(dimensions, dimension) == Verdict.Out || IsCleared(Partner(part), dimension, dimensions);

    private static bool IsThePartner(BenchCase part, IReadOnlyList<DimensionAnswer> dimensions, string dimension) =>
        part.Partner is not null && IsCleared(dimensions, dimension, Partner(part));

    // The first is right by the book; or the book is silent, and by measures of its own the first is true and the second bent.
    private static bool IsCleared(IReadOnlyList<DimensionAnswer> first, string dimension, IReadOnlyList<DimensionAnswer> second) =>
        ByBook(first, dimension) is { } book
            ? book == Verdict.True
            : ByBook(second, dimension) is null && Trueness(first) == Verdict.True && Trueness(second) == Verdict.Out;

    private static IReadOnlyList<DimensionAnswer> Partner(BenchCase part) =>
        part.Partner is { } partner ? PartComparisons.Of(partner with { Partner = null }) : [];

    private static Verdict? ByBook(IReadOnlyList<DimensionAnswer> dimensions, string dimension) =>
        dimensions
            .FirstOrDefault(d => d.Value.Dimension == dimension)
            ?.Comparisons.FirstOrDefault(c => c.Against == ComparedWith.Book)
            ?.Verdict;

    private static Verdict? Trueness(IReadOnlyList<DimensionAnswer> dimensions)
    {
        var verdicts = dimensions
            .Where(d => d.Value.Nature == DimensionNature.Trueness)
            .SelectMany(d => d.Comparisons)
            .Where(c => c.Against == ComparedWith.Itself && c.Verdict is not null)
            .Select(c => c.Verdict)
            .ToList();
        return verdicts.Count == 0 ? null
            : verdicts.Contains(Verdict.Out) ? Verdict.Out
            : verdicts.All(v => v == Verdict.True) ? Verdict.True
            : Verdict.CannotTellYet;
    }
}
