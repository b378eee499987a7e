using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>Setting up and planning in a real browser: levelling, a point in nobody's reach, the plan, the limits.</summary>
public sealed class FloorSetUpJourneys(Browser browser)
{
    [Fact]
    public async Task Level_FromFourReadingsToShims()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await page.ClickAsync("text=Level the frame");
        await page.FillAsync("#stand-0-height", "0");
        await page.FillAsync("#stand-1-height", "1/4");
        await page.FillAsync("#stand-2-height", "0");
        await page.FillAsync("#stand-3-height", "5/8");
        await page.Picture("level-empty");
        await page.ClickAsync("text=Keep and work it out");
        await Assertions.Expect(page.Locator(".level-answer")).ToContainTextAsync("rear left: put 1/4 in under it");
        await Assertions.Expect(page.Locator(".level-answer")).ToContainTextAsync("that is twist");
        await page.Picture("level-answer");
        await page.IsFitToUse();
    }

    [Fact]
    public async Task CannotDrop_OffsetFromABar_LeadsOnToItsMark()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        var car = page.Url.Split("/floor")[0];
        await page.GotoAsync($"{car}/points/B.L/drop");
        await page.Picture("obstructed");
        await page.IsFitToUse();
        await page.FillAsync("#dx", "-3");
        await page.FillAsync("#dy", "1 1/2");
        await page.Locator("#way-offset ~ form button").ClickAsync();
        await page.ClickAsync("text=Measure to mark Ba.L");
        await FloorJourneys.Pick(page, "D.L");
        await page.FillAsync("#value", "40");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync("D.L to Ba.L, plan, 40");
        await page.Picture("obstructed-done");
    }

    [Fact]
    public async Task Plan_IsATickListThatPrints()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await page.ClickAsync("text=Plan: what to measure");
        await page.ClickAsync("text=army bow limit");
        await page.ClickAsync("text=Make the plan");
        await Assertions.Expect(page.Locator(".plan-sentence")).ToContainTextAsync("settles everything to 1/4 in");
        await Assertions.Expect(page.Locator("[data-print]")).ToBeVisibleAsync();
        await page.Picture("plan");
        await page.IsFitToUse();
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await page.SetViewportSizeAsync(794, 1123);
        await Assertions.Expect(page.Locator(".plan-choice")).ToBeHiddenAsync();
        await page.Picture("plan-printed");
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Screen });
        await page.SetViewportSizeAsync(360, 740);
        await page.ClickAsync(".plan-list a >> nth=0");
        await Assertions.Expect(page.Locator("#entry")).ToBeVisibleAsync();
        await page.GotoAsync($"{page.Url.Split("/floor")[0]}/limits");
        await page.Picture("limits");
        await page.IsFitToUse();
    }
}
