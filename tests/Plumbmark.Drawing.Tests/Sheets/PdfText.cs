using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Plumbmark.Drawing.Sheets;

/// <summary>What an independent reader (PdfPig) finds in a sheet.</summary>
internal sealed record PdfText(string Title, string? Author, string? Created, IReadOnlyList<Page> Pages)
{
    public string All { get; } = string.Join("\n", Pages.Select(Words));

    public static PdfText Of(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return new PdfText(
            document.Information.Title ?? "",
            document.Information.Author,
            document.Information.CreationDate,
            [.. document.GetPages()]
        );
    }

    /// <summary>The text of a page with single spaces, in the order it was drawn.</summary>
    public static string Words(Page page) =>
        string.Join(' ', ContentOrderTextExtractor.GetText(page).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
