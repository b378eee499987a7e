using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Journal;

/// <summary>The book's part of the fold.</summary>
internal static class BookFold
{
    public static IEnumerable<Act> ActsOf(BookSection section)
    {
        if (section.Attributes.Count > 0)
        {
            yield return new Act.CarFitted(section.Attributes);
        }

        foreach (var page in section.Pages)
        {
            yield return new Act.BookPagePut(page);
        }
    }

    public static BookSection After(BookSection before, Act act) =>
        act switch
        {
            Act.BookPagePut a => before with { Pages = Fold.Put(before.Pages, a.Page, p => p.Id) },
            Act.BookPageRemoved a => before with { Pages = [.. before.Pages.Where(p => p.Id != a.Id)] },
            Act.FigureJudged a => With(before, a.Page, a.Dimension, d => d with { Status = a.Status }),
            Act.FigureMeasured a => With(before, a.Page, a.Dimension, d => d with { Evidence = [.. d.Evidence, a.Evidence] }),
            Act.CarFitted a => before with { Attributes = a.Attributes },
            _ => before,
        };

    // A judgement of a figure that is no longer there is read over: it stays in the journal.
    private static BookSection With(BookSection section, string page, string dimension, Func<BookDimension, BookDimension> change) =>
        section.Page(page) is { } found && found.Dimension(dimension) is { } figure
            ? section with
            {
                Pages = Fold.Put(section.Pages, found.With(change(figure)), p => p.Id),
            }
            : section;
}
