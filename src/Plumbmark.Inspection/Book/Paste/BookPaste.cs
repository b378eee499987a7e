using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Paste;

/// <summary>Reads a block pasted from a spreadsheet into figures: one action for a whole page of a book.</summary>
public static class BookPaste
{
    private const int MostRows = 2000;

    /// <summary>The figures in a block whose first row names its columns.</summary>
    /// <param name="text">The block.</param>
    /// <param name="units">The unit of a bare number in the value column; in the other column it is the other unit.</param>
    /// <param name="taken">Names that figures of the page have already.</param>
    public static PasteOutcome Read(string? text, LengthUnit units, IReadOnlyList<string>? taken = null)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refused(Texts.Say("book.paste.nothing-was-pasted-copy-the"));
        }

        if (text.Length > SpreadsheetBlock.MostCharacters)
        {
            return Refused(Texts.Say("book.paste.the-block-has-characters-at", text.Length, SpreadsheetBlock.MostCharacters));
        }

        var rows = SpreadsheetBlock.Of(text).Rows;
        if (rows.Count == 0)
        {
            return Refused(Texts.Say("book.paste.the-block-has-only-empty"));
        }

        if (!PasteHeadings.IsHeading(rows[0].Cells))
        {
            return Refused(
                Texts.Say(
                    "book.paste.the-first-row-must-name",
                    string.Join(", ", rows[0].Cells.Select(c => $"“{c}”")),
                    string.Join(", ", PasteHeadings.Offered)
                )
            );
        }

        return rows.Count - 1 > MostRows
            ? Refused(Texts.Say("book.paste.the-block-has-rows-at", rows.Count - 1, MostRows))
            : ReadRows(rows, units, taken ?? []);
    }

    private static PasteOutcome ReadRows(
        IReadOnlyList<(int Line, IReadOnlyList<string> Cells)> rows,
        LengthUnit units,
        IReadOnlyList<string> taken
    )
    {
        var faults = new List<PasteFault>();
        var headings = rows[0].Cells;
        var columns = headings.Select(PasteHeadings.Of).ToList();
        for (var i = 0; i < headings.Count; i++)
        {
            if (columns[i] is null && headings[i].Length > 0)
            {
                faults.Add(
                    new PasteFault(
                        rows[0].Line,
                        headings[i],
                        Texts.Say("book.paste.this-heading-is-not-known", string.Join(", ", PasteHeadings.Offered))
                    )
                );
            }
            else if (columns[i] is { } column && columns.IndexOf(column) < i)
            {
                faults.Add(
                    new PasteFault(
                        rows[0].Line,
                        headings[i],
                        Texts.Say("book.paste.two-columns-mean-the-same", headings[columns.IndexOf(column)])
                    )
                );
            }
        }

        var dimensions = new List<BookDimension>();
        var usedBy = taken.ToDictionary(t => t, _ => 0, StringComparer.Ordinal);
        foreach (var (line, cells) in rows.Skip(1))
        {
            var row = new PasteRow(line, cells, headings, columns, units, faults);
            if (row.Read(dimensions.Count + 1 + taken.Count) is not { } dimension)
            {
                continue;
            }

            if (!usedBy.TryAdd(dimension.Id, line))
            {
                var other =
                    usedBy[dimension.Id] == 0
                        ? Texts.Say("book.paste.by-a-figure-of-this")
                        : Texts.Say("book.paste.in-row", usedBy[dimension.Id]);
                faults.Add(new PasteFault(line, null, Texts.Say("book.paste.the-name-is-used-already", dimension.Id, other)));
            }

            dimensions.Add(dimension);
        }

        return faults.Count > 0 ? new PasteOutcome.Refused(faults)
            : dimensions.Count == 0 ? Refused(Texts.Say("book.paste.there-is-no-row-below"))
            : new PasteOutcome.Accepted(dimensions);
    }

    private static PasteOutcome Refused(string sentence) => new PasteOutcome.Refused([new PasteFault(0, null, sentence)]);
}
