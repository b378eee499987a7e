using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>A figure of the book is chosen, chosen anew, or struck out.</summary>
internal static class BookChanges
{
    public static IResult Keep(CarRequest request)
    {
        var faults = new FieldFaults();
        var act = FormAct.Read(request, request.Car.File.Units, "road-described", "road.book[]", RoadFields.Figure, [], faults);
        if (act is not Act.RoadDescribed { Drawing.Book: [var figure] })
        {
            return Show.Again<BookPage>(BookView.Of(request, faults));
        }

        return DrawingChanges.Keep(
            request,
            section => section with { Book = [.. section.Book.Where(b => b.Kind != figure.Kind), figure] },
            "road/figures"
        );
    }

    public static IResult Remove(CarRequest request)
    {
        var name = request.Part("figure");
        return DrawingChanges.Keep(
            request,
            section => section with { Book = [.. section.Book.Where(b => b.Kind.ToString() != name)] },
            "road/figures"
        );
    }
}
