using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Book;

/// <summary>Book files that come in and go out.</summary>
internal static class BookFileChanges
{
    public static IResult BringIn(CarRequest request)
    {
        if (request.File("file") is not { } file)
        {
            return Show.Again<BookIndexPage>(BookIndexView.Of(request, refused: ["No file was chosen, or it is empty."]));
        }

        return BookFile
            .Read(Bytes(file))
            .Match(
                pages => request.Keep(request.Address("book"), [.. pages.Select(p => new Act.BookPagePut(p))]),
                faults => Show.Again<BookIndexPage>(BookIndexView.Of(request, refused: BookIndexView.Sentences(faults)))
            );
    }

    public static IResult TakeOut(CarRequest request) =>
        Show.File(BookFile.Write(request.Car.File.Book.Pages), "application/json", "book.json");

    private static byte[] Bytes(IFormFile file)
    {
        // One byte more than a file may have is enough for the reader to say so.
        using var stream = file.OpenReadStream();
        var bytes = new byte[Math.Min(file.Length, JsonText.LargestFileBytes + 1)];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
