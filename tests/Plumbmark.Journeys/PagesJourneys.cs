using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Plumbmark.Store;
using Plumbmark.Testing;
using Plumbmark.Web;

namespace Plumbmark.Journeys;

/// <summary>Every page there is, each with the demo on it: fit to use by WCAG 2.2 AA. A page nobody thought of fails the list.</summary>
public sealed class PagesJourneys(Browser browser)
{
    /// <summary>What answers GET and is no page: files to take out, pictures, the built-in files, a form's token.</summary>
    private static readonly string[] s_noPages =
    [
        "/assets/{hash}/{name}",
        "/backup",
        "/form-token",
        "/cars/{car:long}/file",
        "/cars/{car:long}/sheet/{kind}.pdf",
        "/cars/{car:long}/extracts/{what}",
        "/cars/{car:long}/club-file",
        "/cars/{car:long}/book/file",
        "/cars/{car:long}/bench/photos/{photo}",
    ];

    /// <summary>The colours are the same few everywhere; in the dark these pages have all of them.</summary>
    private static readonly string[] s_dark =
    [
        "/",
        "/first/1",
        "/cars/1/floor",
        "/cars/1/points/A.R/story",
        "/cars/1/level",
        "/cars/1/sessions",
        "/cars/1/turning",
        "/cars/1/journal",
        "/cars/1/bench/parts/arm.L",
        "/cars/1/road",
        "/cars/1/road/wheels?kind=stringGaps",
        "/cars/1/press/p1",
        "/cars/1/sheet",
    ];

    [Fact]
    public async Task EveryAddressThatAnswersGet_IsInTheList()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-pages-").FullName;
        using (var journals = Journals.Open(Path.Combine(folder, "plumbmark.db")))
        {
            await using var app = WebServer.Build(journals, port: 0, keyFolder: null);
            await app.StartAsync(TestContext.Current.CancellationToken);
            var routes = app
                .Services.GetRequiredService<EndpointDataSource>()
                .Endpoints.OfType<RouteEndpoint>()
                .Where(e => e.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(HttpMethods.Get) ?? false)
                .Select(e => e.RoutePattern.RawText!)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal);
            Assert.Equal(Pages.All.Select(p => p.Route).Concat(s_noPages).Order(StringComparer.Ordinal), routes);
        }

        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("/cars/1/road")]
    [InlineData("/cars/1/bench", "/cars/1/press", "/cars/1/book")]
    [InlineData("/")]
    public async Task EveryPage_IsFitToUse(params string[] beginnings)
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        if (beginnings.Contains("/cars/1/road"))
        {
            await ReadACamber(page);
        }

        foreach (var address in Addresses(beginnings))
        {
            await Look(page, address, "light");
        }
    }

    [Fact]
    public async Task EveryKindOfPage_IsReadableInTheDark()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, dark: true);
        foreach (var address in s_dark)
        {
            await Look(page, address, "dark");
        }
    }

    /// <summary>The demo has no reading at a wheel; without one there is none to take back.</summary>
    private static async Task ReadACamber(IPage page)
    {
        await page.GotoAsync("/cars/1/road/wheels");
        await page.ClickAsync("text=Camber, plumb line");
        await page.SelectOptionAsync("#f-wheel", "FR");
        await page.FillAsync("#f-top", "1");
        await page.FillAsync("#f-bottom", "1 1/4");
        await page.FillAsync("#f-span", "15");
        await page.ClickAsync("text=Keep reading");
        await Assertions.Expect(page.Locator("#wheel-w1")).ToBeVisibleAsync();
    }

    private static async Task Look(IPage page, string address, string name)
    {
        var answer = await page.GotoAsync(address);
        Assert.True(address.Contains("/99/", StringComparison.Ordinal) || answer!.Ok, $"{address} answers {answer!.Status}.");
        await page.IsFitToUse();
        await page.Picture($"{name}{string.Concat(address.Select(c => char.IsLetterOrDigit(c) ? c : '-'))}");
    }

    /// <summary>The addresses under these beginnings; "/" stands for what no other has.</summary>
    private static IEnumerable<string> Addresses(string[] beginnings)
    {
        string[] others = ["/cars/1/road", "/cars/1/bench", "/cars/1/press", "/cars/1/book"];
        bool Is(string address) =>
            beginnings is ["/"]
                ? !Array.Exists(others, o => address.StartsWith(o, StringComparison.Ordinal))
                : Array.Exists(beginnings, b => address.StartsWith(b, StringComparison.Ordinal));
        return Pages.All.SelectMany(p => p.Addresses).Where(Is);
    }
}
