namespace Plumbmark.Inspection.Book.Paste;

/// <summary>Which heading words name which column. Case, blanks and points do not matter.</summary>
public static class PasteHeadings
{
    private static readonly (PasteColumn Column, string[] Words)[] s_words =
    [
        (PasteColumn.Id, ["id", "name", "letter", "no", "number", "ref"]),
        (PasteColumn.Kind, ["kind", "what", "type", "measure", "sense"]),
        (PasteColumn.From, ["from", "point", "a", "start"]),
        (PasteColumn.To, ["to", "b", "end"]),
        (PasteColumn.Value, ["value", "figure in", "inch", "inches", "in", "length", "size"]),
        (PasteColumn.Also, ["also", "mm", "millimetres", "millimeters", "metric"]),
        (PasteColumn.Tolerance, ["tolerance", "tol", "plus minus", "+/-", "±", "limit"]),
        (PasteColumn.Sides, ["sides", "both sides", "both"]),
        (PasteColumn.Part, ["part"]),
        (PasteColumn.Variant, ["variant", "version"]),
        (PasteColumn.Dimension, ["dimension", "dim"]),
        (PasteColumn.SerialFrom, ["serial from", "from serial", "first serial", "from number"]),
        (PasteColumn.SerialTo, ["serial to", "to serial", "last serial", "to number"]),
        (PasteColumn.Page, ["page", "section"]),
        (PasteColumn.Figure, ["figure", "fig", "plate"]),
        (PasteColumn.Note, ["note", "notes", "remark", "remarks", "comment"]),
    ];

    /// <summary>The columns in the words that are offered first, for a hint beside the form.</summary>
    public static IReadOnlyList<string> Offered { get; } = [.. s_words.Select(w => w.Words[0])];

    /// <summary>The column that a heading names; null when it names none.</summary>
    public static PasteColumn? Of(string heading)
    {
        var bare = Bare(heading);
        foreach (var (column, words) in s_words)
        {
            if (words.Contains(bare))
            {
                return column;
            }
        }

        return null;
    }

    /// <summary>Whether a row can be a row of headings: it names the figure, or the points, and a value.</summary>
    internal static bool IsHeading(IReadOnlyList<string> cells)
    {
        var columns = cells.Select(Of).OfType<PasteColumn>().ToHashSet();
        return columns.Count >= 2 && (columns.Contains(PasteColumn.Value) || columns.Contains(PasteColumn.Also));
    }

    private static string Bare(string heading) =>
        string.Join(' ', heading.ToLowerInvariant().Split([' ', '\u00a0', '.', '_', '(', ')', ':'], StringSplitOptions.RemoveEmptyEntries));
}
