using System.Globalization;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Demo;

/// <summary>
/// The invented workshop book of the demo car: a frame page with two misprints, made from the same stations as the car itself, and a page on the two
/// types of steering lever, which changed at QD 0900.
/// </summary>
public static class DemoBook
{
    /// <summary>The figure along the car that is printed 29 in for 26 in: a 6 taken for a 9.</summary>
    public const string MisprintInChain = "e-f";

    /// <summary>The diagonal that is printed with its last digits exchanged.</summary>
    public const string MisprintInDiagonal = "g-h diagonal";

    private static readonly BookSource s_book = new("Dipper workshop book (invented)", "2nd edition");

    /// <summary>The pages.</summary>
    public static IReadOnlyList<BookPage> Pages() => [Frame(), Levers()];

    private static BookPage Frame()
    {
        var stations = DemoFrame.Stations;
        var bays = stations.Zip(stations.Skip(1)).ToList();
        return new BookPage("frame", "Frame, bare, in plan and height", LengthUnit.Inch)
        {
            Source = s_book with { Page = "12" },
            Dimensions =
            [
                .. bays.Select(b => Along(b.First, b.Second)),
                Along(stations[0], stations[^1]) with
                {
                    Id = "a-h overall",
                },
                .. stations.Select(Width),
                .. stations.Select(Height),
                .. bays.Select(b => Diagonal(b.First, b.Second)),
                Diagonal(stations[1], stations[^1]),
                new BookDimension("b-e left", new BookSubject.Between("B.L", "E.R", LengthSense.Plan)) { MustEqual = ["b-e right"] },
                new BookDimension("b-e right", new BookSubject.Between("B.R", "E.L", LengthSense.Plan)),
            ],
            Chains = [new BookChain("a-h overall", [.. bays.Select(b => Id(b.First, b.Second))])],
            Note = "Every figure is invented. Two of them are misprinted on purpose.",
        };
    }

    private static BookPage Levers() =>
        new("levers", "Steering levers", LengthUnit.Inch)
        {
            Source = s_book with { Page = "61" },
            Dimensions =
            [
                Lever("early pad", "early lever", "pad-height", 1.42m, new SerialRange(null, SerialNumber.Read("QD 0899"))),
                Lever("late pad", "late lever", "pad-height", 1.20m, new SerialRange(SerialNumber.Read("QD 0900"), null)),
                Lever("early arm", "early lever", "arm-length", 5.50m, new SerialRange(null, SerialNumber.Read("QD 0899"))),
                Lever("late arm", "late lever", "arm-length", 5.50m, new SerialRange(SerialNumber.Read("QD 0900"), null)),
            ],
        };

    private static BookDimension Along(DemoFrame.Station front, DemoFrame.Station rear)
    {
        var id = Id(front, rear);
        var inches = id == MisprintInChain ? 29 : front.XInches - rear.XInches;
        return new BookDimension(id, new BookSubject.Between($"{front.Name}.L", $"{rear.Name}.L", LengthSense.Along))
        {
            Value = Printed($"{inches:0}"),
            IsBothSides = true,
        };
    }

    private static BookDimension Width(DemoFrame.Station s) =>
        new($"{Lower(s)} width", new BookSubject.Between($"{s.Name}.L", $"{s.Name}.R", LengthSense.Across))
        {
            Value = Printed($"{2 * s.HalfWidthInches:0}"),
            AlsoPrinted = Printed(string.Create(CultureInfo.InvariantCulture, $"{50.8 * s.HalfWidthInches:0.0} mm")),
            Tolerance = Even("1/16"),
        };

    private static BookDimension Height(DemoFrame.Station s) =>
        new($"{Lower(s)} height", new BookSubject.At($"{s.Name}.L", Ordinate.Height))
        {
            Value = Printed(string.Create(CultureInfo.InvariantCulture, $"{s.ZInches:0.00}")),
            IsBothSides = true,
        };

    private static BookDimension Diagonal(DemoFrame.Station front, DemoFrame.Station rear)
    {
        var id = $"{Id(front, rear)} diagonal";
        var inches = double.Hypot(front.XInches - rear.XInches, front.HalfWidthInches + rear.HalfWidthInches);
        var text = string.Create(CultureInfo.InvariantCulture, $"{inches:0.00}");
        return new BookDimension(id, new BookSubject.Between($"{front.Name}.L", $"{rear.Name}.R", LengthSense.Plan))
        {
            Value = Printed(id == MisprintInDiagonal ? $"{text[..^2]}{text[^1]}{text[^2]}" : text),
            IsBothSides = true,
        };
    }

    private static BookDimension Lever(string id, string variant, string dimension, decimal inches, SerialRange serials) =>
        new(id, new BookSubject.OfPart(PartKind.SteeringLever, variant, dimension))
        {
            Value = Printed(inches.ToString(CultureInfo.InvariantCulture)),
            Tolerance = Even("0.015"),
            AppliesTo = new AppliesTo([serials]),
        };

    private static PrintedTolerance Even(string text) => new(Printed(text), Printed(text));

    private static Amount Printed(string text) =>
        LengthText.Read(text, LengthUnit.Inch).Match(l => new Amount.OfLength(l), r => throw new InvalidOperationException(r.Sentence));

    private static string Id(DemoFrame.Station front, DemoFrame.Station rear) => $"{Lower(front)}-{Lower(rear)}";

    private static string Lower(DemoFrame.Station station) => station.Name.ToLowerInvariant();
}
