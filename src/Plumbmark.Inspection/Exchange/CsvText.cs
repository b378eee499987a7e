using System.Buffers;
using System.Globalization;
using System.Text;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Writes and reads CSV text after RFC 4180: commas, CRLF, quotes doubled inside quotes. Reading also takes semicolons, tabs and lone LF.</summary>
/// <remarks>
/// A text that a spreadsheet would take for a formula is written with an apostrophe in front, and reading takes it off again, so that nothing is lost
/// (the usual defence against formulas in exported data). That goes for every cell: a spreadsheet would work out <c>-3/16</c> too. A plain number stays as it is.
/// </remarks>
internal static class CsvText
{
    private const string FormulaStarts = "=+-@\t\r'";
    private static readonly SearchValues<char> s_quoted = SearchValues.Create("\",\r\n;\t");

    /// <summary>A row: null is not given, an empty text is written as a quoted nothing.</summary>
    public static void WriteRow(StringBuilder csv, IEnumerable<string?> cells)
    {
        csv.AppendJoin(',', cells.Select(Written)).Append("\r\n");
    }

    /// <summary>A text that no spreadsheet takes for a formula.</summary>
    public static string? Shielded(string? text) =>
        text is { Length: > 0 } && FormulaStarts.Contains(text[0]) && !IsPlainNumber(text) ? $"'{text}" : text;

    private static bool IsPlainNumber(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);

    /// <summary>The text as it was before <see cref="Shielded"/>.</summary>
    public static string Unshielded(string text) =>
        text.Length > 1 && text[0] == '\'' && FormulaStarts.Contains(text[1]) ? text[1..] : text;

    private static string Written(string? text) =>
        text switch
        {
            null => "",
            "" => "\"\"",
            _ when text.AsSpan().IndexOfAny(s_quoted) >= 0 || char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]) =>
                $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"",
            _ => text,
        };
}
