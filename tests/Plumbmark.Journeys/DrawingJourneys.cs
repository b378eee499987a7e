using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>Drawings in a real browser: a point tapped for its story, the frame turned by finger, looks for night and sun, the first visit.</summary>
public sealed class DrawingJourneys(Browser browser)
{
    [Fact]
    public async Task Point_TappedOnTheDrawing_TellsItsStory()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        await page.Locator(".floor-drawing")
            .First.ScreenshotAsync(
                new LocatorScreenshotOptions { Path = Testing.Repository.PathTo("artifacts", "screens", "demo-plan.png") }
            );
        await page.Locator(".floor-drawing a[data-key='A.R']").First.ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("A.R");
        await page.Picture("story");
        await page.IsFitToUse();
    }

    [Fact]
    public async Task Frame_TurnsByFinger_OrStandsStillWithoutWebGl()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/turning");
        await Assertions
            .Expect(page.Locator("[data-turning]"))
            .ToHaveAttributeAsync("data-turns", new System.Text.RegularExpressions.Regex("yes|no"));
        if (await page.Locator("[data-turning]").GetAttributeAsync("data-turns") == "yes")
        {
            var canvas = page.Locator("[data-turning] canvas");
            var before = await canvas.ScreenshotAsync();
            await page.ClickAsync("[data-turn=right]");
            await page.WaitForTimeoutAsync(300);
            var after = await canvas.ScreenshotAsync();
            Assert.False(before.SequenceEqual(after), "It did not turn.");
        }
        else
        {
            await Assertions.Expect(page.Locator(".turning-still svg")).ToBeVisibleAsync();
        }

        await page.Picture("turning");
        await page.IsFitToUse();
        var plain = await browser.Open(app);
        await plain.AddInitScriptAsync("HTMLCanvasElement.prototype.getContext = () => null;");
        await plain.GotoAsync("/cars/1/turning");
        await Assertions.Expect(plain.Locator("[data-turning]")).ToHaveAttributeAsync("data-turns", "no");
        await Assertions.Expect(plain.Locator(".turning-still svg")).ToBeVisibleAsync();
        await plain.Picture("turning-still");
    }

    [Fact]
    public async Task Looks_LightDarkAndSun_AreReadable()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        foreach (var look in new[] { "sun", "dark" })
        {
            await page.GotoAsync("/cars/1/floor");
            await page.ClickAsync(".top-look");
            await page.ClickAsync($"label:has(input[value={look}])");
            await page.ClickAsync("button[type=submit]");
            await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("data-look", look);
            await page.WaitForURLAsync("**/cars/1/floor");
            await page.IsFitToUse();
            await page.Picture($"floor-{look}");
            // So black on white that a low sun cannot wash it out: WCAG 2.2, 1.4.6, asks 7 to 1 for text; this asks 10.
            if (look == "sun")
            {
                var pairs = await page.EvaluateAsync<string[]>(
                    "() => ['--ink','--quiet','--accent','--true','--out','--open'].map(n => getComputedStyle(document.documentElement).getPropertyValue(n).trim())"
                );
                Assert.All(pairs, p => Assert.True(ContrastOnWhite(p) >= 10, $"{p}: {ContrastOnWhite(p):0.0}"));
            }
        }
    }

    [Fact]
    public async Task FirstVisit_IsAShortWalkThroughTheDemo()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/");
        await page.ClickAsync("text=First time?");
        for (var step = 1; step <= 5; step++)
        {
            await Assertions.Expect(page.Locator("main")).ToContainTextAsync($"Step {step} of 5");
            await page.Picture($"first-{step}");
            if (step < 5)
            {
                await page.ClickAsync("a:text-is('On')");
            }
        }

        await page.IsFitToUse();
    }

    /// <summary>Relative luminance and contrast after WCAG 2.2.</summary>
    private static double ContrastOnWhite(string hex)
    {
        var channels = Enumerable
            .Range(0, 3)
            .Select(i => Convert.ToInt32(hex.Substring(1 + (2 * i), 2), 16) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))
            .ToArray();
        return 1.05 / ((0.2126 * channels[0]) + (0.7152 * channels[1]) + (0.0722 * channels[2]) + 0.05);
    }
}
