using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>The book: what the manual says, for which car, and where it is doubted.</summary>
public static class BookRoom
{
    /// <summary>The room.</summary>
    public static Room Room { get; } = new("Book", car => car is null ? null : $"/cars/{car}/book", Map);

    // Pages and figures have names that people wrote, with strokes and blanks: they stand behind the question mark, not in the path.
    private static void Map(RoomRoutes routes)
    {
        routes.CarPage("book", r => Show.Page<BookIndexPage>(BookIndexView.Of(r)));
        routes.CarPage("book/page", r => BookPageView.Of(r) is { } page ? Show.Page<BookPagePage>(page) : NoPage());
        routes.CarPage("book/figure", r => FigureView.Of(r) is { } figure ? Show.Page<FigurePage>(figure) : NoPage());
        routes.CarPage("book/file", BookFileChanges.TakeOut);
        routes.CarChange("book-files", BookFileChanges.BringIn);
        routes.CarChange("book-pages", BookPageChanges.Put);
        routes.CarChange("book-removals", BookPageChanges.Remove);
        routes.CarChange("book-judgements", FigureChanges.Judge);
        routes.CarChange("book-measurements", FigureChanges.Measure);
        routes.CarChange("book-attributes", BookPageChanges.Fit);
        routes.CarChange("book-nominals", BookPageChanges.FillNominals);
    }

    internal static Microsoft.AspNetCore.Http.IResult NoPage() => Show.NotFound(Say("book.room.there-is-no-such"));
}
