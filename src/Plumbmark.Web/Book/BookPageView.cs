using Plumbmark.Inspection.Bench;
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

/// <summary>One figure in a page's table, in ready words.</summary>
/// <param name="Id">Its name.</param>
/// <param name="About">What it is about.</param>
/// <param name="Printed">What is printed, the second column and the tolerance with it.</param>
/// <param name="Cars">The cars it is for, and whether this is one.</param>
/// <param name="Status">Whether it is believed.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Evidence">What cars measured; empty when none did.</param>
public sealed record FigureLine(string Id, string About, string Printed, string Cars, string Status, string Source, string Evidence)
{
    internal static FigureLine Of(BookPage page, BookDimension figure, SerialFit fit) =>
        new(
            figure.Id,
            figure.Subject.Words + (figure.IsBothSides ? ", both sides" : ""),
            PrintedWords(figure),
            $"{(figure.AppliesTo.IsEveryCar ? page.AppliesTo : figure.AppliesTo)}: {FitWords(fit)}",
            figure.Status.Words,
            page.SourceOf(figure).ToString(),
            BookText.EvidenceWords(figure, page.Units) ?? ""
        );

    private static string PrintedWords(BookDimension figure)
    {
        var equal = figure.MustEqual.Count > 0 ? $" must equal {string.Join(", ", figure.MustEqual)}" : "";
        var value = figure.Value is { } printed ? AmountText.Write(printed) : "no figure";
        var also = figure.AlsoPrinted is { } other ? $" / {AmountText.Write(other)}" : "";
        return $"{value}{also}{(figure.Tolerance is { } tolerance ? $" {tolerance}" : "")}{equal}";
    }

    private static string FitWords(SerialFit fit) =>
        fit switch
        {
            SerialFit.Applies => "this car",
            SerialFit.DoesNotApply => "not this car",
            _ => "can't tell for this car",
        };
}
