using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Book;

/// <summary>Everything that pages say against themselves, and for a car what they say of it: what screen, verb and JSON share.</summary>
/// <param name="Pages">Each page with its findings.</param>
/// <param name="ForCar">The pages seen for one car; null when they were read alone.</param>
public sealed record BookReport(IReadOnlyList<PageReport> Pages, BookForCar? ForCar)
{
    /// <summary>The report on some pages.</summary>
    public static BookReport Of(IReadOnlyList<BookPage> pages, CarFile? car) =>
        new([.. pages.Select(p => new PageReport(p, BookChecks.Of(p)))], car is null ? null : BookForCar.Of(car));
}
