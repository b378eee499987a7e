using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Plumbmark.Store;
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

    /// <summary>Each page's route with where to look at it in the app as it starts: car 1 is the demo, car 2 is empty. The page that a stranger gets is in PhoneJourneys.</summary>
    internal static readonly (string Route, string[] Addresses)[] All =
    [
        ("/", ["/"]),
        ("/first", ["/first"]),
        ("/first/{step:int}", ["/first/1", "/first/2", "/first/3", "/first/4", "/first/5"]),
        ("/look", ["/look"]),
        ("/phones", ["/phones"]),
        ("/cars/{car:long}", ["/cars/1"]),
        ("/cars/{car:long}/journal", ["/cars/1/journal"]),
        (
            "/cars/{car:long}/floor",
            [
                "/cars/1/floor",
                "/cars/1/floor?kind=offset&point=C.L&from=B.L&to=E.L",
                "/cars/1/floor?kind=drop&point=A.R",
                "/cars/1/floor?kind=height&round=1",
                "/cars/2/floor",
                "/cars/99/floor",
            ]
        ),
        ("/cars/{car:long}/readings/{reading}/withdrawal", ["/cars/1/readings/r1/withdrawal"]),
        ("/cars/{car:long}/points", ["/cars/1/points", "/cars/2/points"]),
        ("/cars/{car:long}/points/{point}", ["/cars/1/points/A.L"]),
        ("/cars/{car:long}/points/{point}/drop", ["/cars/1/points/B.L/drop"]),
        ("/cars/{car:long}/points/{point}/story", ["/cars/1/points/A.R/story"]),
        ("/cars/{car:long}/sessions", ["/cars/1/sessions"]),
        ("/cars/{car:long}/turning", ["/cars/1/turning"]),
        ("/cars/{car:long}/level", ["/cars/1/level"]),
        ("/cars/{car:long}/plan", ["/cars/1/plan", "/cars/2/plan"]),
        ("/cars/{car:long}/tools", ["/cars/1/tools?tool=tape"]),
        ("/cars/{car:long}/limits", ["/cars/1/limits"]),
        ("/cars/{car:long}/book", ["/cars/1/book"]),
        ("/cars/{car:long}/book/page", ["/cars/1/book/page?id=frame"]),
        ("/cars/{car:long}/book/figure", ["/cars/1/book/figure?page=frame&figure=e-f"]),
        ("/cars/{car:long}/bench", ["/cars/1/bench"]),
        (
            "/cars/{car:long}/bench/parts/{part}",
            [
                "/cars/1/bench/parts/arm.L",
                "/cars/1/bench/parts/spring.L?measure=spring",
                "/cars/1/bench/parts/arm.R?measure=heights",
                "/cars/1/bench/parts/arm.R?measure=straightedge",
            ]
        ),
        ("/cars/{car:long}/bench/parts/{part}/card", ["/cars/1/bench/parts/arm.L/card"]),
        ("/cars/{car:long}/bench/parts/{part}/measures/{measure}/withdrawal", ["/cars/1/bench/parts/arm.L/measures/m1/withdrawal"]),
        ("/cars/{car:long}/bench/types", ["/cars/1/bench/types"]),
        ("/cars/{car:long}/press", ["/cars/1/press"]),
        ("/cars/{car:long}/press/{job}", ["/cars/1/press/p1"]),
        ("/cars/{car:long}/press/{job}/description", ["/cars/1/press/p1/description"]),
        ("/cars/{car:long}/press/{job}/bites/{bite}/withdrawal", ["/cars/1/press/p1/bites/b2/withdrawal"]),
        ("/cars/{car:long}/road", ["/cars/1/road"]),
        ("/cars/{car:long}/road/trials", ["/cars/1/road/trials"]),
        ("/cars/{car:long}/road/front", ["/cars/1/road/front"]),
        ("/cars/{car:long}/road/rear", ["/cars/1/road/rear", "/cars/1/road/rear?kind=trailingArms"]),
        ("/cars/{car:long}/road/figures", ["/cars/1/road/figures"]),
        ("/cars/{car:long}/road/adjusters", ["/cars/1/road/adjusters"]),
        ("/cars/{car:long}/road/findings", ["/cars/1/road/findings?part=Stub"]),
        ("/cars/{car:long}/road/findings/{finding}/withdrawal", ["/cars/1/road/findings/p1/withdrawal"]),
        ("/cars/{car:long}/road/wheels", ["/cars/1/road/wheels?kind=stringGaps", "/cars/1/road/wheels?kind=swing"]),
        ("/cars/{car:long}/road/wheels/{reading}/withdrawal", ["/cars/1/road/wheels/w1/withdrawal"]),
        ("/cars/{car:long}/sheet", ["/cars/1/sheet"]),
        ("/cars/{car:long}/sheet/form-in", ["/cars/1/sheet/form-in?ask=all"]),
        ("/cars/{car:long}/sheet/readings-in", ["/cars/1/sheet/readings-in"]),
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
            Assert.Equal(All.Select(p => p.Route).Concat(s_noPages).Order(StringComparer.Ordinal), routes);
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
        return All.SelectMany(p => p.Addresses).Where(Is);
    }
}
