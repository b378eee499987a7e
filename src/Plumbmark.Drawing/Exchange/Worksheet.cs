using System.Globalization;
using System.Text;
using System.Xml;
using Plumbmark.Inspection.Exchange;

namespace Plumbmark.Drawing.Exchange;

/// <summary>One worksheet: bold heads that stay in sight, then the rows.</summary>
internal static class Worksheet
{
    // What a cell may hold (ECMA-376 application limit of the spreadsheets in use); longer texts are cut there.
    private const int LongestText = 32_767;

    public static void Write(XmlWriter xml, PlainTable table, string ns)
    {
        xml.WriteStartElement("worksheet", ns);
        xml.WriteRaw(
            "<sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews>"
        );
        xml.WriteStartElement("cols", ns);
        for (var c = 0; c < table.Heads.Count; c++)
        {
            var longest = table.Rows.Select(r => r[c].Match(t => t.Length, _ => 8, () => 0)).Append(table.Heads[c].Length).Max();
            xml.WriteStartElement("col", ns);
            xml.WriteAttributeString("min", $"{c + 1}");
            xml.WriteAttributeString("max", $"{c + 1}");
            xml.WriteAttributeString("width", $"{Math.Clamp(longest + 2, 6, 40)}");
            xml.WriteAttributeString("customWidth", "1");
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteStartElement("sheetData", ns);
        Row(xml, ns, 1, [.. table.Heads.Select(h => PlainCell.Of(h))], "1");
        for (var r = 0; r < table.Rows.Count; r++)
        {
            Row(xml, ns, r + 2, table.Rows[r], null);
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void Row(XmlWriter xml, string ns, int number, IReadOnlyList<PlainCell> cells, string? style)
    {
        xml.WriteStartElement("row", ns);
        xml.WriteAttributeString("r", $"{number}");
        for (var c = 0; c < cells.Count; c++)
        {
            var address = $"{ColumnName(c)}{number}";
            cells[c]
                .Match(
                    text => Cell(address, "inlineStr", () => Inline(text)),
                    value => Cell(address, null, () => xml.WriteElementString("v", ns, value.ToString("R", CultureInfo.InvariantCulture))),
                    () => false
                );
        }

        xml.WriteEndElement();

        bool Cell(string address, string? type, Action content)
        {
            xml.WriteStartElement("c", ns);
            xml.WriteAttributeString("r", address);
            if (style is not null)
            {
                xml.WriteAttributeString("s", style);
            }

            if (type is not null)
            {
                xml.WriteAttributeString("t", type);
            }

            content();
            xml.WriteEndElement();
            return true;
        }

        void Inline(string text)
        {
            xml.WriteStartElement("is", ns);
            xml.WriteStartElement("t", ns);
            xml.WriteAttributeString("xml", "space", null, "preserve");
            xml.WriteString(Allowed(text));
            xml.WriteEndElement();
            xml.WriteEndElement();
        }
    }

    /// <summary>A, B, … Z, AA.</summary>
    private static string ColumnName(int index) =>
        index < 26 ? $"{(char)('A' + index)}" : ColumnName((index / 26) - 1) + ColumnName(index % 26);

    /// <summary>The text without the characters that XML 1.0 cannot hold; each becomes a replacement mark.</summary>
    private static string Allowed(string text)
    {
        var allowed = new StringBuilder(Math.Min(text.Length, LongestText));
        foreach (var rune in text.EnumerateRunes())
        {
            var holds = rune.Value is '\t' or '\n' or '\r' || (rune.Value >= ' ' && rune.Value is not (0xFFFE or 0xFFFF));
            if (allowed.Length + rune.Utf16SequenceLength > LongestText)
            {
                break;
            }

            allowed.Append(holds ? rune.ToString() : "\uFFFD");
        }

        return allowed.ToString();
    }
}
