using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>The six invented repairs, brought in as files and read off the screen: each must end in the right words there.</summary>
public sealed class StoryJourneys(Browser browser)
{
    [Fact]
    public async Task OneTheInch_NamesTheReadingAndTheSlip_AndIsQuietOnceMeasuredAgain()
    {
        await using var app = await StartWith(Stories.TheInch);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        await Says(page, "Exactly one inch: was the tape held at its 1 in mark? Measure B.R to E.L again.");
        Assert.DoesNotContain("diamond", await Answer(page), StringComparison.OrdinalIgnoreCase);
        // He measures again and takes the old one back.
        await page.ClickAsync(".floor-doubted >> text=Measure again");
        await Assertions.Expect(page.Locator("#from")).ToHaveValueAsync("B.R");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.FillAsync("#value", "66 21/32");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-undo").First).ToContainTextAsync("66 21/32");
        // The repeat agrees with the rest: the first is left out and asked for no more, and nothing has to be taken back.
        await Assertions.Expect(page.Locator(".floor-doubted")).ToContainTextAsync("the repeat agrees with the rest");
        await Assertions.Expect(page.Locator(".floor-doubted >> text=Measure again")).ToHaveCountAsync(0);
        await page.Picture("story-1");
    }

    [Fact]
    public async Task TwoOneHorn_IsLocal_AndTheRestAgrees()
    {
        await using var app = await StartWith(Stories.OneHorn);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        await Says(page, "One point of pair A is");
        await Says(page, "It is local: no other check reads out, and the nearest suspension, spring or steering mount, B.L, is 22");
        // The centre line through the bent horn is told as a look-alike before the damage is.
        await Assertions.Expect(page.Locator("section:has(#look-alikes)")).ToContainTextAsync("would throw B 9/64 in to the right");
        var order = await page.Locator("#look-alikes, #damage").AllInnerTextsAsync();
        Assert.Equal("Before you believe it", order[0]);
        await page.Picture("story-2");
    }

    [Fact]
    public async Task ThreeEqualDiagonals_AreNeverTrueWithoutHeights_AndTwistWithThem()
    {
        await using var app = await StartWith(Stories.EqualDiagonals, Stories.EqualDiagonalsWithHeights, Stories.EqualDiagonalsAfter);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        Assert.Equal("can't tell yet", await Verdict(page));
        await Says(
            page,
            "Twist of any size and sag of any size could still hide, which is beyond the limit, however equal the diagonals are"
        );
        await page.GotoAsync("/cars/2/floor");
        Assert.Equal("out", await Verdict(page));
        await Says(page, "Twist");
        await page.Picture("story-3");
        await page.GotoAsync("/cars/3/floor");
        Assert.Equal("true", await Verdict(page));
    }

    [Fact]
    public async Task FourWrongVariant_IsNotBent_ButOfAnotherType()
    {
        await using var app = await StartWith(Stories.WrongVariant);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/bench");
        await Says(page, "It is not bent: it is the early lever, and this car's serial number calls for the late lever.");
        await page.Picture("story-4");
    }

    [Fact]
    public async Task FivePress_StopsInsideTheThirtySecond()
    {
        await using var app = await StartWith(Stories.Press);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/press");
        await page.Locator("main a[href*='/press/']").First.ClickAsync();
        await Says(page, "Straight, and the crack test found nothing.");
        await Says(page, "0.07 in stayed, 0.14 in sprang back. Still out by 0.02 in.");
        await page.Picture("story-5");
    }

    [Fact]
    public async Task SixBentMount_IsNamed_AndTrueAfterThePull()
    {
        await using var app = await StartWith(Stories.BentMount, Stories.BentMountAfter);
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/floor");
        await Says(page, "C.R alone is 7/64 in");
        Assert.Equal("out", await Verdict(page));
        await page.Picture("story-6");
        await page.GotoAsync("/cars/2/floor");
        Assert.Equal("true", await Verdict(page));
    }

    /// <summary>The program with these stories in its shed in this order; the demo, which an empty shed begins with, is not there.</summary>
    private static async Task<AppProcess> StartWith(params string[] stories)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-journey-").FullName;
        foreach (var story in stories)
        {
            var (code, _, remarks) = await AppProcess.Run(
                folder,
                "import",
                Stories.PathTo(story),
                "--data",
                Path.Combine(folder, "plumbmark.db")
            );
            Assert.True(code == 0, remarks);
        }

        return await AppProcess.Start(folder);
    }

    private static async Task Says(IPage page, string words) =>
        await Assertions
            .Expect(page.Locator("main"))
            .ToContainTextAsync(words, new LocatorAssertionsToContainTextOptions { IgnoreCase = true });

    private static async Task<string> Answer(IPage page) => await page.InnerTextAsync(".floor-answer");

    private static async Task<string> Verdict(IPage page) => (await page.Locator("h1 .verdict").InnerTextAsync()).Trim();
}
