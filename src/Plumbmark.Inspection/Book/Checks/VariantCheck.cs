using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Where one thing has several figures: is every car meant by one of them, and none by two that differ?</summary>
internal static class VariantCheck
{
    public static IEnumerable<BookFinding> Of(BookPage page) =>
        page
            .Dimensions.Where(d => d.Subject is not BookSubject.Named || !d.AppliesTo.IsEveryCar)
            .GroupBy(d => Thing(d.Subject))
            .Where(g => g.Count() > 1)
            .SelectMany(g => TwoFigures([.. g]).Concat(g.GroupBy(Asked, StringComparer.Ordinal).SelectMany(same => Gaps([.. same]))));

    /// <summary>What competes: variants of one part are figures for one thing.</summary>
    internal static BookSubject Thing(BookSubject subject) =>
        subject is BookSubject.OfPart part ? part with { Variant = null } : subject.Ordered;

    private static IEnumerable<BookFinding> TwoFigures(IReadOnlyList<BookDimension> figures) =>
        from i in Enumerable.Range(0, figures.Count)
        from j in Enumerable.Range(i + 1, figures.Count - i - 1)
        let a = figures[i]
        let b = figures[j]
        where a.Used is { } x && b.Used is { } y && !PrintedRounding.Agree(x, y) && MeantTogether.Are(a, b)
        select BookFinding.Of(
            FindingKind.TwoFigures,
            [a.Id, b.Id],
            Texts.Say(
                "book.variant-check.gives-and-gives-for-and",
                a.Id,
                a.AppliesTo,
                AmountText.Write(a.Used!),
                b.Id,
                b.AppliesTo,
                AmountText.Write(b.Used!),
                Thing(a.Subject).Words,
                SharedWords(a.AppliesTo, b.AppliesTo)
            )
        );

    private static IEnumerable<BookFinding> Gaps(IReadOnlyList<BookDimension> figures)
    {
        var ranges = figures.SelectMany(d => d.AppliesTo.Serials).Distinct().ToList();
        if (figures.Any(d => d.AppliesTo.Serials.Count == 0) || ranges.Count < 2)
        {
            yield break;
        }

        var coverage = SerialCoverage.Of(ranges);
        var ids = figures.Select(d => d.Id).ToList();
        foreach (var gap in coverage.Gaps)
        {
            yield return BookFinding.Of(
                FindingKind.SerialGap,
                ids,
                Texts.Say("book.variant-check.no-figure-for-is-given", Thing(figures[0].Subject).Words, gap)
            );
        }

        foreach (var (first, second, _) in coverage.Overlaps.Where(o => o.Overlap is SerialOverlap.CannotBeCompared))
        {
            yield return BookFinding.Of(
                FindingKind.SerialsUnordered,
                ids,
                Texts.Say("book.variant-check.nothing-tells-where-ends-and", ranges[first], ranges[second])
            );
        }
    }

    private static string Asked(BookDimension dimension) =>
        string.Join(
            '\n',
            dimension.AppliesTo.Attributes.Select(a => $"{a.Name}\t{a.Value}".ToUpperInvariant()).Order(StringComparer.Ordinal)
        );

    private static string SharedWords(AppliesTo a, AppliesTo b)
    {
        var shared = a
            .Serials.SelectMany(x => b.Serials.Select(y => x.With(y)))
            .OfType<SerialOverlap.Shared>()
            .Select(s => s.Range.ToString());
        var words = string.Join(", ", shared.Distinct(StringComparer.Ordinal));
        return words.Length > 0
            ? Texts.Say("book.variant-check.both-are-meant-for", words)
            : Texts.Say("book.variant-check.both-may-be-meant-for");
    }
}
