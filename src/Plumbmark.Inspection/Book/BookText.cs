using System.Text;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>The report on book pages as text for a person.</summary>
public static class BookText
{
    /// <summary>The text, a line end at its end.</summary>
    public static string Of(BookReport report)
    {
        var text = new StringBuilder();
        foreach (var (page, findings) in report.Pages)
        {
            text.Append(page.Title).Append(" (").Append(page.Source).Append("), ").Append(page.AppliesTo).Append('\n');
            text.Append("  ").Append(Texts.Count("book.figures", page.Dimensions.Count)).Append(", ");
            text.Append(
                    findings.Count == 0 ? Texts.Say("book.nothing-found-against-them-that") : Texts.Count("book.findings", findings.Count)
                )
                .Append(".\n");
            foreach (var finding in findings)
            {
                text.Append(finding.IsContradiction ? "  ! " : "  ? ").Append(finding).Append('\n');
            }

            foreach (var figure in page.Dimensions.Where(d => d.Status is not FigureStatus.Printed || d.Evidence.Count > 0))
            {
                text.Append("  ").Append(figure.Id).Append(": ").Append(figure.Status.Words);
                text.Append(EvidenceWords(figure, page.Units) is { } evidence ? $" {evidence}" : "").Append('\n');
            }
        }

        if (report.Pages.Count == 0)
        {
            text.Append(Texts.Say("book.there-is-no-book-page"));
        }

        if (report.ForCar is { } forCar)
        {
            AppendForCar(text, forCar);
        }

        return text.ToString();
    }

    /// <summary>What cars measured, in one sentence; null when none did.</summary>
    public static string? EvidenceWords(BookDimension figure, LengthUnit units)
    {
        if (RobustMean.Of(figure) is not { } mean)
        {
            return null;
        }

        var isLength = (figure.Value ?? figure.Evidence[0].Value) is Amount.OfLength;
        string Shown(double si, bool isSpread) =>
            isLength ? (isSpread ? Display(units).PlusMinus(si)[1..] : Display(units).Text(si))
            : (figure.Value ?? figure.Evidence[0].Value) is Amount.OfAngle ? Texts.Say("book.deg", Texts.Number(si * 180 / Math.PI, "0.00"))
            : $"{si / 1000:0.0} N/mm";
        var spread = mean.Spread is { } s ? Texts.Say("book.spread", Shown(s, true)) : "";
        return Texts.Say("book.measured-on", Texts.Count("book.cars", mean.Count), Shown(mean.Mean, false), spread);
    }

    /// <summary>What the book says of one thing for a car, in one sentence.</summary>
    public static string Words(FigureChoice choice) =>
        choice.Match(
            a => $"{AmountText.Write(a.Figure.Dimension.Used!)} ({a.Figure.Source}){Doubt(a.Figure)}",
            d => Texts.Say("book.pages-disagree", List(d.Figures)),
            c => Texts.Say("book.cant-tell-which-applies", List(c.Figures)),
            m =>
                m.Figures.Any(f => f.Dimension.Status is FigureStatus.Doubted)
                    ? Texts.Say("book.doubted-and-nothing-better-is")
                    : Texts.Say("book.no-figure-given"),
            o => Texts.Say("book.only-for-other-cars", List(o.Figures))
        );

    private static void AppendForCar(StringBuilder text, BookForCar forCar)
    {
        text.Append(Texts.Say("book.for-this-car"));
        foreach (var subject in forCar.Subjects.Where(s => s.Choice is not FigureChoice.Applies))
        {
            text.Append("  ? ").Append(subject.Subject.Words).Append(": ").Append(Words(subject.Choice)).Append('\n');
        }

        foreach (var subject in forCar.Subjects.Where(s => s.Choice is FigureChoice.Applies))
        {
            text.Append("    ").Append(subject.Subject.Words).Append(": ").Append(Words(subject.Choice)).Append('\n');
        }
    }

    private static string Doubt(FigureOnPage figure) =>
        figure.Dimension.Status is FigureStatus.Printed ? "" : $". {figure.Dimension.Status.Words.TrimEnd('.')}";

    private static string List(IReadOnlyList<FigureOnPage> figures) =>
        string.Join(
            "; ",
            figures.Select(f =>
                Texts.Say(
                    "book.for",
                    (f.Dimension.Used ?? f.Dimension.Value) is { } value ? AmountText.Write(value) : Texts.Say("book.no-figure"),
                    Cars(f),
                    f.Source
                )
            )
        );

    private static string Cars(FigureOnPage figure) =>
        figure.Dimension.AppliesTo.IsEveryCar ? figure.Page.AppliesTo.ToString() : figure.Dimension.AppliesTo.ToString();

    private static LengthDisplay Display(LengthUnit units) =>
        new(units == LengthUnit.Inch ? Length.FromInches(0.01m) : Length.FromMillimetres(0.1m));

    private static string Count(int n, string what) => n == 1 ? $"1 {what}" : $"{n} {what}s";
}
