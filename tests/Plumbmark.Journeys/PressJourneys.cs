using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>A bent arm from the first question to the last crack test, on a phone of 360 px, with script and without; and a part that is refused.</summary>
public sealed class PressJourneys(Browser browser)
{
    private static readonly string[] s_questions = ["cracked", "kinked", "torn", "corroded", "welded", "heated", "pressedBefore"];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task AnArm_IsStraightenedBiteByBite_AndItIsToldWhenToStop(bool script)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, script: script);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await LayIn(page, "left lower arm, front half", "wishbone");
        await Look(page, script);
        await Describe(page);
        await Heading(page, "A few questions first.");
        await Look(page, script);
        await Test(page, "dye");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Press 0.");
        await Look(page, script);
        await Look(page, script, "press-before-first-bite");

        // The story's bites: travel, what stayed, and what the log must say of it.
        await Bite(page, "0.13", "0.00", "Nothing stayed");
        await Look(page, script, "press-nothing-stayed");
        await Bite(page, "0.16", "0.02", "0.02 in stayed, 0.14 in sprang back");
        await Bite(page, "0.22", "0.08", "0.08 in stayed, 0.14 in sprang back");
        await Heading(page, "Press 0.21 in."); // 0.09 left and 0.14 of spring-back would be 0.23 to straight; it stays under
        await Look(page, script);
        await Look(page, script, "press-third-bite");
        await Bite(page, "0.21", "0.07", "0.07 in stayed, 0.14 in sprang back");
        await Heading(page, "Straight. Stop pressing.");
        await Assertions.Expect(page.Locator(".press-answer .verdict")).ToHaveTextAsync("true");
        await Look(page, script);
        await Look(page, script, "press-straight");
        await Test(page, "magnetic");
        await Heading(page, "Straight, and the crack test found nothing.");
        await Assertions.Expect(page.Locator(".press-answer")).ToContainTextAsync("inspect it every year");
        await Look(page, script, "press-done");
    }

    [Fact]
    public async Task AChangedSpringBack_StopsTheJob_UntilACrackTestIsEntered()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await LayIn(page, "left lower arm", "wishbone");
        await Describe(page);
        await Test(page, "magnetic");
        await Bite(page, "0.16", "0.02", "0.02 in stayed");
        await Bite(page, "0.19", "0.05", "0.05 in stayed");
        await Bite(page, "0.17", "0.07", "0.07 in stayed");
        await Heading(page, "Stop. Take it out of the press and inspect it.");
        await Assertions.Expect(page.Locator("#bite")).ToHaveCountAsync(0); // no form for another bite
        await page.IsFitToUse();
        await page.Picture("press-stopped");
        await Test(page, "magnetic");
        await Assertions.Expect(page.Locator("#bite")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task ASteeringLever_IsRefused_WithWhatToDoInstead()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await LayIn(page, "left steering lever", "steering-lever");
        await Heading(page, "Do not press this part.");
        await Assertions.Expect(page.Locator(".press-answer")).ToContainTextAsync("Replace it.");
        await Assertions.Expect(page.Locator("#bite")).ToHaveCountAsync(0);
        await page.IsFitToUse();
        await page.Picture("press-refused");
    }

    [Fact]
    public async Task WrongValues_AreToldBesideTheirFields()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await LayIn(page, "left lower arm", "wishbone");
        await page.FillAsync("#depth", "1/8");
        await page.SelectOptionAsync("#shape", "rectangle");
        await page.FillAsync("#leftArm", "four");
        await page.ClickAsync("button:text-is('Keep')");
        await Assertions.Expect(page.Locator("#leftArm-fault")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#leftArm")).ToHaveValueAsync("four");
        await Assertions.Expect(page.Locator("#depth")).ToHaveValueAsync("1/8");
        await page.IsFitToUse();
    }

    [Fact]
    public async Task TheVerb_SaysTheSame()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-press-").FullName;
        await File.WriteAllTextAsync(
            Path.Combine(folder, "arm.json"),
            PressJobSamples.LowerArmAfter(3),
            TestContext.Current.CancellationToken
        );
        var (code, results, _) = await AppProcess.Run(folder, "press", "arm.json");
        Assert.Equal(20, code);
        Assert.Contains("Press 0.21 in.", results, StringComparison.Ordinal);
        await File.WriteAllTextAsync(
            Path.Combine(folder, "arm.json"),
            PressJobSamples.LowerArmAfter(4),
            TestContext.Current.CancellationToken
        );
        (code, results, _) = await AppProcess.Run(folder, "press", "arm.json", "--json");
        Assert.Equal(0, code);
        Assert.Contains("\"straightness\": \"true\"", results, StringComparison.Ordinal);
        await File.WriteAllTextAsync(
            Path.Combine(folder, "arm.json"),
            PressJobSamples.LowerArm.With("\"kind\": \"wishbone\"", "\"kind\": \"upright\""),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(10, (await AppProcess.Run(folder, "press", "arm.json")).Code);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The checks that need script in the page, and a picture.</summary>
    private static async Task Look(IPage page, bool script, string? picture = null)
    {
        if (!script)
        {
            return;
        }

        await page.IsFitToUse();
        if (picture is not null)
        {
            await page.Picture(picture);
        }
    }

    private static async Task LayIn(IPage page, string name, string kind)
    {
        await page.GotoAsync(new Uri(new Uri(page.Url), "press").ToString());
        await page.FillAsync("#name", name);
        await page.SelectOptionAsync("#kind", kind);
        await page.ClickAsync("text=Lay it in");
        await Assertions.Expect(page.Locator("h1")).Not.ToHaveTextAsync("Press");
    }

    private static async Task Describe(IPage page)
    {
        await page.SelectOptionAsync("#make", "pressed");
        await page.SelectOptionAsync("#material", "mild-sheet");
        foreach (var question in s_questions)
        {
            await page.SelectOptionAsync($"#{question}", "no");
        }

        foreach (var (i, text) in ((int, string)[])[(0, "0.18"), (1, "0.19"), (2, "0.19")])
        {
            await page.FillAsync($"#out{i}", text);
        }

        await page.SelectOptionAsync("#shape", "rectangle");
        await page.FillAsync("#depth", "1/8");
        await page.FillAsync("#width", "1 1/4");
        await page.FillAsync("#leftArm", "4");
        await page.FillAsync("#rightArm", "4");
        await page.SelectOptionAsync("#travelAt", "part");
        await page.Locator("details", new() { HasText = "Ram place, lever" }).Locator("summary").ClickAsync();
        await page.FillAsync("#reading", "0.005");
        await page.FillAsync("#travel", "0.005");
        await page.ClickAsync("button:text-is('Keep')");
        await Assertions.Expect(page.Locator(".press-answer")).ToBeVisibleAsync();
    }

    private static async Task Test(IPage page, string method)
    {
        await page.SelectOptionAsync("#method", method);
        await page.SelectOptionAsync("#found", "no");
        await page.ClickAsync("text=Keep this test");
        await Assertions.Expect(page.Locator("#tests")).ToBeVisibleAsync();
    }

    private static async Task Bite(IPage page, string travel, string set, string told)
    {
        var before = await page.Locator(".press-log > li").CountAsync();
        await page.FillAsync("#travel", travel);
        await page.FillAsync("#set", set);
        await page.ClickAsync("text=Keep this bite");
        await Assertions.Expect(page.Locator(".press-log > li")).ToHaveCountAsync(before + 1);
        await Assertions.Expect(page.Locator(".press-log > li").First).ToContainTextAsync(told);
    }

    private static Task Heading(IPage page, string text) =>
        Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(text);
}
