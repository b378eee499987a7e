using System.Diagnostics;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>What a figure in the book is about. Not the figure: that is a <see cref="BookDimension"/>.</summary>
public abstract record BookSubject
{
    private BookSubject() { }

    /// <summary>From one point to another.</summary>
    /// <param name="From">The first point.</param>
    /// <param name="To">The second point.</param>
    /// <param name="Sense">How the length runs.</param>
    public sealed record Between(string From, string To, LengthSense Sense) : BookSubject;

    /// <summary>One coordinate of a point.</summary>
    /// <param name="Point">The point.</param>
    /// <param name="Ordinate">Which.</param>
    public sealed record At(string Point, Ordinate Ordinate) : BookSubject;

    /// <summary>A dimension of a loose part, perhaps of one of its variants.</summary>
    /// <param name="Kind">The part.</param>
    /// <param name="Variant">The variant, in the maker's words or our own; null when the book knows only one.</param>
    /// <param name="Dimension">Which dimension, by the name that the Bench gives it.</param>
    public sealed record OfPart(PartKind Kind, string? Variant, string Dimension) : BookSubject;

    /// <summary>Anything else, kept under its own name and compared only with itself.</summary>
    /// <param name="Name">The name.</param>
    public sealed record Named(string Name) : BookSubject;

    /// <summary>Gives the result of the case that holds.</summary>
    public T Match<T>(Func<Between, T> between, Func<At, T> at, Func<OfPart, T> ofPart, Func<Named, T> named) =>
        this switch
        {
            Between b => between(b),
            At a => at(a),
            OfPart p => ofPart(p),
            Named n => named(n),
            _ => throw new UnreachableException(),
        };

    /// <summary>The same on the car's other side: left and right exchanged.</summary>
    public BookSubject Mirrored =>
        this switch
        {
            // What ran to the left on one side runs to the right on the other, so that an across length keeps its sign by turning round.
            Between { Sense: LengthSense.Across } b => new Between(OtherSide(b.To), OtherSide(b.From), b.Sense),
            Between b => new Between(OtherSide(b.From), OtherSide(b.To), b.Sense),
            At a => a with { Point = OtherSide(a.Point) },
            _ => this,
        };

    /// <summary>The same for a length without direction, whichever end is named first.</summary>
    public BookSubject Ordered =>
        this is Between { Sense: LengthSense.Plan or LengthSense.Direct or LengthSense.Unsaid } b && string.CompareOrdinal(b.From, b.To) > 0
            ? b with
            {
                From = b.To,
                To = b.From,
            }
            : this;

    /// <summary>The points it names.</summary>
    public IEnumerable<string> Points =>
        this switch
        {
            Between b => [b.From, b.To],
            At a => [a.Point],
            _ => [],
        };

    /// <summary>A point's name with left and right exchanged; the name itself for a point on the centre line.</summary>
    public static string OtherSide(string point) =>
        point.EndsWith(".L", StringComparison.Ordinal) ? point[..^1] + "R"
        : point.EndsWith(".R", StringComparison.Ordinal) ? point[..^1] + "L"
        : point;

    /// <summary>In words, such as <c>B.L to E.R in plan</c>.</summary>
    public string Words =>
        Match(
            b => Texts.Say("book.subject.to", b.From, b.To, SenseWords(b.Sense)),
            a => $"{a.Point} {OrdinateWords(a.Ordinate)}",
            p => $"{PartWords.For(p.Kind)}{(p.Variant is { } variant ? $", {variant}" : "")}, {p.Dimension}",
            n => n.Name
        );

    private static string SenseWords(LengthSense sense) =>
        sense switch
        {
            LengthSense.Plan => Texts.Say("book.subject.in-plan"),
            LengthSense.Direct => Texts.Say("book.subject.point-to-point"),
            LengthSense.Along => Texts.Say("book.subject.along-the-car"),
            LengthSense.Across => Texts.Say("book.subject.across-the-car"),
            LengthSense.Rise => " upward",
            _ => "",
        };

    private static string OrdinateWords(Ordinate ordinate) =>
        ordinate switch
        {
            Ordinate.Station => Texts.Say("book.subject.behind-the-datum"),
            Ordinate.Side => Texts.Say("book.subject.from-the-centre-line"),
            _ => Texts.Say("book.subject.above-the-datum"),
        };
}
