namespace Plumbmark.Inspection.Exchange;

/// <summary>A cell of a CSV file with its place.</summary>
/// <param name="Text">What it holds, quotes undone.</param>
/// <param name="IsQuoted">Whether it stood in quotes: a quoted nothing is an empty text, an unquoted nothing is not given.</param>
/// <param name="Line">The line where it begins, counted from 1.</param>
/// <param name="Column">The character where it begins, counted from 1.</param>
internal sealed record CsvCell(string Text, bool IsQuoted, int Line, int Column)
{
    public bool IsGiven => IsQuoted || Text.Length > 0;
}
