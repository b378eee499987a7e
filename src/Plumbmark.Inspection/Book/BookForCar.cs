using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Book;

/// <summary>The book as it stands for one car: which figure applies, which pages disagree, what is missing, what cannot apply.</summary>
/// <param name="Subjects">One answer for each thing that any page speaks of, in the order of the pages.</param>
public sealed record BookForCar(IReadOnlyList<SubjectAnswer> Subjects)
{
    /// <summary>The lengths of the frame that are to be used, each figure once.</summary>
    public IReadOnlyList<FigureOnPage> Frame =>
        [
            .. Subjects
                .Where(s => s.Subject is BookSubject.Between or BookSubject.At)
                .Select(s => s.Choice)
                .OfType<FigureChoice.Applies>()
                .Select(a => a.Figure)
                .Where(f => f.Dimension.Used is Amount.OfLength)
                .DistinctBy(f => (f.Page.Id, f.Dimension.Id)),
        ];

    /// <summary>The book of a car file, for the car of that file.</summary>
    public static BookForCar Of(CarFile car) => Of(car.Book.Pages, car.Car.Serial, car.Book.Attributes);

    /// <summary>What pages say for a car.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="serial">The car's number as its owner wrote it; null when unknown. A text that is no serial number counts as unknown.</param>
    /// <param name="fitted">What the car is fitted with.</param>
    public static BookForCar Of(IReadOnlyList<BookPage> pages, string? serial, IReadOnlyList<CarAttribute> fitted)
    {
        var number = SerialNumber.Read(serial);
        var figures =
            from page in pages
            let pageFit = page.AppliesTo.Fits(number, fitted)
            from dimension in page.Dimensions
            let fit = AppliesTo.All([pageFit, dimension.AppliesTo.Fits(number, fitted)])
            from subject in dimension.Subjects
            select (Thing: Checks.VariantCheck.Thing(subject), Figure: new FigureOnPage(page, dimension, fit));
        return new BookForCar([
            .. figures
                .GroupBy(f => f.Thing, f => f.Figure)
                .Select(g => new SubjectAnswer(g.Key, Choice([.. g]), [.. g.Where(f => f.Fit == SerialFit.DoesNotApply)])),
        ]);
    }

    private static FigureChoice Choice(IReadOnlyList<FigureOnPage> figures)
    {
        var applying = figures.Where(f => f.Fit == SerialFit.Applies).ToList();
        var perhaps = figures.Where(f => f.Fit == SerialFit.CannotTell).ToList();
        var used = applying.Where(f => f.Dimension.Used is not null).ToList();
        if (used.Count > 0)
        {
            // What may apply as well and says otherwise leaves the question open.
            var contrary = perhaps.Where(p => p.Dimension.Used is { } v && !PrintedRounding.Agree(v, used[0].Dimension.Used!)).ToList();
            var first = used.Find(f => !f.Source.IsUnknown) ?? used[0];
            return used.Exists(f => !PrintedRounding.Agree(f.Dimension.Used!, first.Dimension.Used!)) ? new FigureChoice.Disagree(used)
                : contrary.Count > 0 ? new FigureChoice.CannotTell([.. used, .. contrary])
                : new FigureChoice.Applies(first, [.. used.Where(f => f != first)]);
        }

        var open = perhaps.Where(f => f.Dimension.Used is not null).ToList();
        return open.Count > 0 ? new FigureChoice.CannotTell(open)
            : applying.Count + perhaps.Count > 0 ? new FigureChoice.Missing([.. applying, .. perhaps])
            : new FigureChoice.ForOtherCars(figures);
    }
}
