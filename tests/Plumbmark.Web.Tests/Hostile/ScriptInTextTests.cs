using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>Markup in every text field there is (CWE-79): it is kept as text, and no page shows it as anything else.</summary>
public sealed class ScriptInTextTests
{
    private const string Markup = "\"'><script>alert(1)</script><img src=x onerror=alert(1)><svg onload=alert(1)>";

    [Fact]
    public async Task EveryTextField_TakesMarkupAsText()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var first = await EveryPage.Visit(app.Client, car.Id);
        var (sent, taken) = (0, 0);
        foreach (var page in first)
        {
            foreach (var form in page.Document.Forms.Where(IsFilledIn))
            {
                var action = form.GetAttribute("action")!;
                var typed = TextFields(form).Select(n => (n, Markup)).ToArray();
                var answer = await app.Submit(page, action, typed);
                Assert.True(answer.Status is 200 or 404 or 422, $"{action}: {answer.Status}");
                IsClean(answer);
                sent++;
                taken += answer.Status == 200 ? 1 : 0;
            }
        }

        Assert.True(sent > 25, $"Only {sent} forms were sent: the test did not test.");
        Assert.True(taken > 8, $"Only {taken} forms were taken: nothing much was kept.");
        Assert.Contains(Markup, app.Journals.Cars().Select(c => c.File.Car.Name));
        var all = new List<VisitedPage>();
        foreach (var there in app.Journals.Cars())
        {
            all.AddRange(await EveryPage.Visit(app.Client, there.Id));
        }

        Assert.True(all.Count > 25, $"Only {all.Count} pages were visited.");
        Assert.All(all, IsClean);
        Assert.True(
            all.Count(p => p.Document.Source.Text.Contains("alert(1)", StringComparison.Ordinal)) > 10,
            "The markup is on hardly any page."
        );
    }

    [Fact]
    public async Task Search_AndEveryOtherQuery_TakesMarkupAsText()
    {
        await using var app = await RunningApp.Start();
        app.Journals.Add(DemoCar.File());
        var value = Uri.EscapeDataString(Markup);
        string[] names = ["kind", "from", "to", "point", "tool", "startAt", "skipped", "round", "notice", "before", "line", "id", "page"];
        var query = string.Join('&', names.Select(n => $"{n}={value}"));
        foreach (var path in Routes.Of(app, "GET").Where(p => !p.Contains("none", StringComparison.Ordinal)))
        {
            IsClean(await app.Get($"{path}?{query}"));
        }
    }

    private static bool IsFilledIn(IHtmlFormElement form) =>
        form.Method.Equals("post", StringComparison.OrdinalIgnoreCase)
        && form.GetAttribute("enctype") is null
        && TextFields(form).Any()
        && form.GetAttribute("action")!.EndsWith("/binning", StringComparison.Ordinal) is false;

    private static IEnumerable<string> TextFields(IHtmlFormElement form) =>
        form
            .Elements.Where(e => e is IHtmlTextAreaElement or IHtmlInputElement { Type: "text" or "search" or "" })
            .Select(e => e.GetAttribute("name"))
            .OfType<string>()
            .Where(n => n.Length > 0)
            .Distinct();

    private static void IsClean(VisitedPage page)
    {
        var bad = page
            .Document.All.Where(e =>
                e is IHtmlScriptElement { Source: null or "" }
                || (e is IHtmlImageElement && e.GetAttribute("src") == "x")
                || e.Attributes.Any(a => a.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
                || (e.GetAttribute("href") ?? "").StartsWith("javascript:", StringComparison.OrdinalIgnoreCase)
            )
            .Select(e => e.OuterHtml[..Math.Min(200, e.OuterHtml.Length)])
            .ToList();
        Assert.True(bad.Count == 0, $"{page.Path}: {string.Join("\n", bad)}");
    }
}
