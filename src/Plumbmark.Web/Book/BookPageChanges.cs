using Microsoft.AspNetCore.Http;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Nominals;
using Plumbmark.Inspection.Book.Paste;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

/// <summary>Pages are pasted and taken away; what the car is fitted with is told; places go to the frame.</summary>
internal static class BookPageChanges
{
    public static readonly (string, string)[] UnitChoices = [("in", Say("book.page.inches")), ("mm", Say("book.page.millimetres"))];

    public static IResult Put(CarRequest request)
    {
        var faults = new FieldFaults();
        var title = request.RequiredText("title", Say("book.page.what-the-page-is"), faults);
        var source = new BookSource(
            request.OptionalText("book", faults),
            request.OptionalText("edition", faults),
            request.OptionalText("page", faults)
        );
        var units = request.Field("units") == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
        var range = new SerialRange(Serial(request, "serialFrom", faults), Serial(request, "serialTo", faults));
        if (!range.IsSound)
        {
            faults.Add("serialTo", Say("book.page.the-last-number-must"));
        }

        var (dimensions, refused) = BookPaste
            .Read(request.Field("block"), units)
            .Match<(IReadOnlyList<BookDimension>, IReadOnlyList<string>)>(
                a => (a.Dimensions, []),
                r => ([], [.. r.Faults.Select(f => f.ToString())])
            );
        if (refused.Count > 0)
        {
            faults.Add("block", refused.Count == 1 ? refused[0] : Say("book.page.faults-they-are-listed", refused.Count));
        }

        if (faults.Any)
        {
            return Show.Again<BookIndexPage>(BookIndexView.Of(request, faults, refused));
        }

        var applies = range is { From: null, To: null } ? AppliesTo.EveryCar : new AppliesTo([range]);
        return request.Keep(
            request.Address("book"),
            car =>
                [
                    new Act.BookPagePut(
                        new BookPage(NewId(title, car.File.Book), title, units)
                        {
                            Source = source,
                            AppliesTo = applies,
                            Dimensions = dimensions,
                        }
                    ),
                ]
        );
    }

    public static IResult Remove(CarRequest request) =>
        request.Car.File.Book.Page(request.Field("id")) is { } page
            ? request.Keep(request.Address("book"), new Act.BookPageRemoved(page.Id))
            : BookRoom.NoPage();

    public static IResult Fit(CarRequest request)
    {
        var faults = new FieldFaults();
        var attributes = new List<CarAttribute>();
        foreach (
            var item in (request.OptionalText("fitted", faults, most: 500) ?? "").Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries)
        )
        {
            var parts = item.Split(':', 2, StringSplitOptions.TrimEntries);
            if (parts.Length < 2 || parts[0].Length == 0 || parts[1].Length == 0)
            {
                faults.Add("fitted", Say("book.page.found-name-and-kind", item.Trim()));
                continue;
            }

            attributes.Add(new CarAttribute(parts[0], parts[1]));
        }

        return faults.Any
            ? Show.Again<BookIndexPage>(BookIndexView.Of(request, faults))
            : request.Keep(request.Address("book"), new Act.CarFitted(attributes));
    }

    public static IResult FillNominals(CarRequest request)
    {
        var nominals = NominalsFromBook.Of(request.Car.File);
        var points = nominals.Fill(request.Car.File.Frame).ToList();
        return points.Count == 0
            ? Show.Again<BookIndexPage>(BookIndexView.Of(request, refused: [.. nominals.Remarks, Say("book.page.no-point-of-the")]))
            : request.Keep(request.Address("points"), [.. points.Select(p => new Act.PointDrawn(p))]);
    }

    private static SerialNumber? Serial(CarRequest request, string field, FieldFaults faults)
    {
        if (request.OptionalText(field, faults) is not { } text)
        {
            return null;
        }

        var serial = SerialNumber.Read(text);
        if (serial is null)
        {
            faults.Add(field, Say("book.page.found", text, SerialNumber.Allowed));
        }

        return serial;
    }

    private static string NewId(string title, BookSection book)
    {
        var id = title;
        for (var n = 2; book.Page(id) is not null; n++)
        {
            id = $"{title} ({n})";
        }

        return id;
    }
}
