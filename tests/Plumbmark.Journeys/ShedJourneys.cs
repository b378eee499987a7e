using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>The first minute: the program is started and the shed is open.</summary>
public sealed class ShedJourneys(Browser browser)
{
    [Fact]
    public async Task Start_ShowsTheDemoCarAndAnEmptyPlace()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Shed");
        await Assertions.Expect(page.Locator(".shed-car")).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator(".shed-car").First).ToContainTextAsync("Quillorne Dipper");
        await Assertions.Expect(page.Locator(".shed-car").Last).ToContainTextAsync("nothing drawn yet");
        await page.IsFitToUse();
        await page.Picture("shed-360");
    }
}
