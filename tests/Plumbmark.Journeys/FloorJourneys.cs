using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>The main job in a real browser: from an empty shed to an answer about a frame.</summary>
public sealed class FloorJourneys(Browser browser) : IClassFixture<Browser>
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
