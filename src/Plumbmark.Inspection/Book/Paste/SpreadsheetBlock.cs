using System.Text;

namespace Plumbmark.Inspection.Book.Paste;

/// <summary>A block of cells as it comes from a spreadsheet or a CSV file: tab, semicolon or comma between cells, quotes as in RFC 4180.</summary>
/// <param name="Rows">The rows that are not blank, with the line each begins on, counted from 1.</param>
public sealed record SpreadsheetBlock(IReadOnlyList<(int Line, IReadOnlyList<string> Cells)> Rows)
{
    /// <summary>More text than this is refused unread.</summary>
    public const int MostCharacters = 400_000;

    private static readonly char[] s_separators = ['\t', ';', ','];

    /// <summary>The cells of a text. The separator is the first of tab, semicolon and comma that stands in the first row outside quotes.</summary>
    public static SpreadsheetBlock Of(string text)
    {
        var separator = SeparatorOf(text);
        var rows = new List<(int, IReadOnlyList<string>)>();
        var (cells, cell, isQuoted, line, start) = (new List<string>(), new StringBuilder(), false, 1, 1);
        void EndRow()
        {
            cells.Add(cell.ToString().Trim());
            if (cells.Exists(c => c.Length > 0))
            {
                rows.Add((start, cells));
            }

            (cells, start) = ([], line + 1);
            cell.Clear();
        }

        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (isQuoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append(text[++i]);
            }
            else if (c == '"' && (isQuoted || cell.ToString().Trim().Length == 0) && (isQuoted || ClosesLater(text, i, separator)))
            {
                isQuoted = !isQuoted;
            }
            else if (!isQuoted && c == separator)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else if (c == '\n')
            {
                if (isQuoted)
                {
                    cell.Append(' ');
                }
                else
                {
                    EndRow();
                }

                line++;
            }
            else if (c != '\r')
            {
                cell.Append(c);
            }
        }

        EndRow();
        return new SpreadsheetBlock(rows);
    }

    /// <summary>A quote opens a quoted cell only if one closes it before a separator or the end; else it is an inch mark.</summary>
    private static bool ClosesLater(string text, int open, char separator)
    {
        for (var i = open + 1; i < text.Length; i++)
        {
            if (text[i] != '"')
            {
                continue;
            }

            if (i + 1 < text.Length && text[i + 1] == '"')
            {
                i++;
                continue;
            }

            return i + 1 == text.Length || text[i + 1] == separator || text[i + 1] is '\r' or '\n';
        }

        return false;
    }

    private static char SeparatorOf(string text)
    {
        var first = text.TrimStart().Split('\n')[0];
        return s_separators.FirstOrDefault(first.Contains, '\t');
    }
}
