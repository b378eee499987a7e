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
}
