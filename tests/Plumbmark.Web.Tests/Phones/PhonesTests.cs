using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Inspection.Demo;
using Plumbmark.Web.Phones;

namespace Plumbmark.Web.Tests.Phones;

/// <summary>Who is let in from the home network, and who is not.</summary>
public sealed class PhonesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/")]
    [InlineData("/cars/1/floor")]
    [InlineData("/cars/1/file")]
    [InlineData("/backup")]
    [InlineData("/phones")]
    [InlineData("/form-token")]
    [InlineData("/no-such-page")]
    [InlineData("/cars/../backup")]
    [InlineData("//backup")]
    [InlineData("/%62ackup")]
    [InlineData("/assets/../backup")]
    [InlineData("/assets/%2e%2e/backup")]
    [InlineData("/ASSETS/..%2fbackup/..")]
    public async Task Stranger_SeesOnlyThePairingPage(string path)
    {
        await using var app = await RunningApp.StartOnLan();
        app.Journals.Add(DemoCar.File());
        using var stranger = app.Stranger();
        var page = await VisitedPage.Of(await stranger.GetAsync(new Uri(app.LanAddress + path), Stop));
        Assert.Equal(401, page.Status);
        Assert.Equal("Let this phone in", page.Document.QuerySelector("h1")!.TextContent);
        Assert.Null(page.Document.QuerySelector("nav"));
        Assert.DoesNotContain(app.Journals.Cars()[0].File.Car.Name, page.Document.Source.Text, StringComparison.Ordinal);
        Assert.Contains("unencrypted", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stranger_ChangesNothing_EvenWithATokenOfHisOwn()
    {
        await using var app = await RunningApp.StartOnLan();
        using var stranger = app.Stranger();
        var page = await VisitedPage.Of(await stranger.GetAsync("/", Stop));
        var fields = page.Filled("/pairing").Append(KeyValuePair.Create("name", "Forged"));
        foreach (var path in (string[])["/cars", "/restores", "/phones/codes", "/car-files"])
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.PostAsync(path, new FormUrlEncodedContent(fields), Stop)).StatusCode);
        }

        Assert.Empty(app.Journals.Cars());
        Assert.Null(app.Services.GetRequiredService<PairingCode>().Good());
    }

    [Fact]
    public async Task TheRightCode_LetsOnePhoneIn_UntilItIsShutOut()
    {
        await using var app = await RunningApp.StartOnLan();
        var car = app.Journals.Add(DemoCar.File());
        using var phone = app.Stranger();
        var code = await CodeFromTheLaptop(app);
        var answer = await Pair(phone, code, "Garage phone");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("/", answer.RequestMessage!.RequestUri!.AbsolutePath);
        Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync($"/cars/{car.Id}/floor", Stop)).StatusCode);

        // The same code is used up for the next one.
        using var second = app.Stranger();
        Assert.Equal(HttpStatusCode.Unauthorized, (await Pair(second, code, "Another")).StatusCode);

        var phones = await app.Get("/phones");
        Assert.Contains("Garage phone", phones.Text, StringComparison.Ordinal);
        var removal = phones
            .Document.Forms.Select(f => f.GetAttribute("action")!)
            .Single(a => a.EndsWith("/removal", StringComparison.Ordinal));
        phones = await app.Submit(phones, removal);
        Assert.DoesNotContain("Garage phone", phones.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync($"/cars/{car.Id}/floor", Stop)).StatusCode);
    }

    [Fact]
    public async Task Cookie_IsOutOfReachOfScriptsAndOtherSites_AndOnlyItsHashIsKept()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-phones-").FullName;
        try
        {
            await using (var app = await RunningApp.StartOnLan(folder))
            {
                using var phone = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = true })
                {
                    BaseAddress = new Uri(app.LanAddress!),
                };
                var answer = await Pair(phone, await CodeFromTheLaptop(app), "Garage phone");
                var cookie = answer.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("plumbmark-phone=", StringComparison.Ordinal));
                Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
                Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
                var secret = cookie.Split('=', ';')[1].Split('.')[1];
                Assert.Equal(64, secret.Length);
                var kept = await File.ReadAllTextAsync(Path.Combine(folder, "phones.json"), Stop);
                Assert.Contains("Garage phone", kept, StringComparison.Ordinal);
                Assert.DoesNotContain(secret, kept, StringComparison.Ordinal);
                if (!OperatingSystem.IsWindows())
                {
                    Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(folder, "phones.json")));
                }
            }

            // After a restart the phone is still let in: its cookie is all it needs.
            await using var after = await RunningApp.StartOnLan(folder);
            Assert.Single((await after.Get("/phones")).Document.QuerySelectorAll("main li.card"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task WrongCodes_UseTheCodeUp_FromHoweverManyMachinesTheyCome()
    {
        await using var app = await RunningApp.StartOnLan();
        var code = await CodeFromTheLaptop(app);
        var wrong = code == "000000" ? "000001" : "000000";
        for (var i = 0; i < 5; i++)
        {
            using var stranger = app.Stranger();
            Assert.Equal(HttpStatusCode.Unauthorized, (await Pair(stranger, wrong, "Guess")).StatusCode);
        }

        using var late = app.Stranger();
        Assert.Equal(HttpStatusCode.Unauthorized, (await Pair(late, code, "Late")).StatusCode);
        var laptop = await app.Get("/phones");
        Assert.Contains("somebody in this network tries to get in", laptop.Text, StringComparison.Ordinal);
        Assert.Empty(app.Services.GetRequiredService<PhoneList>().All());
    }

    [Fact]
    public async Task PhonesAreListedOnTheLaptopOnly()
    {
        await using var app = await RunningApp.StartOnLan();
        using var phone = app.Stranger();
        await Pair(phone, await CodeFromTheLaptop(app), "Garage phone");
        Assert.Equal(HttpStatusCode.Forbidden, (await phone.GetAsync("/phones", Stop)).StatusCode);
        var shed = await VisitedPage.Of(await phone.GetAsync("/", Stop));
        var fields = shed.Filled("/cars");
        Assert.Equal(
            HttpStatusCode.Forbidden,
            (await phone.PostAsync("/phones/codes", new FormUrlEncodedContent(fields), Stop)).StatusCode
        );
        Assert.Null(app.Services.GetRequiredService<PairingCode>().Good());
    }

    [Fact]
    public async Task WhatAPhoneEnters_CarriesItsName()
    {
        await using var app = await RunningApp.StartOnLan();
        var car = app.Journals.Add(DemoCar.File());
        using var phone = app.Stranger();
        await Pair(phone, await CodeFromTheLaptop(app), "Garage phone");
        var page = await VisitedPage.Of(await phone.GetAsync($"/cars/{car.Id}/floor", Stop));
        var points = car.File.Frame.Points;
        var fields = page.Filled($"/cars/{car.Id}/readings", ("from", points[0].Id), ("to", points[^1].Id), ("value", "31 1/2"));
        await phone.PostAsync($"/cars/{car.Id}/readings", new FormUrlEncodedContent(fields), Stop);
        Assert.Equal("Garage phone", app.Journals.Car(car.Id)!.Entries[^1].Entry.By);
        Assert.Contains("Garage phone", (await app.Get($"/cars/{car.Id}/journal")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("garage.example")]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("192.168.1.99")]
    public async Task Lan_AnotherHostName_IsNotAnswered(string host)
    {
        await using var app = await RunningApp.StartOnLan();
        using var stranger = app.Stranger();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = $"{host}:{stranger.BaseAddress!.Port}";
        Assert.Equal(HttpStatusCode.MisdirectedRequest, (await stranger.SendAsync(request, Stop)).StatusCode);
    }

    [Theory]
    [InlineData("X-Forwarded-For", "127.0.0.1")]
    [InlineData("Forwarded", "for=127.0.0.1")]
    [InlineData("X-Real-IP", "127.0.0.1")]
    [InlineData("X-Original-URL", "/assets/")]
    public async Task Lan_WhatAStrangerSaysOfHimself_CountsForNothing(string header, string value)
    {
        await using var app = await RunningApp.StartOnLan();
        using var stranger = app.Stranger();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/backup");
        request.Headers.Add(header, value);
        Assert.Equal(HttpStatusCode.Unauthorized, (await stranger.SendAsync(request, Stop)).StatusCode);
    }

    [Fact]
    public async Task Stranger_SendsMuch_IsRefusedEarly()
    {
        await using var app = await RunningApp.StartOnLan();
        using var stranger = app.Stranger();
        try
        {
            var answer = await stranger.PostAsync("/pairing", new ByteArrayContent(new byte[64 * 1024]), Stop);
            Assert.InRange((int)answer.StatusCode, 400, 413);
        }
        catch (HttpRequestException)
        {
            // Closed before everything was sent.
        }

        Assert.Equal(200, (await app.Get("/")).Status);
    }

    private static async Task<string> CodeFromTheLaptop(RunningApp app)
    {
        var page = await app.Submit(await app.Get("/phones"), "/phones/codes");
        return page.Document.QuerySelector(".phones-code")!.TextContent.Replace(" ", "", StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> Pair(HttpClient phone, string code, string name)
    {
        var page = await VisitedPage.Of(await phone.GetAsync("/", Stop));
        return await phone.PostAsync("/pairing", new FormUrlEncodedContent(page.Filled("/pairing", ("code", code), ("name", name))), Stop);
    }
}
