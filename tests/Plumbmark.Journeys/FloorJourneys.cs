using System.Text.Json;
using Microsoft.Playwright;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Journeys;

/// <summary>The main job in a real browser: from an empty shed to an answer about a frame.</summary>
public sealed class FloorJourneys(Browser browser)
{
    [Fact]
    public async Task Tap_Tap_Type_KeepsAReading()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await AddCar(page, "Barn find", pairs: "5");
        await Pick(page, "B.L");
        await page.Picture("floor-one-picked");
        await Pick(page, "C.R");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("27 3/8");
        await page.Picture("floor-two-picked");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo")).ToContainTextAsync("B.L to C.R, plan, 27 3/8");
        await page.Picture("floor-kept");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".floor-readings li")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#reading-r1")).ToContainTextAsync("27 3/8");
    }

    [Fact]
    public async Task TwentyReadings_FromAnEmptyShedToAnAnswer_ThatTheCommandLineShares()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await AddCar(page, "Barn find", pairs: "5");
        var kept = 0;
        foreach (var (from, to, value) in new LadderSurvey(5).Lengths().Take(20))
        {
            await Pick(page, from);
            await Pick(page, to);
            await page.Keyboard.TypeAsync(value);
            await page.Keyboard.PressAsync("Enter");
            await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync($"r{++kept}: {from} to {to}, plan, {value}");
            if (kept == 5)
            {
                await page.Picture("floor-five-readings");
                var overall = await page.Locator("h1 .verdict").InnerTextAsync();
                Assert.Equal("can't tell yet", overall.Trim());
            }
        }

        await page.ReloadAsync();
        await Assertions.Expect(page.GetByText("20 readings in use")).ToBeVisibleAsync();
        await page.IsFitToUse();
        await page.Picture("floor-twenty-readings");

        // The sheet says the same, and leaves the serial number off unless asked.
        var address = page.Url.Split("/floor")[0];
        var sheet = await page.APIRequest.GetAsync($"{address}/sheet/frame.pdf?paper=a4");
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await sheet.BodyAsync());
        var words = string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.Contains("Barn find", words, StringComparison.Ordinal);
        Assert.Contains((await page.Locator("h1 .verdict").InnerTextAsync()).Trim(), words, StringComparison.OrdinalIgnoreCase);

        // The file taken out gives the same numbers on the command line as stand on the page.
        await page.GetByText("Show the working").ClickAsync();
        var shown = await page.Locator(".floor-working table").First.Locator("tbody tr").AllInnerTextsAsync();
        var verdict = await page.Locator("h1 .verdict").InnerTextAsync();
        var pairs = await PagePairs.Of(page);
        await page.GotoAsync(address);
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByText("Take out a car file").ClickAsync());
        var file = Path.Combine(app.Folder, "barn-find.json");
        await download.SaveAsAsync(file);
        var (code, results, _) = await AppProcess.Run(app.Folder, "check", file, "--json");
        using var json = JsonDocument.Parse(results);
        Assert.Equal(verdict.Trim(), json.RootElement.GetProperty("overall").GetProperty("verdict").GetString());
        Assert.Equal(
            verdict.Trim() switch
            {
                "true" => 0,
                "out" => 10,
                _ => 20,
            },
            code
        );
        Assert.NotEmpty(shown);
        Assert.Equal(5, pairs.Count);
        Assert.Contains(pairs, p => p[1] != "not measured");
        Assert.All(pairs, p => Assert.Equal("not measured", p[3])); // no height was taken
        Assert.Equal(PagePairs.Expected(json.RootElement, Length.FromFraction(0, 1, 16, LengthUnit.Inch)), pairs);
        Assert.Equal(
            json.RootElement.GetProperty("points").EnumerateArray().Select(PointRow),
            shown.Select(row => string.Join(' ', row.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))
        );
    }

    [Fact]
    public async Task Demo_PagePairByPair_SaysWhatCheckSays()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        var pairs = await PagePairs.Of(page);
        var (_, demo, _) = await AppProcess.Run(app.Folder, "demo");
        var file = Path.Combine(app.Folder, "demo.json");
        await File.WriteAllTextAsync(file, demo, TestContext.Current.CancellationToken);
        var (_, results, _) = await AppProcess.Run(app.Folder, "check", file, "--json");
        using var json = JsonDocument.Parse(results);
        Assert.Contains(pairs, p => p[3] != "not measured");
        Assert.Equal(PagePairs.Expected(json.RootElement, Length.FromFraction(0, 1, 32, LengthUnit.Inch)), pairs);
    }

    /// <summary>A point of <c>check --json</c> as the page writes it: tenths of a millimetre.</summary>
    private static string PointRow(JsonElement point)
    {
        string Number(string name) =>
            point.TryGetProperty(name, out var n) && n.ValueKind == JsonValueKind.Number ? n.GetDouble().ToString("0.0") : "–";
        return $"{point.GetProperty("id").GetString()} {Number("x")} {Number("ux")} {Number("y")} {Number("uy")} {Number("z")} {Number("uz")}";
    }

    [Fact]
    public async Task WithoutScript_ReadingsAreEnteredAndRead()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, script: false);
        await AddCar(page, "No script", pairs: "5");
        await Pick(page, "A.L");
        await Pick(page, "B.R");
        await page.FillAsync("#value", "31 1/2");
        await page.ClickAsync("text=Keep reading");
        await Assertions.Expect(page.Locator("#reading-r1")).ToContainTextAsync("A.L to B.R, plan, 31 1/2");
        await page.ClickAsync(".floor-undo button");
        await Assertions.Expect(page.Locator("#reading-r1")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task WrongValue_IsToldBesideTheField_AndKeepsWhatWasTyped()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor?kind=plan&from=B.L&to=C.L#value");
        await page.FillAsync("#value", "47 9/8");
        await page.ClickAsync("text=Keep reading");
        await Assertions.Expect(page.Locator("#value-fault")).ToContainTextAsync("not less than one");
        await Assertions.Expect(page.Locator("#value")).ToHaveValueAsync("47 9/8");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.IsFitToUse();
        await page.Picture("floor-wrong-value");
    }

    internal static async Task AddCar(IPage page, string name, string pairs)
    {
        await page.GotoAsync("/");
        await page.FillAsync("#name", name);
        await page.SelectOptionAsync("#skeleton", pairs);
        await page.ClickAsync("text=Add car");
        await page.WaitForURLAsync("**/floor");
    }

    /// <summary>Taps a point of the drawing.</summary>
    internal static async Task Pick(IPage page, string point)
    {
        await page.Locator($".picker-point[aria-label^='{point}']").TapAsync();
        await Assertions.Expect(page.Locator($".picker-point.is-picked[aria-label^='{point}']")).ToHaveCountAsync(1);
    }
}
