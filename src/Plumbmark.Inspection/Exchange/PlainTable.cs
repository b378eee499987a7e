using System.Globalization;
using System.Text;

namespace Plumbmark.Inspection.Exchange;

/// <summary>A table to take elsewhere.</summary>
/// <param name="Name">What it is about, in one word.</param>
/// <param name="Heads">What its columns hold, with the unit where there is one.</param>
/// <param name="Rows">Its rows, each a cell for every column.</param>
public sealed record PlainTable(string Name, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<PlainCell>> Rows)
{
    /// <summary>The table as CSV after RFC 4180, UTF-8 with a byte order mark. No cell is taken for a formula.</summary>
    public byte[] Csv()
    {
        var csv = new StringBuilder("\uFEFF");
        CsvText.WriteRow(csv, Heads);
        foreach (var row in Rows)
        {
            CsvText.WriteRow(csv, row.Select(c => c.Match(CsvText.Shielded, NumberText, () => null)));
        }

        return Encoding.UTF8.GetBytes(csv.ToString());
    }

    /// <summary>A number as text that any machine reads alike; its unit stands in the head of its column.</summary>
    public static string NumberText(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
