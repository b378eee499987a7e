using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>Loose parts in a real browser: which lever is the wrong one, and a new part from the box to an answer.</summary>
public sealed class BenchJourneys(Browser browser)
{
    [Fact]
    public async Task DemoParts_TheWrongLeverIsFoundAndNotCalledBent()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/bench");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Bench");
        await page.IsFitToUse();
        await page.Picture("bench-360");
        await page.ClickAsync("text=lever, left");
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("replace");
        await Assertions.Expect(page.Locator(".bench-why")).ToContainTextAsync("It is not bent");
        await Assertions.Expect(page.Locator(".bench-odds li").First).ToContainTextAsync("more than 99%");
        await page.IsFitToUse();
        await page.Picture("bench-lever-360");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task NewPart_FromTheBoxToAnAnswer_WithAndWithoutScript(bool script)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, script: script);
        await page.GotoAsync("/cars/2/bench");
        await page.SelectOptionAsync("#kind", "LowerWishbone");
        await page.SelectOptionAsync("#side", "right");
        await page.SelectOptionAsync("#made", "Pressed");
        await page.ClickAsync("text=Lay it down");
        await page.WaitForURLAsync("**/bench/parts/lower-wishbone.R");
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("measure again");
        await page.FillAsync("#from", "front eye");
        await page.FillAsync("#to", "rear eye");
        await page.FillAsync("#span", "6");
        await page.FillAsync("#near", "9.01");
        await page.FillAsync("#far", "9.13");
        await page.ClickAsync("text=Keep measure");
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("straighten");
        await Assertions.Expect(page.Locator(".bench-dimensions")).ToContainTextAsync("Parallelism of front eye and rear eye");
        if (script)
        {
            await page.IsFitToUse();
            await page.Picture("bench-new-part-360");
        }

        // A kink seen while cleaning: the same numbers, another answer.
        await page.ClickAsync("text=Write the card");
        await page.CheckAsync("text=kinked");
        await page.FillAsync("#number", "51-0417");
        await page.ClickAsync("text=Keep card");
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("replace");
        await page.GotoAsync("/cars/2/bench?find=51 0417");
        await Assertions.Expect(page.Locator(".bench-parts li")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Photo_IsShownOnTheCard_AndAnotherTypeIsRefusedInWords()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/bench/parts/arm.L");
        await page.SetInputFilesAsync("#photo", Given("notes.txt", "text/plain", "no picture"u8.ToArray()));
        await page.ClickAsync("text=Keep photo");
        await Assertions.Expect(page.Locator("#photo-fault")).ToContainTextAsync("a JPEG or PNG picture is needed");
        await page.IsFitToUse();
        // A picture that the browser itself takes of the page is a PNG that nobody has prepared.
        var shot = await page.ScreenshotAsync();
        await page.SetInputFilesAsync("#photo", Given("shot.png", "image/png", shot));
        await page.ClickAsync("text=Keep photo");
        var image = page.Locator(".bench-photo img");
        await Assertions.Expect(image).ToBeVisibleAsync();
        await image.ScrollIntoViewIfNeededAsync();
        await Assertions.Expect(image).ToHaveJSPropertyAsync("complete", true);
        Assert.True(await image.EvaluateAsync<int>("i => i.naturalWidth") > 300);
        await page.IsFitToUse();
        await page.Picture("bench-photo-360");
    }

    private static FilePayload Given(string name, string type, byte[] bytes) =>
        new()
        {
            Name = name,
            MimeType = type,
            Buffer = bytes,
        };
}
