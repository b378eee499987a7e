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

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task EveryPage_IsFitToUse(bool dark)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, dark: dark);
        foreach (
            var address in new[]
            {
                "/",
                "/cars/1",
                "/cars/1/floor",
                "/cars/1/floor?kind=offset&point=C.L&from=B.L&to=E.L",
                "/cars/1/floor?kind=drop&point=A.R",
                "/cars/1/points",
                "/cars/1/points/A.L",
                "/cars/1/tools?tool=tape",
                "/cars/1/limits",
                "/cars/1/journal",
                "/cars/1/sheet",
                "/cars/1/floor?kind=height&round=1",
                "/cars/1/readings/r1/withdrawal",
                "/cars/2/floor",
                "/cars/2/points",
                "/cars/99/floor",
            }
        )
        {
            await page.GotoAsync(address);
            await page.IsFitToUse();
            var name = string.Concat(address.Trim('/').Split('&')[0].Select(c => char.IsLetterOrDigit(c) ? c : '-'));
            await page.Picture($"{(dark ? "dark" : "light")}-{(name.Length == 0 ? "shed" : name)}");
        }
    }
}
