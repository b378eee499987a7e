using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>Book files that come in and go out.</summary>
internal static class BookFileChanges
{
    public static IResult BringIn(CarRequest request)
    {
        if (request.File("file") is not { } file)
        {
            return Show.Again<BookIndexPage>(BookIndexView.Of(request, refused: [Say("book.file.no-file-was-chosen")]));
        }

        return BookFile
            .Read(PageRequest.Bytes(file, JsonText.LargestFileBytes))
            .Match(
                pages => request.Keep(request.Address("book"), [.. pages.Select(p => new Act.BookPagePut(p))]),
                faults => Show.Again<BookIndexPage>(BookIndexView.Of(request, refused: BookIndexView.Sentences(faults)))
            );
    }

    public static IResult TakeOut(CarRequest request) =>
        Show.File(BookFile.Write(request.Car.File.Book.Pages), "application/json", "book.json");
}
