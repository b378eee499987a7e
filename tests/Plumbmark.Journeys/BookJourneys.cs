using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>The book in a real browser without script: a misprint is seen, looked at and corrected; every page is fit to use.</summary>
public sealed class BookJourneys(Browser browser)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task AMisprint_IsSeenLookedAtAndCorrected(bool dark)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, width: 360, dark: dark);
        await page.GotoAsync("/cars/1/book");
        await page.IsFitToUse();
        await page.Picture($"book-{(dark ? "dark" : "light")}");
        await page.GotoAsync("/cars/1/book/page?id=frame");
        await page.IsFitToUse();
        await page.Picture($"book-page-{(dark ? "dark" : "light")}");
        await page.GetByRole(AriaRole.Link, new() { Name = "Look at e-f" }).ClickAsync();
        await page.IsFitToUse();
        await page.Picture($"book-figure-{(dark ? "dark" : "light")}");
        await page.GetByLabel("The figure is").SelectOptionAsync("corrected");
        await page.GetByLabel("Value to use, when corrected").FillAsync("26");
        await page.GetByLabel("Why").FillAsync("the chain closes with it");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Corrected to 26: the chain closes with it.");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("29 printed for 26");
    }
}
