using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>The first minute: the program is started and the shed is open.</summary>
public sealed class ShedJourneys(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task Start_ShowsTheShed()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Shed");
        await page.IsFitToUse();
        await page.Picture("shed-360");
    }
}
