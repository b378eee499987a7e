using System.Net;

namespace Plumbmark.Web.Tests;

/// <summary>What every request passes: host, origin, token, headers.</summary>
public sealed class GuardTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Get_StrangeHost_IsNotAnswered()
    {
        await using var app = await RunningApp.Start();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "garage.example:4610";
        var response = await app.Client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, response.StatusCode);
        Assert.DoesNotContain("Shed", await response.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_WithoutToken_IsRefused()
    {
        await using var app = await RunningApp.Start();
        var response = await app.Client.PostAsync("/cars", new FormUrlEncodedContent([]), Stop);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }

    [Fact]
    public async Task Page_SendsStrictPolicyAndNothingInline()
    {
        await using var app = await RunningApp.Start();
        var page = await app.Get("/");
        var policy = page.Response.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("style, [style], script:not([src]), [onclick], [onload]"));
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("http://127.0.0.1:1")]
    public async Task Post_FromAnotherOrigin_IsRefusedEvenWithItsToken(string origin)
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cars")
        {
            Content = new FormUrlEncodedContent(shed.Filled("/cars", ("name", "Forged"))),
        };
        request.Headers.Add("Origin", origin);
        var response = await app.Client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Empty(app.Journals.Cars());
    }

    [Fact]
    public async Task Post_FromHere_IsTaken()
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cars")
        {
            Content = new FormUrlEncodedContent(shed.Filled("/cars", ("name", "Mine"))),
        };
        request.Headers.Add("Origin", app.Client.BaseAddress!.GetLeftPart(UriPartial.Authority));
        Assert.Equal(HttpStatusCode.OK, (await app.Client.SendAsync(request, Stop)).StatusCode);
        Assert.Single(app.Journals.Cars());
    }

    [Fact]
    public async Task Post_TooLarge_IsRefusedAndTheAppGoesOn()
    {
        await using var app = await RunningApp.Start();
        try
        {
            var response = await app.Client.PostAsync("/car-files", new ByteArrayContent(new byte[20 * 1024 * 1024]), Stop);
            Assert.InRange((int)response.StatusCode, 400, 413);
        }
        catch (HttpRequestException)
        {
            // The server may close the connection before everything is sent.
        }

        Assert.Equal(200, (await app.Get("/")).Status);
        Assert.Empty(app.Journals.Cars());
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("TRACE")]
    public async Task OtherMethods_AreNotUnderstood(string method)
    {
        await using var app = await RunningApp.Start();
        using var request = new HttpRequestMessage(new HttpMethod(method), "/");
        Assert.InRange((int)(await app.Client.SendAsync(request, Stop)).StatusCode, 400, 405);
    }

    [Fact]
    public async Task Assets_AreCompressed_KeptForEver_AndNothingElseIsServed()
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        foreach (
            var address in shed
                .Document.QuerySelectorAll("link[href], script[src]")
                .Select(e => e.GetAttribute("href") ?? e.GetAttribute("src")!)
        )
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, address);
            request.Headers.AcceptEncoding.ParseAdd("br");
            var response = await app.Client.SendAsync(request, Stop);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
            Assert.Contains("immutable", response.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
            Assert.NotEmpty(await response.Content.ReadAsByteArrayAsync(Stop));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync("/assets/000000000000/plumbmark.css", Stop)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await app.Client.GetAsync("/assets/..%2f..%2f/plumbmark.db", Stop)).StatusCode);
    }

    [Fact]
    public async Task AJournalThatCannotBeRead_IsToldOnAPage()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(Inspection.Demo.DemoCar.File());
        app.RunSql($"INSERT INTO entry VALUES ({car.Id}, {car.Sequence + 1}, {car.Sequence + 1}, 'x', 'y', NULL, '{{}}')");
        var page = await app.Get($"/cars/{car.Id}/floor");
        Assert.Equal(503, page.Status);
        Assert.Contains("is not understood", page.Text, StringComparison.Ordinal);
    }
}
