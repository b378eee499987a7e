using System.IO.Compression;
using System.Xml.Linq;
using Plumbmark.Drawing.Exchange;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>A text that a spreadsheet would run as a formula (CWE-1236) leaves as a text, in every extract.</summary>
public sealed class FormulaTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("=cmd|' /C calc'!A1")]
    [InlineData("+1+1")]
    [InlineData("-2+3")]
    [InlineData("@SUM(1)")]
    [InlineData("=HYPERLINK(\"http://evil.example\")")]
    public async Task Extracts_HoldNoFormula(string formula)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(Named(DemoCar.File(), formula));
        foreach (var extract in Extract.All)
        {
            var response = await app.Client.GetAsync($"/cars/{car.Id}/extracts/{extract.Word}", Stop);
            Assert.True(response.IsSuccessStatusCode, extract.Word);
            var bytes = await response.Content.ReadAsByteArrayAsync(Stop);
            if (extract.Ending.EndsWith("csv", StringComparison.Ordinal))
            {
                Assert.All(Cells(System.Text.Encoding.UTF8.GetString(bytes)), c => Assert.False(IsFormula(c), $"{extract.Word}: {c}"));
            }
            else if (extract.Ending.EndsWith("xlsx", StringComparison.Ordinal))
            {
                Assert.Empty(Formulas(bytes));
            }
        }
    }

    private static CarFile Named(CarFile car, string words) =>
        car with
        {
            Car = car.Car with { Name = words, Serial = words, Note = words },
            Readings = [.. car.Readings.Select(r => r with { Note = words })],
            Frame = car.Frame with { Points = [.. car.Frame.Points.Select(p => p with { Label = words })] },
        };

    /// <summary>What starts like a formula and is no number.</summary>
    private static bool IsFormula(string cell) =>
        cell.Length > 0
        && "=+-@\t\r".Contains(cell[0])
        && !double.TryParse(cell, System.Globalization.CultureInfo.InvariantCulture, out _)
        && !cell.Skip(1).All(c => char.IsAsciiDigit(c) || " /.\"".Contains(c));

    /// <summary>The cells of a CSV text, by a reading of RFC 4180 that is not ours.</summary>
    private static List<string> Cells(string csv)
    {
        using var reader = new Microsoft.VisualBasic.FileIO.TextFieldParser(new StringReader(csv.TrimStart('\uFEFF')))
        {
            Delimiters = [","],
            HasFieldsEnclosedInQuotes = true,
            TrimWhiteSpace = false,
        };
        var cells = new List<string>();
        while (reader.ReadFields() is { } row)
        {
            cells.AddRange(row);
        }

        return cells;
    }

    private static List<XElement> Formulas(byte[] workbook)
    {
        using var zip = new ZipArchive(new MemoryStream(workbook));
        return
        [
            .. zip
                .Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal))
                .SelectMany(e =>
                {
                    using var stream = e.Open();
                    return XDocument.Load(stream).Descendants().Where(x => x.Name.LocalName == "f").ToList();
                }),
        ];
    }
}
