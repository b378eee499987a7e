using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Microsoft.Playwright;
using Plumbmark.Engine.Lengths;
using UglyToad.PdfPig;

namespace Plumbmark.Journeys;

/// <summary>Sheets and files from the command line and from the page: the same numbers everywhere, the same bytes for the same car.</summary>
public sealed class SheetJourneys(Browser browser)
{
    private static readonly string[] s_sheets = ["frame", "workshop", "form", "parts", "press", "road"];

    private static async Task<string> DemoFolder()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-sheets-").FullName;
        var (code, results, remarks) = await AppProcess.Run(folder, "demo");
        Assert.True(code == 0, remarks);
        await File.WriteAllTextAsync(Path.Combine(folder, "car.json"), results);
        return folder;
    }

    private static string TextOf(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join(' ', document.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    [Fact]
    public async Task Verb_EverySheet_IsTheSamePdfTwice()
    {
        var folder = await DemoFolder();
        foreach (var kind in s_sheets)
        {
            foreach (var name in new[] { "one.pdf", "two.pdf" })
            {
                var (code, _, remarks) = await AppProcess.Run(folder, "sheet", kind, "car.json", "-o", name, "--date", "2026-05-31");
                Assert.True(code == 0, $"{kind}: {remarks}");
            }

            var one = await File.ReadAllBytesAsync(Path.Combine(folder, "one.pdf"));
            Assert.Equal(one, await File.ReadAllBytesAsync(Path.Combine(folder, "two.pdf")));
            Assert.Contains("2026-05-31", TextOf(one), StringComparison.Ordinal);
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task FrameSheet_SaysWhatCheckSays_RowByRow()
    {
        var folder = await DemoFolder();
        var (_, json, _) = await AppProcess.Run(folder, "check", "car.json", "--json");
        await AppProcess.Run(folder, "sheet", "frame", "car.json", "-o", "frame.pdf");
        var pdf = await File.ReadAllBytesAsync(Path.Combine(folder, "frame.pdf"), TestContext.Current.CancellationToken);
        using var document = JsonDocument.Parse(json);
        var answer = document.RootElement;
        var overall = answer.GetProperty("overall");
        // Large and small letters of one line do not stand on one baseline: the verdict and the headline are looked for one after the other.
        Assert.Contains(overall.GetProperty("verdict").GetString()!, TextOf(pdf), StringComparison.Ordinal);
        Assert.Contains(overall.GetProperty("headline").GetString()!, TextOf(pdf), StringComparison.Ordinal);

        var rows = PairTable.Of(pdf);
        var pairs = answer.GetProperty("pairs").EnumerateArray().ToList();
        Assert.Equal(pairs.Count, rows.Count);
        Assert.All(pairs.Zip(rows), p => Assert.Equal(PairTable.Expected(answer, p.First), p.Second));
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Readings_ExtractedAndAddedToAnEmptyCar_AreTheSameReadings()
    {
        var folder = await DemoFolder();
        Assert.Equal(0, (await AppProcess.Run(folder, "extract", "readings", "car.json", "-o", "readings.csv")).Code);
        var car = System.Text.Json.Nodes.JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "car.json")))!;
        var readings = car["readings"]!.ToJsonString();
        car.AsObject().Remove("readings");
        await File.WriteAllTextAsync(Path.Combine(folder, "empty.json"), car.ToJsonString());
        var (code, _, remarks) = await AppProcess.Run(folder, "add-readings", "empty.json", "readings.csv", "-o", "again.json");
        Assert.True(code == 0, remarks);
        var again = System.Text.Json.Nodes.JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "again.json")))!;
        Assert.Equal(readings, again["readings"]!.ToJsonString());
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Backup_RestoredElsewhere_IsTheSameShed()
    {
        var folder = await DemoFolder();
        Assert.Equal(0, (await AppProcess.Run(folder, "import", "car.json", "--data", "here.db")).Code);
        Assert.Equal(0, (await AppProcess.Run(folder, "backup", "-o", "all.backup", "--data", "here.db")).Code);
        var (code, _, remarks) = await AppProcess.Run(folder, "restore", "all.backup", "--data", "there.db");
        Assert.True(code == 0, remarks);
        var (_, here, _) = await AppProcess.Run(folder, "export", "1", "--data", "here.db");
        var (_, there, _) = await AppProcess.Run(folder, "export", "1", "--data", "there.db");
        Assert.NotEmpty(here);
        Assert.Equal(here, there);
        Assert.Equal(2, (await AppProcess.Run(folder, "restore", "car.json", "--data", "there.db")).Code);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task BeforeAfter_TwoWrongFiles_TellsTheFaultsOfBoth()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-sheets-").FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "one.json"), """{ "format": "plumbmark-car", "version": 1, "units": "miles" }""");
        await File.WriteAllTextAsync(Path.Combine(folder, "two.json"), """{ "format": "plumbmark-car", "version": 9, "units": "in" }""");
        var (code, _, remarks) = await AppProcess.Run(folder, "sheet", "before-after", "one.json", "two.json", "-o", "x.pdf");
        Assert.Equal(2, code);
        Assert.Contains("one.json is refused", remarks, StringComparison.Ordinal);
        Assert.Contains("two.json is refused", remarks, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder, "x.pdf")));
        Directory.Delete(folder, recursive: true);
    }

    // The folder, the file and the account bear a name that nothing written may carry; the car's own words it may.
    [Fact]
    public async Task NothingWritten_NamesPersonOrPlaceThatWasNotChosen()
    {
        const string Secret = "zebedee";
        var folder = Directory.CreateTempSubdirectory($"plumbmark-{Secret}-").FullName;
        var (_, demo, _) = await AppProcess.Run(folder, "demo");
        var file = $"{Secret}.json";
        await File.WriteAllTextAsync(Path.Combine(folder, file), demo);
        List<string[]> writers =
        [
            .. s_sheets.Select(kind => new[] { "sheet", kind, file }),
            ["sheet", "before-after", file, file],
            .. s_extracts.Select(what => new[] { "extract", what, file }),
            ["club", file],
        ];
        string[] telltales =
        [
            Secret,
            .. Telltales(Environment.MachineName),
            .. Telltales(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)),
        ];
        foreach (var writer in writers)
        {
            var path = Path.Combine(folder, "out");
            var (code, _, remarks) = await AppProcess.Run(folder, [.. writer, "-o", path]);
            Assert.True(code == 0, $"{string.Join(' ', writer)}: {remarks}");
            var text = Readable(await File.ReadAllBytesAsync(path));
            // A folder such as /root is spelt as it is; a PDF's own trailer says /Root.
            Assert.All(
                telltales,
                t => Assert.DoesNotContain(t, text, t.Contains('/') ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase)
            );
        }

        Directory.Delete(folder, recursive: true);
    }

    private static readonly string[] s_extracts = ["readings", "points", "pairs", "checks", "workbook", "plan", "side", "dxf"];

    // Two letters may stand anywhere by chance.
    private static IEnumerable<string> Telltales(string name) => name.Length > 3 ? [name] : [];

    /// <summary>Everything in a file that can be read: its bytes, the parts of a zip, the text and the entries of a PDF.</summary>
    private static string Readable(byte[] bytes)
    {
        var text = Encoding.Latin1.GetString(bytes);
        if (text.StartsWith("PK", StringComparison.Ordinal))
        {
            using var zip = new ZipArchive(new MemoryStream(bytes));
            foreach (var entry in zip.Entries)
            {
                Assert.Equal(1980, entry.LastWriteTime.Year);
                using var reader = new StreamReader(entry.Open());
                text += entry.FullName + reader.ReadToEnd();
            }
        }

        if (text.StartsWith("%PDF", StringComparison.Ordinal))
        {
            using var document = PdfDocument.Open(bytes);
            Assert.True(string.IsNullOrEmpty(document.Information.Author));
            text += TextOf(bytes) + document.Information.Title + document.Information.Creator + document.Information.Producer;
        }

        return text;
    }

    [Theory]
    [InlineData(2, "sheet", "frame", "missing.json", "-o", "x.pdf")]
    [InlineData(64, "sheet", "frame", "car.json", "-o", "x.pdf", "--again")]
    [InlineData(64, "sheet", "form", "car.json", "-o", "x.pdf", "--again", "--planned")]
    [InlineData(64, "sheet", "nonsense", "car.json", "-o", "x.pdf")]
    [InlineData(64, "sheet", "before-after", "car.json", "-o", "x.pdf")]
    [InlineData(64, "sheet", "frame", "car.json", "-o", "x.pdf", "--date", "yesterday")]
    [InlineData(64, "extract", "nonsense", "car.json", "-o", "x.csv")]
    [InlineData(2, "sheet", "frame", "car.json", "-o", "no-such-folder/x.pdf")]
    public async Task Verb_Wrong_SaysSoAndEndsAsTold(int expected, params string[] arguments)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-sheets-").FullName;
        await File.WriteAllTextAsync(Path.Combine(folder, "car.json"), """{ "format": "plumbmark-car", "version": 1, "units": "in" }""");
        var (code, _, remarks) = await AppProcess.Run(folder, arguments);
        Assert.Equal(expected, code);
        Assert.NotEmpty(remarks);
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task SheetPages_AreFitToUse(bool dark)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, dark: dark);
        foreach (var address in new[] { "/cars/1/sheet", "/cars/1/sheet/form-in?ask=all", "/cars/1/sheet/readings-in" })
        {
            await page.GotoAsync(address);
            await page.IsFitToUse();
            await page.Picture($"{(dark ? "dark" : "light")}-{address.Split('/')[^1].Split('?')[0]}");
        }

        await page.GetByLabel("Or its rows, pasted").FillAsync("one,two,length\nA.L,Q.L,22 1/4\nA.L,B.L,5/0\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring in" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Nothing was taken" })).ToBeVisibleAsync();
        await page.IsFitToUse();
        await page.Picture($"{(dark ? "dark" : "light")}-readings-in-refused");
    }
}
