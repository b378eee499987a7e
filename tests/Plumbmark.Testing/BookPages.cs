using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;

namespace Plumbmark.Testing;

/// <summary>Random book pages that obey every rule of the format; nothing in them needs to add up.</summary>
public static class BookPages
{
    private static readonly string[] s_texts = ["47 5/8 in", "33-17/32\"", "1210 mm", "121.0cm", "5' 1 3/16\"", "12.50", "0.1"];
    private static readonly string?[] s_words = [null, "2nd edition", "½ in, \"as drawn\"", "línea <b>"];

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<Amount> Lengths(LengthUnit units) =>
        Gen.OneOf(
                OneOf(s_texts).Select(t => ((LengthOutcome.Read)LengthText.Read(t, units)).Value),
                Gen.Int[1, 2_000_000].Select(n => Length.FromNumber(n / 1000m, units))
            )
            .Select(l => (Amount)new Amount.OfLength(l));

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : class => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : null);

    private static readonly Gen<SerialRange> s_range = Gen.Select(
        OneOf("QD ", "TX", "H3/", ""),
        Gen.Int[0, 5000],
        Gen.Int[0, 5000],
        OneOf(0, 1, 2, 3),
        (series, a, b, open) =>
            new SerialRange(
                open is 1 or 3 ? null : SerialNumber.Read($"{series}{Math.Min(a, b):00000}"),
                open is 2 or 3 ? null : SerialNumber.Read($"{series}{Math.Max(a, b)} L")
            )
    );

    private static readonly Gen<CarAttribute> s_attribute = Gen.Select(
        OneOf("wheels", "drive"),
        OneOf("wire", "disc", "right"),
        (name, value) => new CarAttribute(name, value)
    );

    private static readonly Gen<AppliesTo> s_applies = Gen.Select(
        s_range.List[0, 2],
        s_attribute.List[0, 2],
        (serials, attributes) => new AppliesTo(serials, attributes)
    );

    private static readonly Gen<BookSource> s_source = Gen.Select(
        OneOf(s_words),
        OneOf(s_words),
        OneOf<string?>(null, "14"),
        OneOf<string?>(null, "K"),
        (title, edition, page, figure) => new BookSource(title, edition, page, figure)
    );

    private static readonly Gen<BookSubject> s_subject = Gen.Select(
        Gen.Int[0, 11],
        OneOf("A.L", "B.R", "C"),
        OneOf("D.L", "E.R"),
        (kind, from, to) =>
            kind switch
            {
                < 6 => new BookSubject.Between(from, to, (LengthSense)kind),
                < 9 => new BookSubject.At(from, (Ordinate)(kind - 6)),
                9 => new BookSubject.OfPart(PartKind.SteeringLever, "early", "pad height"),
                10 => new BookSubject.OfPart(PartKind.CoilSpring, null, "rate"),
                _ => (BookSubject)new BookSubject.Named("gap under the door"),
            }
    );

    private static Gen<FigureStatus> Statuses(LengthUnit units) =>
        Gen.Select(
            Gen.Int[0, 3],
            Lengths(units),
            OneOf(s_words),
            (kind, value, words) =>
                kind switch
                {
                    0 => FigureStatus.AsPrinted,
                    1 => new FigureStatus.Doubted("does not close", words),
                    2 => new FigureStatus.Corrected(value, "measured twice", words),
                    _ => new FigureStatus.MeasuredElsewhere("a friend's car"),
                }
        );

    private static Gen<BookDimension> Dimensions(int number, LengthUnit units) =>
        from subject in s_subject
        from values in Gen.Select(Maybe(Lengths(units)), Maybe(Lengths(units)), Maybe(Lengths(units)), Maybe(Lengths(units)), Gen.Bool)
        from marks in Gen.Select(Gen.Bool, Gen.Bool, OneOf(s_words))
        from applies in s_applies
        from source in s_source
        from status in Statuses(units)
        from evidence in Gen.Select(OneOf("car 1", "car 2"), Lengths(units), OneOf(s_words), (c, v, n) => new CarEvidence(c, v, n)).List[
            0,
            3
        ]
        select new BookDimension($"d{number}", subject)
        {
            Value = values.Item1,
            AlsoPrinted = values.Item2,
            Tolerance =
                values.Item3 is null && values.Item4 is null ? null
                : values.Item5 && values.Item3 is not null ? new PrintedTolerance(values.Item3, values.Item3)
                : new PrintedTolerance(values.Item3, values.Item4),
            MustEqual = number > 1 && marks.Item1 ? ["d1"] : [],
            IsBothSides = marks.Item1,
            IsHanded = marks.Item2,
            AppliesTo = applies,
            Source = source,
            Status = status,
            Evidence = evidence,
            Note = marks.Item3,
        };

    /// <summary>A page with up to twelve figures.</summary>
    public static Gen<BookPage> Page(string id) =>
        from units in OneOf(LengthUnit.Inch, LengthUnit.Millimetre)
        from count in Gen.Int[0, 12]
        from dimensions in Enumerable
            .Range(1, count)
            .Aggregate(
                Gen.Const<IReadOnlyList<BookDimension>>([]),
                (before, n) => Gen.Select(before, Dimensions(n, units), (list, d) => (IReadOnlyList<BookDimension>)[.. list, d])
            )
        from source in s_source
        from applies in s_applies
        from note in OneOf(s_words)
        select new BookPage(id, "Frame", units)
        {
            Source = source,
            AppliesTo = applies,
            Dimensions = dimensions,
            Chains = count >= 3 ? [new BookChain("d1", ["d2", "d3"])] : [],
            Note = note,
        };

    /// <summary>No, one or two pages.</summary>
    public static Gen<IReadOnlyList<BookPage>> Pages { get; } =
        Gen.Select(Gen.Int[0, 2], Page("p1"), Page("p2"), (n, one, two) => (IReadOnlyList<BookPage>)new[] { one, two }[..n]);

    /// <summary>The book section of a car file.</summary>
    public static Gen<BookSection> Any { get; } =
        Gen.Select(Pages, s_attribute.List[0, 2], (pages, fitted) => new BookSection(pages, fitted));
}
