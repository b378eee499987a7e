using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

/// <summary>Figures written as a person would, for tests.</summary>
internal static class BookSamples
{
    public static Amount Amount(string text) =>
        AmountText.Read(text, LengthUnit.Inch, out var refusal) ?? throw new ArgumentException(refusal, nameof(text));

    public static BookDimension Between(string id, string from, string to, string? value, LengthSense sense = LengthSense.Plan) =>
        new(id, new BookSubject.Between(from, to, sense)) { Value = value is null ? null : Amount(value) };

    public static BookDimension At(string id, string point, string value, Ordinate ordinate) =>
        new(id, new BookSubject.At(point, ordinate)) { Value = Amount(value) };

    public static BookPage Page(params BookDimension[] dimensions) => new("p", "Frame", LengthUnit.Inch) { Dimensions = dimensions };

    public static AppliesTo Serials(string? from, string? to) =>
        new([new Inspection.Book.SerialRange(SerialNumber.Read(from), SerialNumber.Read(to))]);
}
