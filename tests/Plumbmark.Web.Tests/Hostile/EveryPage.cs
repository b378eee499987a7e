using AngleSharp.Html.Parser;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>The pages that a visitor can come to by links.</summary>
public static class EveryPage
{
    private const int Most = 70;

    /// <summary>The shed and every page of a car; one page of each address, because what stands behind "?" are other states of the same page.</summary>
    public static async Task<List<VisitedPage>> Visit(HttpClient visitor, long car)
    {
        var (pages, seen, waiting) = (new List<VisitedPage>(), new HashSet<string>(StringComparer.Ordinal), new Queue<string>());
        foreach (var first in (string[])["/", $"/cars/{car}", $"/cars/{car}/floor"])
        {
            waiting.Enqueue(first);
        }

        while (waiting.TryDequeue(out var address) && pages.Count < Most)
        {
            var response = await visitor.GetAsync(address);
            if (response.Content.Headers.ContentType?.MediaType != "text/html")
            {
                continue;
            }

            var page = new VisitedPage(response, await new HtmlParser().ParseDocumentAsync(await response.Content.ReadAsStringAsync()));
            pages.Add(page);
            foreach (var link in page.Document.QuerySelectorAll("main a[href], nav a[href]").Select(a => a.GetAttribute("href")!))
            {
                if (link.StartsWith($"/cars/{car}/", StringComparison.Ordinal) && seen.Add(link.Split('?', '#')[0]))
                {
                    waiting.Enqueue(link.Split('#')[0]);
                }
            }
        }

        return pages;
    }
}
