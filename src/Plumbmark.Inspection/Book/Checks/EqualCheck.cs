using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Are left and right given alike, and the figures that the page calls equal?</summary>
internal static class EqualCheck
{
    public static IEnumerable<BookFinding> Of(BookPage page, IReadOnlyList<PageFigure> figures) =>
        Sides(figures).Concat(CalledEqual(page, figures));

    private static IEnumerable<BookFinding> Sides(IReadOnlyList<PageFigure> figures) =>
        from pair in Pairs(figures)
        let one = pair.One
        let other = pair.Other
        where !one.Dimension.IsHanded && !other.Dimension.IsHanded
        where one.Dimension.Subject.Ordered != one.Dimension.Subject.Mirrored.Ordered
        where one.Dimension.Subject.Mirrored.Ordered == other.Dimension.Subject.Ordered
        where MeantTogether.Are(one.Dimension, other.Dimension) && Differ(one, other)
        select BookFinding.Of(
            FindingKind.SidesDiffer,
            [one.Id, other.Id],
            Texts.Say(
                "book.equal-check.is-printed-as-and-the",
                one.Id,
                one.Dimension.Subject.Words,
                one.Value.AsTyped,
                other.Id,
                other.Value.AsTyped,
                Apart(one, other)
            ),
            Explained(one, other)
        );

    private static IEnumerable<BookFinding> CalledEqual(BookPage page, IReadOnlyList<PageFigure> figures) =>
        from dimension in page.Dimensions
        from name in dimension.MustEqual
        let one = figures.FirstOrDefault(f => f.Id == dimension.Id)
        let other = figures.FirstOrDefault(f => f.Id == name)
        where one is not null && other is not null && Differ(one, other)
        where string.CompareOrdinal(one.Id, other.Id) < 0 || !page.Dimension(other.Id)!.MustEqual.Contains(one.Id)
        select BookFinding.Of(
            FindingKind.NotEqual,
            [one.Id, other.Id],
            Texts.Say("book.equal-check.and-must-be-equal-by", one.Id, other.Id, one.Value.AsTyped, other.Value.AsTyped),
            Explained(one, other)
        );

    private static IEnumerable<(PageFigure One, PageFigure Other)> Pairs(IReadOnlyList<PageFigure> figures) =>
        figures.SelectMany((one, i) => figures.Skip(i + 1).Select(other => (one, other)));

    private static bool Differ(PageFigure a, PageFigure b) =>
        !PrintedRounding.Agree(new Amount.OfLength(a.Value), new Amount.OfLength(b.Value));

    private static string Apart(PageFigure a, PageFigure b) => PageFigure.Text(Math.Abs(a.Metres - b.Metres), a.Value.Unit);

    private static IEnumerable<LikelySlip> Explained(PageFigure a, PageFigure b)
    {
        var allowed = a.RoundingMetres + b.RoundingMetres + 1e-9;
        return a.Slips(m => Math.Abs(m - b.Metres) <= allowed).Concat(b.Slips(m => Math.Abs(m - a.Metres) <= allowed));
    }
}
