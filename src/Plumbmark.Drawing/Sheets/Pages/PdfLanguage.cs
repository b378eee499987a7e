using System.Globalization;
using System.Text;

namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Writes the language of a document into its PDF, so that a screen reader speaks it rightly.</summary>
/// <remarks>
/// The PDF writer in use knows no language entry. It is added as an incremental update behind the file (ISO 32000-1:2008, 7.5.6): the catalogue once more,
/// with <c>/Lang</c> (14.9.2), and a cross-reference section that points to it. Nothing in front of it moves.
/// </remarks>
internal static class PdfLanguage
{
    private const string Language = "en-GB";

    public static byte[] Added(byte[] pdf)
    {
        // Latin-1 gives one character a byte, so that places in the text are places in the file.
        var text = Encoding.Latin1.GetString(pdf);
        var trailerAt = text.LastIndexOf("trailer", StringComparison.Ordinal);
        var rootAt = text.IndexOf("/Root ", trailerAt, StringComparison.Ordinal) + "/Root ".Length;
        var number = text[rootAt..text.IndexOf(' ', rootAt)];
        var previousAt = text.IndexOf("startxref", trailerAt, StringComparison.Ordinal) + "startxref".Length;
        var previous = text[previousAt..text.LastIndexOf("%%EOF", StringComparison.Ordinal)].Trim();
        var catalogueAt = text.LastIndexOf($"\n{number} 0 obj", StringComparison.Ordinal) + 1;
        var catalogueEnd = text.IndexOf(">>\nendobj", catalogueAt, StringComparison.Ordinal);
        var trailerEnd = text.LastIndexOf(">>", text.Length - 1, StringComparison.Ordinal);

        var update = new StringBuilder();
        update.Append(text, catalogueAt, catalogueEnd - catalogueAt).Append($"\n/Lang ({Language})>>\nendobj\n");
        var tableAt = pdf.Length + update.Length;
        update.Append(CultureInfo.InvariantCulture, $"xref\n{number} 1\n{pdf.Length:D10} 00000 n \n");
        update.Append(text, trailerAt, trailerEnd - trailerAt).Append($"\n/Prev {previous}>>\n");
        update.Append(CultureInfo.InvariantCulture, $"startxref\n{tableAt}\n%%EOF\n");
        return [.. pdf, .. Encoding.Latin1.GetBytes(update.ToString())];
    }
}
