using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Journeys;

/// <summary>Entering with one thumb: our own keys, the next pair filled in, the reading said back.</summary>
public sealed class EntryJourneys(Browser browser)
{
    [Fact]
    public async Task EighteenLengthsAndEightHeights_TakeTwoTapsAndTheDigitsEach()
    {
        await using var app = await StartWithFourPairs();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor?round=1#value");
        var (readings, spare) = (0, 0);
        var random = new Random(1955);
        while (readings < 26)
        {
            await Assertions.Expect(page.Locator("[data-keypad]")).ToBeVisibleAsync();
            var now = await page.Locator(".floor-now").InnerTextAsync();
            var (whole, sixteenths) = (random.Next(10, 90), random.Next(0, 16));
            var value = Written(whole, sixteenths);
            var taps = await Enter(page, value);
            await page.Locator(".floor-keep").TapAsync();
            taps++;
            readings++;
            await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync($"r{readings}: ");
            var said = await page.Locator(".floor-undo p").First.InnerTextAsync();
            Assert.EndsWith(value, said.Trim(), StringComparison.Ordinal);
            Assert.Contains(now.Replace("Height of ", "", StringComparison.Ordinal), said, StringComparison.Ordinal);
            var beyondDigits = taps - value.Count(char.IsAsciiDigit);
            Assert.True(beyondDigits <= 2, $"{value} took {taps} taps, {beyondDigits} more than its digits.");
            spare += beyondDigits;
        }

        await Assertions.Expect(page.Locator(".floor-progress")).ToContainTextAsync("18 of 18 lengths, 8 of 8 heights.");
        Assert.True(spare <= 2 * readings);
    }

    [Theory]
    [InlineData(360, 740)]
    [InlineData(740, 360)]
    public async Task Keys_AreLargeAndInOneHandsReach_UprightAndLyingDown(int width, int height)
    {
        await using var app = await StartWithFourPairs();
        var page = await browser.Open(app, width, height);
        await page.GotoAsync("/cars/1/floor?round=1#value");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await Enter(page, "47 5/8");
        await Assertions.Expect(page.Locator("#value")).ToHaveValueAsync("47 5/8");
        Assert.Equal("none", await page.Locator("#value").GetAttributeAsync("inputmode"));
        await page.IsFitToUse();
        await page.Locator(".floor-keep").TapAsync();
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync("r1: ");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.WaitForTimeoutAsync(700);
        await page.ScreenshotAsync(
            new PageScreenshotOptions { Path = Testing.Repository.PathTo("artifacts", "screens", $"keys-{width}.png") }
        );
        await page.Picture($"entry-round-{width}");
        // From the pair asked for to the last key and the button: all on one screen above the rooms, nothing to scroll.
        var now = await page.Locator(".floor-now").BoundingBoxAsync();
        var rooms = await page.Locator(".rooms").BoundingBoxAsync();
        var keep = await page.Locator(".floor-keep").BoundingBoxAsync();
        var last = await page.Locator("[data-keypad] [data-key='/16']").BoundingBoxAsync();
        var bottom = Math.Max(keep!.Y + keep.Height, last!.Y + last.Height);
        Assert.True(now!.Y >= 0 && bottom <= rooms!.Y + 1, $"from {now.Y} to {bottom}, the rooms begin at {rooms!.Y}");
    }

    [Fact]
    public async Task Keys_FeetOtherUnitAndRubbingOut()
    {
        await using var app = await StartWithFourPairs();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor?kind=plan&from=A.L&to=D.R#value");
        foreach (
            var (keys, shown) in new[]
            {
                ("5 foot 1 and 3 /16", "5' 1 3/16"),
                ("back", "5' 1 3"),
                ("clear 3 /8 /16", "3/16"),
                ("clear 1 2 1 0 unit", "1210 mm"),
                ("unit . 5", "1210.5"),
            }
        )
        {
            foreach (var key in keys.Split(' '))
            {
                await page.Locator($"[data-keypad] [data-key='{key}']").TapAsync();
            }

            await Assertions.Expect(page.Locator("#value")).ToHaveValueAsync(shown);
        }

        await page.ClickAsync("[data-switch=keypad]");
        await Assertions.Expect(page.Locator("[data-keypad]")).ToBeHiddenAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("[data-keypad]")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Voice_SaysTheKeptReadingBack_OnlyWhenAsked()
    {
        await using var app = await StartWithFourPairs();
        var page = await browser.Open(app);
        await page.AddInitScriptAsync(
            "window.said = []; window.SpeechSynthesisUtterance = function (t) { this.text = t; };"
                + "Object.defineProperty(window, 'speechSynthesis', { value: { cancel() {}, speak(u) { window.said.push(u.text); } } });"
        );
        await page.GotoAsync("/cars/1/floor?kind=plan&from=A.L&to=D.R#value");
        await Keep(page, "60", "r1: A.L to D.R");
        Assert.Empty(await page.EvaluateAsync<string[]>("window.said"));
        await page.ClickAsync("[data-switch=voice]");
        await page.GotoAsync("/cars/1/floor?kind=plan&from=A.L&to=D.R#value");
        await Keep(page, "61 3/16", "r2: A.L to D.R");
        Assert.Equal(["r2: A left to D right, plan, 61 3/16"], await page.EvaluateAsync<string[]>("window.said"));
        // Same again and drop again are one tap away.
        await page.ClickAsync("text=Drop D.R again");
        await Assertions.Expect(page.Locator("#point")).ToHaveValueAsync("D.R");
        await page.Picture("entry-drop-again");
        await page.IsFitToUse();
    }

    [Fact]
    public async Task QuickLine_IsKeptFromTheKeyboardAlone()
    {
        await using var app = await StartWithFourPairs();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        await page.ClickAsync("text=In one line");
        await page.Locator("#line").FocusAsync();
        await page.Keyboard.TypeAsync("B-D R 48 7/8");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync("r1: B.R to D.R, plan, 48 7/8");
        await page.Picture("entry-quick");
    }

    /// <summary>A program with one car of four pairs in its shed: 18 lengths and 8 heights on its round.</summary>
    internal static async Task<AppProcess> StartWithFourPairs()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-journey-").FullName;
        var points = FrameSkeleton.Ladder(5, LengthUnit.Inch).Where(p => !p.Id.StartsWith('E'));
        var car = CarFile.Named("Four pairs", LengthUnit.Inch) with { Frame = new Frame([.. points]) };
        var file = Path.Combine(folder, "four.json");
        await File.WriteAllBytesAsync(file, CarFileWriter.Write(car));
        var (code, _, remarks) = await AppProcess.Run(folder, "import", file, "--data", Path.Combine(folder, "plumbmark.db"));
        Assert.True(code == 0, remarks);
        return await AppProcess.Start(folder);
    }

    private static async Task Keep(IPage page, string value, string kept)
    {
        await page.FillAsync("#value", value);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync(kept);
    }

    /// <summary>Taps a value on the keys and counts the taps; a denominator of two digits is one of them.</summary>
    private static async Task<int> Enter(IPage page, string value)
    {
        var taps = 0;
        foreach (var key in Keys(value))
        {
            await page.Locator($"[data-keypad] [data-key='{key}']").TapAsync();
            taps++;
        }

        await Assertions.Expect(page.Locator("#value")).ToHaveValueAsync(value);
        return taps;
    }

    private static IEnumerable<string> Keys(string value)
    {
        var slash = value.IndexOf('/', StringComparison.Ordinal);
        foreach (var c in slash < 0 ? value : value[..slash])
        {
            yield return c == ' ' ? "and" : c.ToString();
        }

        if (slash >= 0)
        {
            yield return value[slash..];
        }
    }

    private static string Written(int whole, int sixteenths)
    {
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"{whole}");
        var (numerator, denominator) = (sixteenths, 16);
        while (numerator > 0 && numerator % 2 == 0)
        {
            (numerator, denominator) = (numerator / 2, denominator / 2);
        }

        return numerator == 0 ? text.ToString() : text.Append(CultureInfo.InvariantCulture, $" {numerator}/{denominator}").ToString();
    }
}
