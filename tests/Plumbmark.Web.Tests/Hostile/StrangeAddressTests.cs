using System.Net;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>Ways out of the folder (CWE-22), names pointed at this machine (DNS rebinding), requests that are no HTTP.</summary>
public sealed class StrangeAddressTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/../../../../etc/passwd")]
    [InlineData("/assets/../../../../etc/passwd")]
    [InlineData("/assets/..%2f..%2f..%2fetc%2fpasswd")]
    [InlineData("/assets/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("/assets/..%5c..%5cplumbmark.db")]
    [InlineData("/assets/....//....//plumbmark.db")]
    [InlineData("/assets/%252e%252e%252fplumbmark.db")]
    [InlineData("/assets//etc/passwd")]
    [InlineData("/cars/1/sheet/..%2f..%2fplumbmark.pdf")]
    [InlineData("/cars/1/extracts/..%2f..%2f..%2fetc%2fpasswd")]
    [InlineData("/cars/1/bench/photos/..%2f..%2fplumbmark.db")]
    [InlineData("/cars/1/bench/photos/%2fetc%2fpasswd")]
    [InlineData("/cars/1/../../plumbmark.db")]
    [InlineData("/plumbmark.db")]
    [InlineData("/keys")]
    [InlineData("/phones.json")]
    [InlineData("/cars/1/points/..%2f..%2f..%2fetc%2fpasswd")]
    [InlineData("/cars/99999999999999999999/floor")]
    [InlineData("/cars/-1/floor")]
    [InlineData("/cars/1%00/floor")]
    public async Task Path_ThatLeadsOut_LeadsNowhere(string path)
    {
        await using var app = await RunningApp.Start();
        app.Journals.Add(DemoCar.File());
        var here = app.Client.BaseAddress!;
        var answer = await RawRequest.Send(here, $"GET {path} HTTP/1.1\r\nHost: {here.Authority}\r\nConnection: close\r\n\r\n", Stop);
        Assert.InRange(RawRequest.StatusOf(answer), 400, 499);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("SQLite format", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("evil.example:80")]
    [InlineData("0.0.0.0")]
    [InlineData("[::]")]
    [InlineData("192.168.1.20")]
    [InlineData("localhost.")]
    [InlineData("localhost@evil.example")]
    public async Task Host_ThatIsNotThisMachine_IsNotAnswered(string host)
    {
        await using var app = await RunningApp.Start();
        app.Journals.Add(DemoCar.File());
        var answer = await RawRequest.Send(
            app.Client.BaseAddress!,
            $"GET /cars/1/file HTTP/1.1\r\nHost: {host}\r\nX-Forwarded-Host: localhost\r\nConnection: close\r\n\r\n",
            Stop
        );
        Assert.Contains(RawRequest.StatusOf(answer), (int[])[400, 421]);
        Assert.DoesNotContain("plumbmark-car", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n")]
    [InlineData("GET http://evil.example/ HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")]
    [InlineData("GET / HTTP/1.1\r\nHost: localhost\r\nBad header\r\n\r\n")]
    [InlineData(
        "POST /cars HTTP/1.1\r\nHost: localhost\r\nContent-Length: 4\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n0\r\n\r\n"
    )]
    [InlineData("POST /cars HTTP/1.1\r\nHost: localhost\r\nContent-Length: -1\r\n\r\n")]
    [InlineData("\u0016\u0003\u0001\u0002\u0000\u0001\r\n\r\n")]
    [InlineData("CONNECT evil.example:80 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")]
    [InlineData("OPTIONS * HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")]
    public async Task NotHttpAsItShouldBe_IsRefused_AndTheAppGoesOn(string request)
    {
        await using var app = await RunningApp.Start();
        var status = RawRequest.StatusOf(await RawRequest.Send(app.Client.BaseAddress!, request, Stop));
        Assert.True(status is 0 or (>= 400 and <= 499), $"{status}");
        Assert.Equal(HttpStatusCode.OK, (await app.Client.GetAsync("/", Stop)).StatusCode);
        Assert.Empty(app.Journals.Cars());
    }

    [Theory]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "https://127.0.0.1")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "file://")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    [InlineData("Sec-Fetch-Site", "none")]
    public async Task Change_FromAnotherSite_IsRefused_EvenWithItsToken(string header, string value)
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cars")
        {
            Content = new FormUrlEncodedContent(shed.Filled("/cars", ("name", "Forged"))),
        };
        request.Headers.Add(header, value);
        Assert.Equal(HttpStatusCode.BadRequest, (await app.Client.SendAsync(request, Stop)).StatusCode);
        Assert.Empty(app.Journals.Cars());
    }

    /// <summary>Every change there is, found in the routes themselves: none is taken without the token.</summary>
    [Fact]
    public async Task EveryChange_WithoutToken_IsRefused()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var routes = Routes.Of(app, "POST").ToList();
        Assert.True(routes.Count > 25, $"Only {routes.Count} changes were found: the test did not test.");
        foreach (var path in routes)
        {
            var answer = await app.Client.PostAsync(path, new FormUrlEncodedContent([KeyValuePair.Create("name", "Forged")]), Stop);
            Assert.True(answer.StatusCode == HttpStatusCode.BadRequest, $"{path}: {answer.StatusCode}");
        }

        Assert.Equal(car.Sequence, Assert.Single(app.Journals.Cars()).Sequence);
    }
}
