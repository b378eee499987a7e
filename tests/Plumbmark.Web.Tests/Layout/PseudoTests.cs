using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Plumbmark.Testing;

namespace Plumbmark.Web.Tests.Layout;

/// <summary>
/// Another language is one file: in the pseudo language every text that a page shows or has read out is marked, unless a person typed it. One that is not
/// stands in the sources.
/// </summary>
public sealed partial class PseudoTests
{
    /// <summary>
    /// What Inspection, Drawing and Engine say of a measurement does not come from the file of the pages; here is where it stands. The list shrinks as
    /// those sentences move to the file.
    /// </summary>
    private static readonly (string Page, string Where)[] s_saidByOthers =
    [
        ("/", "svg.drawing"),
        ("/floor", ".floor-working th[scope=row]"),
        ("/tools", "select[name=class]"),
        ("/bench", ".bench-headline, .bench-named, .bench-tick, select[name=kind], select[name=made]"),
        ("/bench", ".bench-answer h1, #dimensions, .bench-dimension"),
        ("/bench/types", ".card li"),
        ("/press", "svg"),
        ("/road", ".road-figures, select[name=figure], nav.floor-kinds a, p.card"),
    ];

    /// <summary>What is said of a length is Engine's.</summary>
    private static readonly string[] s_faultsOfOthers = ["Write a length such as"];

    [Fact]
    public async Task EveryTextOfEveryPage_AndEveryFaultOfAnEmptyForm_ComesFromTheFile()
    {
        await using var app = await PseudoApp.Start();
        await ReadACamber(app);
        IReadOnlyList<string> typed = [.. await app.Typed(1), .. await app.Typed(2)];
        var (pages, faults) = (new List<VisitedPage>(), new List<string>());
        foreach (var address in Pages.All.SelectMany(p => p.Addresses))
        {
            var page = await app.Get(address);
            pages.Add(page);
            faults.AddRange(Unmarked(page, typed).Select(t => $"{address}: {t}"));
        }

        var (shown, wrong) = await FaultsOf(app, pages.SelectMany(Emptied).DistinctBy(f => f.Action));
        faults.AddRange(wrong);
        Assert.True(faults.Count == 0, string.Join("\n", faults));
        Assert.True(shown > 40, $"Only {shown} faults were shown; the forms were not left empty.");
    }

    /// <summary>The demo has no reading at a wheel; without one there is none to take back.</summary>
    private static async Task ReadACamber(PseudoApp app)
    {
        var page = await app.Get("/cars/1/road/wheels?kind=camberPlumb");
        var kept = await app.Send(
            "/cars/1/road/wheels",
            page.Filled("/cars/1/road/wheels", ("wheel", "FR"), ("top", "1"), ("bottom", "1 1/4"), ("span", "15"))
        );
        Assert.Equal(200, kept.Status);
    }

    private static async Task<(int Shown, List<string> Wrong)> FaultsOf(
        PseudoApp app,
        IEnumerable<(string Action, List<KeyValuePair<string, string>> Fields)> forms
    )
    {
        var (shown, wrong) = (0, new List<string>());
        foreach (var (action, fields) in forms)
        {
            var answer = await app.Send(action, fields);
            var said = answer.Document.QuerySelectorAll(".fault").Select(f => f.TextContent).ToList();
            shown += said.Count;
            wrong.AddRange(
                from fault in said
                where HasWords(fault, []) && !Array.Exists(s_faultsOfOthers, f => fault.Contains(f, StringComparison.Ordinal))
                select $"{action}: {fault}"
            );
        }

        return (shown, wrong);
    }

    /// <summary>Every form with something to write in it, with nothing written.</summary>
    private static IEnumerable<(string Action, List<KeyValuePair<string, string>> Fields)> Emptied(VisitedPage page) =>
        from form in page.Document.Forms
        where form.Method == "post" && form.QuerySelector("input[type=file]") is null
        let written = form.Elements.Where(e => e is IHtmlTextAreaElement or IHtmlInputElement { Type: "text" }).ToList()
        where written.Count > 0
        let others = form.Elements.Where(e => e is IHtmlSelectElement or IHtmlInputElement { Type: "hidden" })
        select (
            form.GetAttribute("action")!,
            written
                .Select(e => KeyValuePair.Create(e.GetAttribute("name")!, ""))
                .Concat(others.Select(e => KeyValuePair.Create(e.GetAttribute("name")!, ValueOf(e))))
                .ToList()
        );

    private static string ValueOf(IHtmlElement element) =>
        element is IHtmlSelectElement select ? select.Value ?? "" : ((IHtmlInputElement)element).Value;

    private static IEnumerable<string> Unmarked(VisitedPage page, IReadOnlyList<string> typed)
    {
        foreach (var text in page.Document.Body!.Descendants<IText>())
        {
            var element = text.ParentElement!;
            if (element.Closest("code, script, .top-name") is null && HasWords(text.Data, typed) && IsOurs(page, element))
            {
                yield return $"<{element.LocalName} class=\"{element.ClassName}\"> {text.Data.Trim()}";
            }
        }

        foreach (var element in page.Document.Body!.QuerySelectorAll("[aria-label], [alt], [placeholder], [title], datalist option"))
        {
            string[] names = element is IHtmlOptionElement ? ["value"] : ["aria-label", "alt", "placeholder", "title"];
            foreach (var name in names.Where(n => HasWords(element.GetAttribute(n) ?? "", typed) && IsOurs(page, element)))
            {
                yield return $"<{element.LocalName} {name}> {element.GetAttribute(name)}";
            }
        }
    }

    private static bool IsOurs(VisitedPage page, IElement element) =>
        !Array.Exists(s_saidByOthers, s => page.Path.Contains(s.Page, StringComparison.Ordinal) && element.Closest(s.Where) is not null);

    /// <summary>Whether words are left when what is marked and what was typed is taken out; units and names of points are shorter.</summary>
    private static bool HasWords(string text, IReadOnlyList<string> typed)
    {
        while (Marked().IsMatch(text))
        {
            text = Marked().Replace(text, " ");
        }

        foreach (var own in Word().IsMatch(text) ? typed : [])
        {
            text = text.Replace(own, " ", StringComparison.Ordinal);
        }

        return Word().IsMatch(text);
    }

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Marked();

    [GeneratedRegex("[A-Za-z]{3,}")]
    private static partial Regex Word();
}
