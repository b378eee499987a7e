using System.IO.Compression;
using System.Text;
using System.Xml;
using Plumbmark.Inspection.Exchange;

namespace Plumbmark.Drawing.Exchange;

/// <summary>Tables as an XLSX workbook, a worksheet each: texts are texts, never formulas; numbers are numbers. The same tables give the same bytes.</summary>
/// <remarks>
/// The least of ECMA-376 (Office Open XML, SpreadsheetML, transitional) that spreadsheets open: content types, relations, workbook, two cell styles,
/// worksheets with inline strings. Nothing in it names a person or a machine. Written by hand because the libraries stamp the clock into the file.
/// </remarks>
public static class Workbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const string OfficeRelations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string ContentTypes = "http://schemas.openxmlformats.org/package/2006/content-types";
    private const string SheetMl = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    // The first moment that a zip file can hold: no clock in the file.
    private static readonly DateTimeOffset s_noTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The workbook's bytes.</summary>
    public static byte[] Write(IReadOnlyList<PlainTable> tables)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "[Content_Types].xml", xml => WriteContentTypes(xml, tables.Count));
            Part(zip, "_rels/.rels", xml => WriteRelations(xml, [("officeDocument", "xl/workbook.xml")]));
            Part(zip, "xl/workbook.xml", xml => WriteBook(xml, tables));
            var sheets = Enumerable.Range(1, tables.Count).Select(n => ("worksheet", $"worksheets/sheet{n}.xml"));
            Part(zip, "xl/_rels/workbook.xml.rels", xml => WriteRelations(xml, [.. sheets, ("styles", "styles.xml")]));
            Part(zip, "xl/styles.xml", WriteStyles);
            for (var i = 0; i < tables.Count; i++)
            {
                var table = tables[i];
                Part(zip, $"xl/worksheets/sheet{i + 1}.xml", xml => Worksheet.Write(xml, table, Main));
            }
        }

        return memory.ToArray();
    }

    private static void Part(ZipArchive zip, string name, Action<XmlWriter> write)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = s_noTime;
        using var stream = entry.Open();
        using var xml = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = new UTF8Encoding(false), CheckCharacters = true });
        xml.WriteStartDocument(standalone: true);
        write(xml);
        xml.WriteEndDocument();
    }

    private static void WriteContentTypes(XmlWriter xml, int count)
    {
        xml.WriteStartElement("Types", ContentTypes);
        Element("Default", ("Extension", "rels"), ("ContentType", "application/vnd.openxmlformats-package.relationships+xml"));
        Element("Default", ("Extension", "xml"), ("ContentType", "application/xml"));
        Element("Override", ("PartName", "/xl/workbook.xml"), ("ContentType", $"{SheetMl}sheet.main+xml"));
        Element("Override", ("PartName", "/xl/styles.xml"), ("ContentType", $"{SheetMl}styles+xml"));
        for (var n = 1; n <= count; n++)
        {
            Element("Override", ("PartName", $"/xl/worksheets/sheet{n}.xml"), ("ContentType", $"{SheetMl}worksheet+xml"));
        }

        xml.WriteEndElement();

        void Element(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
        {
            xml.WriteStartElement(name, ContentTypes);
            foreach (var (attribute, value) in attributes)
            {
                xml.WriteAttributeString(attribute, value);
            }

            xml.WriteEndElement();
        }
    }

    private static void WriteRelations(XmlWriter xml, IReadOnlyList<(string Type, string Target)> relations)
    {
        xml.WriteStartElement("Relationships", Relations);
        for (var i = 0; i < relations.Count; i++)
        {
            xml.WriteStartElement("Relationship", Relations);
            xml.WriteAttributeString("Id", $"rId{i + 1}");
            xml.WriteAttributeString("Type", $"{OfficeRelations}/{relations[i].Type}");
            xml.WriteAttributeString("Target", relations[i].Target);
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static void WriteBook(XmlWriter xml, IReadOnlyList<PlainTable> tables)
    {
        xml.WriteStartElement("workbook", Main);
        xml.WriteStartElement("sheets", Main);
        for (var i = 0; i < tables.Count; i++)
        {
            xml.WriteStartElement("sheet", Main);
            xml.WriteAttributeString("name", tables[i].Name);
            xml.WriteAttributeString("sheetId", $"{i + 1}");
            xml.WriteAttributeString("r", "id", OfficeRelations, $"rId{i + 1}");
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    // Style 0 is plain, style 1 bold for heads.
    private static void WriteStyles(XmlWriter xml)
    {
        xml.WriteStartElement("styleSheet", Main);
        xml.WriteRaw(
            "<fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font>"
                + "<font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
                + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
                + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
                + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
                + "<cellXfs count=\"2\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
                + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/></cellXfs>"
                + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles>"
        );
        xml.WriteEndElement();
    }
}
