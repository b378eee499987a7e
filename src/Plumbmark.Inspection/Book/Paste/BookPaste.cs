using Plumbmark.Engine.Lengths;

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
            return Refused("Nothing was pasted. Copy the block with its row of headings.");
        }

        if (text.Length > SpreadsheetBlock.MostCharacters)
        {
            return Refused(
                $"The block has {text.Length} characters; at most {SpreadsheetBlock.MostCharacters} are read at once. Paste it in parts."
            );
        }

        var rows = SpreadsheetBlock.Of(text).Rows;
        if (rows.Count == 0)
        {
            return Refused("The block has only empty cells. Copy it with its row of headings.");
        }

        if (!PasteHeadings.IsHeading(rows[0].Cells))
        {
            return Refused(
                $"The first row must name the columns, a value column among them. Found {string.Join(", ", rows[0].Cells.Select(c => $"“{c}”"))}; "
                    + $"known are {string.Join(", ", PasteHeadings.Offered)}."
            );
        }

        return rows.Count - 1 > MostRows
            ? Refused($"The block has {rows.Count - 1} rows; at most {MostRows} are read at once.")
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
                        $"This heading is not known; known are {string.Join(", ", PasteHeadings.Offered)}."
                    )
                );
            }
            else if (columns[i] is { } column && columns.IndexOf(column) < i)
            {
                faults.Add(
                    new PasteFault(
                        rows[0].Line,
                        headings[i],
                        $"Two columns mean the same: “{headings[columns.IndexOf(column)]}” and this one."
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
                var other = usedBy[dimension.Id] == 0 ? "by a figure of this page" : $"in row {usedBy[dimension.Id]}";
                faults.Add(new PasteFault(line, null, $"The name “{dimension.Id}” is used already {other}; every figure needs its own."));
            }

            dimensions.Add(dimension);
        }

        return faults.Count > 0 ? new PasteOutcome.Refused(faults)
            : dimensions.Count == 0 ? Refused("There is no row below the headings.")
            : new PasteOutcome.Accepted(dimensions);
    }

    private static PasteOutcome Refused(string sentence) => new PasteOutcome.Refused([new PasteFault(0, null, sentence)]);
}
