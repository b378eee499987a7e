using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>What holds on every page.</summary>
internal static class PageChecks
{
    /// <summary>No violation of WCAG 2.2 A and AA, no sideways scrolling, and nothing to press that is smaller than 48 pixels.</summary>
    /// <remarks>In the dark only the colours are looked at: the rest is the same page as in the light, and axe is slow.</remarks>
    public static async Task IsFitToUse(this IPage page)
    {
        if (await page.EvaluateAsync<bool>("matchMedia('(prefers-color-scheme: dark)').matches"))
        {
            await HasReadableColours(page);
            return;
        }

        var options = new Deque.AxeCore.Commons.AxeRunOptions
        {
            RunOnly = new Deque.AxeCore.Commons.RunOnlyOptions
            {
                Type = "tag",
                Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
            },
        };
        var found = await page.RunAxe(options);
        Assert.True(
            found.Violations.Length == 0,
            $"{page.Url}:\n"
                + string.Join("\n", found.Violations.Select(v => $"{v.Id}: {v.Help}\n  {string.Join("\n  ", v.Nodes.Select(n => n.Html))}"))
        );
        var overflow = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overflow <= 0, $"{page.Url} is {overflow} px wider than the screen.");
        var small = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('button, select, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), summary, a.button, nav a, .tap')]
                .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 48)
                .map(e => e.outerHTML.slice(0, 120) + ' ' + e.getBoundingClientRect().height)
            """
        );
        Assert.True(small.Length == 0, $"{page.Url} has things too small to press:\n" + string.Join("\n", small));
    }

    /// <summary>Everything that must be read stands out enough from what is behind it (WCAG 2.2, 1.4.3).</summary>
    private static async Task HasReadableColours(IPage page)
    {
        var options = new Deque.AxeCore.Commons.AxeRunOptions
        {
            RunOnly = new Deque.AxeCore.Commons.RunOnlyOptions { Type = "rule", Values = ["color-contrast"] },
        };
        var found = await page.RunAxe(options);
        Assert.True(
            found.Violations.Length == 0,
            $"{page.Url}:\n" + string.Join("\n", found.Violations.SelectMany(v => v.Nodes).Select(n => n.Html))
        );
    }

    /// <summary>Keeps a picture of the whole page in artifacts/screens, for people to look at.</summary>
    public static async Task Picture(this IPage page, string name)
    {
        var path = Repository.PathTo("artifacts", "screens", $"{name}.png");
        await page.ScreenshotAsync(new PageScreenshotOptions { Path = path, FullPage = true });
    }
}
