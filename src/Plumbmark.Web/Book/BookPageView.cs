using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Book;

/// <summary>One page of the book with its figures and what is found against them.</summary>
/// <param name="Car">The car.</param>
/// <param name="Report">The page with its findings.</param>
/// <param name="Lines">The figures as they are shown.</param>
public sealed record BookPageView(OpenCar Car, PageReport Report, IReadOnlyList<FigureLine> Lines)
{
    /// <summary>The view for a request; null when there is no such page.</summary>
    public static BookPageView? Of(CarRequest request)
    {
        if (request.Car.File.Book.Page(request.Query("id")) is not { } page)
        {
            return null;
        }

        var (serial, fitted) = (SerialNumber.Read(request.Car.File.Car.Serial), request.Car.File.Book.Attributes);
        return new BookPageView(
            request.Car,
            new PageReport(page, BookChecks.Of(page)),
            [
                .. page.Dimensions.Select(d =>
                    FigureLine.Of(page, d, AppliesTo.All([page.AppliesTo.Fits(serial, fitted), d.AppliesTo.Fits(serial, fitted)]))
                ),
            ]
        );
    }
}
