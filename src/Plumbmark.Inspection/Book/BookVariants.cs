using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>The types of loose parts that the book's pages describe, in the form in which the Bench asks for them.</summary>
public static class BookVariants
{
    /// <summary>The name of a type that its page does not name.</summary>
    public static string OnlyType => Texts.Say("book.variants.as-printed");

    /// <summary>The types on the pages kept with a car, without those that its owner has described under the same name.</summary>
    public static IReadOnlyList<PartVariant> Of(CarFile car) =>
        [
            .. Of(car.Book.Pages, car.Car.Serial)
                .Where(b =>
                    !car.Parts.Variants.Any(v => v.Kind == b.Kind && string.Equals(v.Name, b.Name, StringComparison.OrdinalIgnoreCase))
                ),
        ];

    /// <summary>The types on some pages. Figures that are doubted or left empty are not handed on.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="serial">The car's number: of a type fitted in several ranges, the one that holds the car is told; null when unknown.</param>
    public static IReadOnlyList<PartVariant> Of(IReadOnlyList<BookPage> pages, string? serial)
    {
        var number = SerialNumber.Read(serial);
        var variants =
            from page in pages
            from dimension in page.Dimensions
            where dimension.Subject is BookSubject.OfPart
            let part = (BookSubject.OfPart)dimension.Subject
            group new FigureOnPage(page, dimension, SerialFit.CannotTell) by (
                page.Id,
                part.Kind,
                Variant: part.Variant ?? OnlyType
            ) into type
            select new PartVariant(
                $"{type.Key.Id}: {PartWords.For(type.Key.Kind)}, {type.Key.Variant}",
                type.Key.Kind,
                type.Key.Variant,
                RangeFor(type.SelectMany(f => Ranges(f)), number),
                Figures: [.. type.Select(Figure).OfType<BookFigure>()]
            );
        return [.. variants];
    }

    private static IEnumerable<SerialRange> Ranges(FigureOnPage figure) =>
        figure.Dimension.AppliesTo.Serials.Count > 0 ? figure.Dimension.AppliesTo.Serials : figure.Page.AppliesTo.Serials;

    private static SerialRange? RangeFor(IEnumerable<SerialRange> ranges, SerialNumber? number)
    {
        var all = ranges.ToList();
        return all.Find(r => r.Contains(number) == SerialFit.Applies) ?? all.FirstOrDefault();
    }

    private static BookFigure? Figure(FigureOnPage figure)
    {
        var (dimension, source) = (figure.Dimension, figure.Source);
        if (dimension.Used is not { } used)
        {
            return null;
        }

        // The Bench knows one tolerance either way; of two that differ the smaller is the safe one.
        var tolerance = new[] { dimension.Tolerance?.Plus, dimension.Tolerance?.Minus }
            .OfType<Amount>()
            .Where(t => t.Si > 0)
            .MinBy(t => t.Si);
        return new BookFigure(
            ((BookSubject.OfPart)dimension.Subject).Dimension,
            used,
            tolerance,
            source.IsUnknown || dimension.Status is FigureStatus.MeasuredElsewhere or FigureStatus.Corrected
                ? LimitSource.Own
                : LimitSource.Factory,
            dimension.Status is FigureStatus.Printed ? source.ToString() : $"{source}. {dimension.Status.Words}"
        );
    }
}
