namespace Plumbmark.Inspection.Book.Checks;

/// <summary>What a book page says against itself: points out, never corrects. A page without findings may still be wrong.</summary>
/// <remarks>Doubted figures are left out and corrected ones count as corrected, so that a finding goes once its figure is dealt with.</remarks>
public static class BookChecks
{
    /// <summary>Every finding on a page, contradictions first.</summary>
    public static IReadOnlyList<BookFinding> Of(BookPage page)
    {
        var figures = PageFigure.Of(page);
        // Figures for other cars do not add up with each other: the sums are made with those that every car of the page has.
        var common = figures.Where(f => f.Dimension.AppliesTo.IsEveryCar).ToList();
        IReadOnlyList<BookFinding> simple =
        [
            .. ChainCheck.Of(page, common),
            .. ColumnCheck.Of(page),
            .. EqualCheck.Of(page, figures),
            .. TriangleCheck.Of(common),
            .. SenseCheck.Of(common),
            .. VariantCheck.Of(page),
        ];
        return [.. simple.Concat(WholePageCheck.Of(common, simple)).OrderBy(f => f.IsContradiction ? 0 : 1)];
    }
}
