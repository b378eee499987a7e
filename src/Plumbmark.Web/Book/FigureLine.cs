using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Layout;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Book;

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
            figure.Subject.Words + (figure.IsBothSides ? Say("book.figure.both-sides") : ""),
            PrintedWords(figure),
            $"{(figure.AppliesTo.IsEveryCar ? page.AppliesTo : figure.AppliesTo)}: {FitWords(fit)}",
            figure.Status.Words,
            page.SourceOf(figure).ToString(),
            BookText.EvidenceWords(figure, page.Units) ?? ""
        );

    private static string PrintedWords(BookDimension figure)
    {
        var equal = figure.MustEqual.Count > 0 ? Say("book.figure.must-equal", Texts.List(figure.MustEqual)) : "";
        var value = figure.Value is { } printed ? AmountText.Write(printed) : Say("book.figure.no-figure");
        var also = figure.AlsoPrinted is { } other ? $" / {AmountText.Write(other)}" : "";
        return $"{value}{also}{(figure.Tolerance is { } tolerance ? $" {tolerance}" : "")}{equal}";
    }

    private static string FitWords(SerialFit fit) =>
        fit switch
        {
            SerialFit.Applies => Say("book.figure.this-car"),
            SerialFit.DoesNotApply => Say("book.figure.not-this-car"),
            _ => Say("book.figure.cant-tell-for-this"),
        };
}
