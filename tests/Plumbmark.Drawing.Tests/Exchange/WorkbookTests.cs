using System.Globalization;
using CsCheck;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Exchange;
using Plumbmark.Inspection.Road;
using Plumbmark.Testing;

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
    public void Workbook_PartsSheet_HoldsEveryDimensionOfEveryPart()
    {
        var car = DemoCar.File();
        var answer = BenchInspection.Of(car);
        Assert.NotEmpty(answer.Parts);
        var rows = ReadBack(Workbook.Write([PartTables.Parts(answer)]))[0];
        Assert.Equal("part", rows[0][0]);
        foreach (var part in answer.Parts)
        {
            var own = rows.Where(r => r[0] == part.Part.Id).ToList();
            // A dimension held against nothing has one row, and one held against two things has two.
            Assert.Equal(Math.Max(1, part.Dimensions.Sum(d => Math.Max(1, d.Comparisons.Count))), own.Count);
            Assert.All(own, r => Assert.Equal(DispositionWord.For(part.Disposition), r[1]));
            foreach (var value in part.Dimensions.Select(d => d.Value).Where(v => v.Quantity == Quantity.Length))
            {
                var row = own.First(r => r[2] == value.Dimension);
                Assert.Equal("mm", row[3]);
                Assert.Equal(value.Si * 1000, double.Parse(row[4], CultureInfo.InvariantCulture), 1e-4); // written to 1e-4 mm
            }
        }
    }

    [Fact]
    public void Workbook_BitesSheet_HoldsEveryBiteAsWrittenAndItsSet()
    {
        var car = CarFileReader
            .Read(PressJobSamples.LowerArmAfter(3).Utf8())
            .Match(c => c, f => throw new InvalidOperationException(string.Join('\n', f)));
        var rows = ReadBack(Workbook.Write([PartTables.Bites(car)]))[0];
        var bites = car.Press.SelectMany(j => j.Bites).ToList();
        Assert.Equal(3, bites.Count);
        Assert.Equal(bites.Select(b => b.Id), rows.Skip(1).Select(r => r[1]));
        Assert.Equal(bites.Select(b => b.Travel.AsTyped), rows.Skip(1).Select(r => r[2]));
        // The press sheet says of one of these bites that 0.08 in stayed: 2.032 mm.
        Assert.Contains(
            rows.Skip(1).SelectMany(r => r),
            c => double.TryParse(c, CultureInfo.InvariantCulture, out var set) && Math.Abs(set - 2.032) < 0.13
        );
    }

    [Fact]
    public void Workbook_RoadSheet_HoldsEveryFigureInDegreesOrMillimetres()
    {
        var answer = RoadInspection.Of(DemoRoad.Car(DemoRoad.Fault.BentMount));
        Assert.NotEmpty(answer.Figures);
        Assert.Contains(answer.Figures, f => RoadNames.Of(f.Kind).Contains("camber", StringComparison.OrdinalIgnoreCase));
        var rows = ReadBack(Workbook.Write([RoadTables.Figures(answer)]))[0];
        Assert.Equal(answer.Figures.Count + 1, rows.Count);
        foreach (var (figure, row) in answer.Figures.Zip(rows.Skip(1)))
        {
            Assert.Equal(RoadNames.Of(figure.Kind), row[0]);
            var at = row.ToList().FindIndex(c => c is "deg" or "mm");
            Assert.True(at > 0, string.Join(' ', row));
            var shown = row[at] == "deg" ? figure.Value * 180 / Math.PI : figure.Value * 1000;
            Assert.Equal(row[0].Contains("camber", StringComparison.OrdinalIgnoreCase) ? "deg" : row[at], row[at]);
            Assert.Equal(shown, double.Parse(row[at + 2], CultureInfo.InvariantCulture), 1e-4); // written to 1e-4
        }
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
