using Microsoft.Playwright;
using Plumbmark.Store;

namespace Plumbmark.Journeys;

/// <summary>The connection is lost in the middle of entry: what is entered waits on the phone, and is kept once when it is back.</summary>
public sealed class WaitingJourneys(Browser browser)
{
    // The app starts, and the phone asks every few seconds.
    private static readonly LocatorAssertionsToContainTextOptions s_afterStart = new() { Timeout = 20_000 };
    private const string Status = "#waiting [role=status]";

    [Fact]
    public async Task NoConnection_ReadingsWaitInWords_OutliveTheTab_AndAreSentInOrder()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        var floor = page.Url;
        await page.Context.SetOfflineAsync(true);
        // The first tap finds out that there is no connection, and counts all the same.
        await FloorJourneys.Pick(page, "A.L");
        await FloorJourneys.Pick(page, "B.R");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("No connection to the laptop. You can go on");
        await Assertions.Expect(page.Locator("#value")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("31 1/2");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading waits on this phone");
        await Enter(page, "B.L", "C.R", "27 3/8");
        await Enter(page, "C.L", "D.R", "28 5/16");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("3 readings wait on this phone; sent when the connection is back");
        await page.GetByText("Show them").ClickAsync();
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator("#waiting li").First).ToContainTextAsync("A.L to B.R, 31 1/2");
        await page.IsFitToUse();
        await page.Picture("waiting-360");

        // A link would lead to the browser's own page of apologies; this page stays instead.
        await page.Locator(".rooms a").First.ClickAsync();
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("This one stays open");

        var context = page.Context;
        await page.CloseAsync();
        await context.SetOfflineAsync(false);
        page = await context.NewPageAsync();
        await page.GotoAsync(floor);
        await Assertions.Expect(page.Locator(".floor-readings li")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(0);
        Assert.Equal(["31 1/2", "27 3/8", "28 5/16"], Kept(app));
    }

    [Fact]
    public async Task ServerKilledAndStartedAgain_ThePageGoesOnWhereItWas()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-waits-").FullName;
        await using var app = await AppProcess.Start(folder, keepFolder: true);
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await Enter(page, "A.L", "B.R", "31 1/2");
        await Assertions.Expect(page.Locator("#reading-r1")).ToBeVisibleAsync();
        app.Kill();
        await Enter(page, "B.L", "C.R", "27 3/8");
        await Enter(page, "C.L", "D.R", "28 5/16");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("2 readings wait");
        await using var after = await AppProcess.Start(folder, port: new Uri(app.Address).Port);
        // Nobody touches the page: it finds the app again by itself, with the form it had before, and shows the new answer.
        await Assertions.Expect(page.Locator("#reading-r3")).ToContainTextAsync("28 5/16", s_afterStart);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("The connection is back. 2 readings sent");
        await page.Picture("waiting-sent-360");
        Assert.Equal(["31 1/2", "27 3/8", "28 5/16"], Kept(after));
    }

    [Fact]
    public async Task TwoPhones_TheSameLength_BothAreKept()
    {
        await using var app = await AppProcess.Start();
        var one = await browser.Open(app);
        await FloorJourneys.AddCar(one, "Barn find", pairs: "5");
        var two = await browser.Open(app);
        await two.GotoAsync(one.Url);
        await one.Context.SetOfflineAsync(true);
        await two.Context.SetOfflineAsync(true);
        await Enter(one, "A.L", "B.R", "31 1/2");
        await Enter(two, "A.L", "B.R", "31 9/16");
        await one.Context.SetOfflineAsync(false);
        await Assertions.Expect(one.Locator("#reading-r1")).ToContainTextAsync("31 1/2");
        await two.Context.SetOfflineAsync(false);
        await Assertions.Expect(two.Locator(".floor-readings li")).ToHaveCountAsync(2);
        Assert.Equal(["31 1/2", "31 9/16"], Kept(app));
    }

    [Fact]
    public async Task WhatIsRefusedLater_StaysOnThePhone_WithTheReason()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await page.Context.SetOfflineAsync(true);
        await Enter(page, "A.L", "B.R", "31 9/8");
        await Enter(page, "B.L", "C.R", "27 3/8");
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading was not taken");
        await Assertions.Expect(page.Locator("#waiting .fault")).ToContainTextAsync("not less than one");
        await page.IsFitToUse();
        await page.Picture("waiting-refused-360");
        await Assertions.Expect(page.Locator(".floor-readings li")).ToHaveCountAsync(1);
        Assert.Equal(["27 3/8"], Kept(app));
        page.Dialog += (_, dialog) => _ = dialog.AcceptAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Throw away" }).ClickAsync();
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("none waits");
    }

    [Fact]
    public async Task AnotherJournalBehindTheSameAddress_TakesNothing()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        app.Kill();
        await Enter(page, "A.L", "B.R", "31 1/2");
        var folder = Directory.CreateTempSubdirectory("plumbmark-other-").FullName;
        using (var journals = Journals.Open(Path.Combine(folder, "plumbmark.db")))
        {
            for (var car = 1; car <= 3; car++)
            {
                journals.Add(LadderCar.File());
            }
        }

        await using var other = await AppProcess.Start(folder, port: new Uri(app.Address).Port);
        await Assertions.Expect(page.Locator("#waiting .fault")).ToContainTextAsync("not the one this was entered for", s_afterStart);
        Assert.Empty(Kept(other));
        Assert.Contains("A.L to B.R, 31 1/2", await page.Locator("#waiting li").TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task QuickLine_WaitsToo()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        var line = page.Locator(".floor-quick input[type=text]");
        await page.Context.SetOfflineAsync(true);
        await page.EvaluateAsync("document.querySelectorAll('main details').forEach((d) => (d.open = true))");
        await line.FillAsync("AL BR 31 1/2");
        await line.PressAsync("Enter");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading waits");
        await Assertions.Expect(line).ToHaveValueAsync("");
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#reading-r1")).ToContainTextAsync("31 1/2");
    }

    [Fact]
    public async Task OnTheRound_TheNextLineIsFilledInWithoutAConnection()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await FloorJourneys.AddCar(page, "Barn find", pairs: "5");
        await page.GetByText("Walk me round").ClickAsync();
        await Assertions.Expect(page.Locator("#from")).Not.ToHaveValueAsync("");
        var first = await page.InputValueAsync("#from") + await page.InputValueAsync("#to");
        await page.Context.SetOfflineAsync(true);
        await page.FillAsync("#value", "31 1/2");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(Status)).ToContainTextAsync("1 reading waits");
        var second = await page.InputValueAsync("#from") + await page.InputValueAsync("#to");
        Assert.NotEqual(first, second);
        Assert.NotEqual("", second);
        await page.FillAsync("#value", "27 3/8");
        await page.Keyboard.PressAsync("Enter");
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator(".floor-readings li")).ToHaveCountAsync(2);
    }

    /// <summary>A reading by the lists beside the drawing, as a thumb would.</summary>
    internal static async Task Enter(IPage page, string from, string to, string value)
    {
        var name = await page.InputValueAsync(".floor-entry[data-waits] [name=form]");
        await page.SelectOptionAsync("#from", from);
        await page.SelectOptionAsync("#to", to);
        await page.FillAsync("#value", value);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".floor-entry[data-waits] [name=form]")).Not.ToHaveValueAsync(name);
    }

    private static List<string> Kept(AppProcess app)
    {
        using var journals = Journals.Open(Path.Combine(app.Folder, "plumbmark.db"));
        return [.. journals.Cars()[^1].File.Readings.OfType<Inspection.Car.Reading.Plan>().Select(r => r.Value.AsTyped)];
    }
}
