using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests;

/// <summary>The first load of a room in a steel garage: the page and everything it needs, compressed, within 150 KB; and no jargon on a first screen.</summary>
public sealed partial class FirstLoadTests
{
    private const int MostBytes = 150 * 1024;

    private static readonly string[] s_rooms =
    [
        "/",
        "/first",
        "/look",
        "/cars/1",
        "/cars/1/journal",
        "/cars/1/book",
        "/cars/1/floor",
        "/cars/1/floor?round=1",
        "/cars/1/points",
        "/cars/1/points/A.R",
        "/cars/1/points/A.R/story",
        "/cars/1/points/A.R/drop",
        "/cars/1/level",
        "/cars/1/limits",
        "/cars/1/tools",
        "/cars/1/sessions",
        "/cars/1/turning",
        "/cars/1/bench",
        "/cars/1/press",
        "/cars/1/road",
        "/cars/1/sheet",
    ];

    [Fact]
    public async Task EveryRoom_LoadsWithinItsWeight_AndSpeaksNoJargon()
    {
        await using var app = await RunningApp.Start();
        app.Journals.Add(DemoCar.File());
        foreach (var room in s_rooms)
        {
            var (html, bytes) = await Weigh(app, room);
            var document = await new HtmlParser().ParseDocumentAsync(html);
            var parts = document
                .QuerySelectorAll("link[rel=stylesheet], script[src], img[src], link[rel=icon]")
                .Where(e => e.GetAttribute("loading") != "lazy")
                .Select(e => e.GetAttribute("href") ?? e.GetAttribute("src")!)
                .Distinct();
            foreach (var part in parts)
            {
                bytes += (await Weigh(app, part)).Bytes;
            }

            Assert.True(bytes <= MostBytes, $"{room} weighs {bytes / 1024.0:0.0} KB compressed.");
            foreach (var working in document.QuerySelectorAll("details.floor-working, details"))
            {
                // What is folded away is not on the first screen.
                if (!working.HasAttribute("open"))
                {
                    working.Remove();
                }
            }

            var words = document.QuerySelector("main")!.TextContent;
            Assert.False(Jargon().IsMatch(words), $"{room} says {Jargon().Match(words).Value}.");
        }
    }

    private static async Task<(string Html, int Bytes)> Weigh(RunningApp app, string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        request.Headers.AcceptEncoding.Add(new StringWithQualityHeaderValue("br"));
        using var response = await app.Client.SendAsync(request);
        Assert.True(response.IsSuccessStatusCode, $"{address}: {(int)response.StatusCode}");
        var bytes = await response.Content.ReadAsByteArrayAsync();
        return response.Content.Headers.ContentEncoding.Contains("br")
            ? ("", bytes.Length)
            : (System.Text.Encoding.UTF8.GetString(bytes), bytes.Length);
    }

    [GeneratedRegex(@"\bresidual|covariance|\bRMS\b", RegexOptions.IgnoreCase)]
    private static partial Regex Jargon();
}
