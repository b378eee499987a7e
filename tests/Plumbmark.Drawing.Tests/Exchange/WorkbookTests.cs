using System.Globalization;
using CsCheck;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Plumbmark.Inspection.Exchange;

namespace Plumbmark.Drawing.Exchange;

/// <summary>Read back with the Open XML SDK, which also checks the file against the published schemas (ECMA-376).</summary>
public sealed class WorkbookTests
{
    private static IReadOnlyList<IReadOnlyList<IReadOnlyList<string>>> ReadBack(byte[] bytes)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), false);
        Assert.Empty(
            new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2013).Validate(document).Select(e => e.Description)
        );
        var book = document.WorkbookPart!;
        return
        [
            .. book.Workbook!.Sheets!.Elements<Sheet>()
                .Select(s => ((WorksheetPart)book.GetPartById(s.Id!)).Worksheet!.GetFirstChild<SheetData>()!)
                .Select(data =>
                    (IReadOnlyList<IReadOnlyList<string>>)
                        [.. data.Elements<Row>().Select(r => (IReadOnlyList<string>)[.. r.Elements<Cell>().Select(c => c.InnerText)])]
                ),
        ];
    }

    [Fact]
    public void Workbook_OfAFrame_IsValidAndHoldsEveryReading()
    {
        var tables = ResultTables.All(InventedFrame.Car, InventedFrame.Answer);
        var sheets = ReadBack(Workbook.Write(tables));
        Assert.Equal(["Readings", "Points", "Pairs", "Checks", "Answer"], tables.Select(t => t.Name)); // no parts, no press, no road: no sheets
        Assert.Equal(tables.Count, sheets.Count);
        Assert.Equal(InventedFrame.Car.Readings.Count + 1, sheets[0].Count);
        Assert.Contains(sheets[0], r => r.Contains("r7") && r.Contains("doubted"));
        Assert.Contains(sheets[3], r => r.Contains("side-shift:A") && r.Contains("out") && r.Contains("practice"));
    }

    [Fact]
    public void Workbook_SameTables_SameBytes()
    {
        var tables = ResultTables.All(InventedFrame.Car, InventedFrame.Answer);
        Assert.Equal(Workbook.Write(tables), Workbook.Write(tables));
    }

    [Fact]
    public void Workbook_AnyTextsAndNumbers_ComeBackAndAreNoFormulas() =>
        Gen.Select(Gen.String.Where(t => t.All(c => c >= ' ' && !char.IsSurrogate(c) && c < 0xFFFE)), Gen.Double[-1e6, 1e6])
            .List[1, 5]
            .Sample(
                cells =>
                {
                    var rows = cells.Select(c =>
                        (IReadOnlyList<PlainCell>)[PlainCell.Of(c.Item1), PlainCell.Of(c.Item2), PlainCell.Nothing]
                    );
                    var bytes = Workbook.Write([new PlainTable("T", ["text", "number", "nothing"], [.. rows])]);
                    var read = ReadBack(bytes)[0].Skip(1).ToList();
                    for (var i = 0; i < cells.Count; i++)
                    {
                        Assert.Equal(2, read[i].Count); // nothing is no cell, and not a zero
                        Assert.Equal(cells[i].Item1, read[i][0]);
                        Assert.Equal(cells[i].Item2, double.Parse(read[i][1], CultureInfo.InvariantCulture));
                    }

                    using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), false);
                    Assert.Empty(document.WorkbookPart!.WorksheetParts.SelectMany(w => w.Worksheet!.Descendants<CellFormula>()));
                },
                iter: 30
            );
}
