using Microsoft.Playwright;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;

namespace Plumbmark.Journeys;

/// <summary>What is not read off a tape waits on the phone too: photos, measures on the bench, bites and crack tests of the press, readings at the wheels.</summary>
public sealed class WaitingFormsJourneys(Browser browser)
{
    private const string Status = "#waiting [role=status]";
    private static readonly LocatorAssertionsToContainTextOptions s_afterStart = new() { Timeout = 60_000 };

    /// <summary>Where a form stands in the demo, the button that sends it, and what the list of what waits says of it.</summary>
    internal sealed record Kind(string Page, string Button, string Waits, string Listed, Func<IPage, int, Task> Fill)
    {
        public Task Send(IPage page) => page.Locator("main button[type=submit]").Filter(new() { HasText = Button }).Last.ClickAsync();
    }

    internal static readonly Dictionary<string, Kind> Kinds = new(StringComparer.Ordinal)
    {
        ["photo of a point"] = new(
            "/cars/1/points/A.R/story",
            "Keep photo",
            "1 photo waits",
            "A.R: frame1.png",
            (page, n) => Photo(page, "#photo-A\\.R", n)
        ),
        ["photo on a card"] = new(
            "/cars/1/bench/parts/arm.L",
            "Keep photo",
            "1 photo waits",
            "frame1.png",
            (page, n) => Photo(page, "#photo", n)
        ),
        ["measure"] = new(
            "/cars/1/bench/parts/arm.L?measure=length",
            "Keep measure",
            "1 measure waits",
            "Length: lug to lug, 11.01, n1",
            (page, n) => Fill(page, ".bench-entry", ("dimension", "lug to lug"), ("value1", "11.01"), ("note", $"n{n}"))
        ),
        ["bite"] = new(
            "/cars/1/press/p1",
            "Keep this bite",
            "1 bite waits",
            "left lower strap arm: 0.24, 0.065, n1",
            (page, n) => Fill(page, ".press-bite", ("travel", "0.24"), ("set", "0.065"), ("note", $"n{n}"))
        ),
        ["wheel reading"] = new(
            "/cars/1/road/wheels?kind=strings",
            "Keep reading",
            "1 reading waits",
            "Strings apart: 60, 60 1/8, 100, n1",
            (page, n) => Fill(page, "main", ("ahead", "60"), ("behind", "60 1/8"), ("between", "100"), ("note", $"n{n}"))
        ),
    };

    public static TheoryData<string> EveryKind => [.. Kinds.Keys];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public async Task CutDuringEntry_TabClosed_AppKilledAndStartedAgain_IsKeptOnce(string name)
    {
        var kind = Kinds[name];
        var folder = Directory.CreateTempSubdirectory("plumbmark-waits-").FullName;
        await using var app = await AppProcess.Start(folder, keepFolder: true);
        var page = await browser.Open(app);
        await page.GotoAsync(kind.Page);
        var before = Acts(folder).Count;
        app.Kill(); // with the form open and nothing sent
        await kind.Fill(page, 1);
        await kind.Send(page);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync($"{kind.Waits} on this phone; sent when the connection is back");
        await Assertions.Expect(page.Locator("#waiting li")).ToContainTextAsync(kind.Listed);
        await Assertions
            .Expect(page.Locator("main :is(input:not([type=hidden], [type=checkbox], [type=number])) >> visible=true").First)
            .ToHaveValueAsync("");
        var context = page.Context;
        await page.CloseAsync();

        await using var after = await AppProcess.Start(folder, port: new Uri(app.Address).Port);
        Assert.Equal(before, Acts(folder).Count); // nothing had come through
        page = await context.NewPageAsync();
        await page.GotoAsync(kind.Page);
        await Until(() => Acts(folder).Count == before + 1);
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(0);

        // The same again with a connection: at once, without waiting.
        await kind.Fill(page, 2);
        await kind.Send(page);
        await Until(() => Acts(folder).Count == before + 2);
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task SeveralKindsInTwoTabs_AreSentInTheOrderOfEntry_FromTwoPhones()
    {
        await using var app = await AppProcess.Start();
        var before = Acts(app.Folder).Count;
        var (bites, wheels) = (Kinds["bite"], Kinds["wheel reading"]);
        var one = await browser.Open(app);
        await one.GotoAsync(bites.Page);
        var other = await one.Context.NewPageAsync();
        await other.GotoAsync(wheels.Page);
        var two = await browser.Open(app);
        await two.GotoAsync(bites.Page);
        await one.Context.SetOfflineAsync(true);
        await two.Context.SetOfflineAsync(true);
        foreach (var (page, kind, n) in new[] { (one, bites, 1), (other, wheels, 2), (one, bites, 3), (two, bites, 9) })
        {
            await kind.Fill(page, n);
            await kind.Send(page);
            await Assertions.Expect(page.Locator("#waiting li").Last).ToContainTextAsync($"n{n}");
        }

        await Assertions.Expect(one.Locator(Status)).ToContainTextAsync("2 bites and 1 reading wait");
        await Assertions.Expect(one.Locator(".press-answer .caution")).ToContainTextAsync("Do not press by it");
        await one.EvaluateAsync("scrollTo(0, 0)");
        await one.IsFitToUse();
        await one.Picture("waiting-bites-360");
        await one.Context.SetOfflineAsync(false);
        await Until(() => Acts(app.Folder).Count == before + 3);
        await two.Context.SetOfflineAsync(false);
        await Until(() => Acts(app.Folder).Count == before + 4);
        await Assertions.Expect(two.Locator(".press-answer .caution")).ToBeHiddenAsync();
        Assert.Equal(["n1", "n2", "n3", "n9"], Acts(app.Folder).TakeLast(4).Select(NoteOf));
        // Two people's bites on one part are no conflict to be settled by the program: both are kept, each with a name of its own.
        Assert.Equal(["b3", "b4", "b5"], Acts(app.Folder).TakeLast(4).OfType<Act.BiteMade>().Select(b => b.Bite.Id));
    }

    [Fact]
    public async Task TypedWhileThePageIsShownAnew_IsNotTakenAway()
    {
        await using var app = await AppProcess.Start();
        var (page, kind) = (await browser.Open(app), Kinds["wheel reading"]);
        await page.GotoAsync(kind.Page);
        await page.Context.SetOfflineAsync(true);
        await kind.Fill(page, 1);
        await kind.Send(page);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading waits");
        var (asked, go) = (new TaskCompletionSource(), new TaskCompletionSource());
        await page.RouteAsync(
            "**/road/wheels?kind=strings",
            async route =>
            {
                asked.TrySetResult();
                await go.Task;
                await route.ContinueAsync();
            }
        );
        await page.Context.SetOfflineAsync(false);
        await asked.Task; // the waiting one is sent, and the page with it is on its way
        await page.FillAsync("[name=ahead]", "61");
        var shown = page.WaitForResponseAsync("**/road/wheels?kind=strings");
        go.SetResult();
        await (await shown).FinishedAsync();
        await page.EvaluateAsync("new Promise(done => setTimeout(done, 500))");
        await Assertions.Expect(page.Locator("[name=ahead]")).ToHaveValueAsync("61");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading sent");
    }

    [Fact]
    public async Task Photo_TooLarge_IsToldAtOnce_AndOneThatIsNoPictureLater()
    {
        await using var app = await AppProcess.Start();
        var kind = Kinds["photo of a point"];
        var page = await browser.Open(app);
        await page.GotoAsync(kind.Page);
        var before = Acts(app.Folder).Count;
        await page.Context.SetOfflineAsync(true);
        var file = new FilePayload
        {
            Name = "large.png",
            MimeType = "image/png",
            Buffer = new byte[(12 * 1024 * 1024) + 1],
        };
        await page.SetInputFilesAsync("#photo-A\\.R", file);
        await kind.Send(page);
        await Assertions.Expect(page.Locator(".photo-form .fault")).ToContainTextAsync("12.0 MB; at most 12 MB are taken");
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(0);
        await page.SetInputFilesAsync(
            "#photo-A\\.R",
            new FilePayload
            {
                Name = "notes.png",
                MimeType = "image/png",
                Buffer = [1, 2, 3],
            }
        );
        await kind.Send(page);
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(1);
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#waiting .fault")).ToContainTextAsync("a JPEG or PNG picture is needed", s_afterStart);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 photo was not taken");
        Assert.Equal(before, Acts(app.Folder).Count);
    }

    private static List<Act> Acts(string folder)
    {
        using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        return [.. journals.Car(1)!.Entries.Select(e => e.Entry.Act)];
    }

    private static string? NoteOf(Act act) =>
        act switch
        {
            Act.BiteMade bite => bite.Bite.Note,
            Act.WheelRead wheel => wheel.Reading.Note,
            _ => null,
        };

    private static async Task Until(Func<bool> isSo)
    {
        for (var left = 300; !isSo(); left--)
        {
            Assert.True(left > 0, "It did not come to be.");
            await Task.Delay(200, TestContext.Current.CancellationToken);
        }
    }

    /// <summary>A picture that no other has: as many pixels wide as its number says.</summary>
    private static async Task Photo(IPage page, string input, int number)
    {
        var shot = await page.ScreenshotAsync(
            new()
            {
                Clip = new()
                {
                    X = 0,
                    Y = 0,
                    Width = 100 + number,
                    Height = 60,
                },
            }
        );
        await page.SetInputFilesAsync(
            input,
            new FilePayload
            {
                Name = $"frame{number}.png",
                MimeType = "image/png",
                Buffer = shot,
            }
        );
    }

    private static async Task Fill(IPage page, string form, params (string Name, string Value)[] fields)
    {
        await page.EvaluateAsync("document.querySelectorAll('main details').forEach((d) => (d.open = true))");
        foreach (var (name, value) in fields)
        {
            await page.FillAsync($"{form} [name='{name}']", value);
        }
    }
}
