using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>Every room on the screens people have, by day, at night and in the sun; and the pictures of the rooms that the documents show.</summary>
public sealed class ScreensJourneys(Browser browser)
{
    /// <summary>Set it to have the pictures in docs/screens made anew; otherwise they go to artifacts/screens.</summary>
    private const string MakeVariable = "PLUMBMARK_MAKE_SCREENS";

    private static readonly (string Name, string Address)[] s_rooms =
    [
        ("shed", "/"),
        ("book", "/cars/1/book"),
        ("floor", "/cars/1/floor"),
        ("round", "/cars/1/floor?round=1#value"),
        ("story", "/cars/1/points/A.R/story"),
        ("level", "/cars/1/level"),
        ("turning", "/cars/1/turning"),
        ("bench", "/cars/1/bench"),
        ("press", "/cars/1/press"),
        ("road", "/cars/1/road"),
        ("sheet", "/cars/1/sheet"),
    ];

    [Theory]
    [InlineData(360, 740)]
    [InlineData(412, 839)]
    [InlineData(820, 1180)]
    [InlineData(1280, 900)]
    public async Task EveryRoom_FitsTheScreen_InLightAndInSun(int width, int height)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, width, height);
        foreach (var look in new[] { "", "sun" })
        {
            if (look.Length > 0)
            {
                await page.GotoAsync("/look");
                await page.ClickAsync($"label:has(input[value={look}])");
                await page.ClickAsync("button[type=submit]");
                await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("data-look", look);
            }

            foreach (var (name, address) in s_rooms)
            {
                await page.GotoAsync(address);
                var over = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                Assert.True(
                    over <= 0,
                    $"{address} in {(look.Length == 0 ? "light" : look)} at {width} is {over} px wider than the screen."
                );
                if (width == 360 && look.Length == 0)
                {
                    await page.ScreenshotAsync(new PageScreenshotOptions { Path = PathTo(name) });
                }
            }
        }
    }

    [Fact]
    public async Task Floor_IsWorkedFromTheKeyboardAlone()
    {
        await using var app = await EntryJourneys.StartWithFourPairs();
        var page = await browser.Open(app, 1280, 900);
        await page.GotoAsync("/cars/1/floor");
        // Tab to the first point of the drawing, then to the one it is measured to, and type.
        await page.Locator(".picker-point[aria-label^='A.L']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".picker-point.is-picked")).ToHaveCountAsync(1);
        await page.Locator(".picker-point[aria-label^='B.R']").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("31 1/2");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync("r1: A.L to B.R, plan, 31 1/2");
        // Whatever Tab reaches shows that it is reached.
        for (var i = 0; i < 25; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var isSeen = await page.EvaluateAsync<bool>(
                """
                () => {
                  const e = document.activeElement;
                  const touch = e.querySelector?.('.picker-touch');
                  return e === document.body || getComputedStyle(e).outlineStyle !== 'none' || (touch && getComputedStyle(touch).strokeWidth !== '0px');
                }
                """
            );
            Assert.True(isSeen, await page.EvaluateAsync<string>("document.activeElement.outerHTML.slice(0, 160)"));
        }
    }

    private static string PathTo(string name) =>
        Environment.GetEnvironmentVariable(MakeVariable) is { Length: > 0 }
            ? Repository.PathTo("docs", "screens", $"{name}.png")
            : Repository.PathTo("artifacts", "screens", $"room-{name}.png");
}
