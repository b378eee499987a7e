using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>Another language is one file. Pseudo is English with marks round every sentence that comes from the file: every page is walked in it.</summary>
public sealed partial class LanguageJourneys(Browser browser)
{
    /// <summary>Pages on which every heading, label and button comes from the file; on the others some are still written into the page.</summary>
    private static readonly string[] s_whole =
    [
        "/",
        "/first",
        "/first/1",
        "/first/2",
        "/first/3",
        "/first/4",
        "/first/5",
        "/look",
        "/phones",
        "/cars/1",
        "/cars/1/journal",
        "/cars/1/level",
        "/cars/1/limits",
        "/cars/1/points",
        "/cars/1/tools?tool=tape",
        "/cars/2/floor",
        "/cars/2/points",
        "/cars/1/plan",
        "/cars/1/points/A.R/story",
        "/cars/1/points/B.L/drop",
        "/cars/1/sessions",
        "/cars/1/turning",
    ];

    [Fact]
    public async Task EveryPage_ShowsItsSentencesFromTheFile()
    {
        var sentences = JsonSerializer.Deserialize<Dictionary<string, string>>(
            await File.ReadAllTextAsync(
                Repository.PathTo("src", "Plumbmark.Inspection", "Language", "en-GB.json"),
                TestContext.Current.CancellationToken
            )
        )!;
        // Long enough to be nobody's name and no part of another sentence.
        const int Telling = 18;
        var plain = sentences.Values.Where(s => s.Length >= Telling && !s.Contains('{', StringComparison.Ordinal)).ToList();
        await using var app = await AppProcess.Start(language: "pseudo");
        var page = await browser.Open(app);
        var shown = new HashSet<string>(StringComparer.Ordinal);
        var faults = new List<string>();
        foreach (var address in Pages.All.SelectMany(p => p.Addresses))
        {
            await page.GotoAsync(address);
            var said = await page.EvaluateAsync<string[]>(Said);
            faults.AddRange(from sentence in plain where said.Contains(sentence) select $"{address} says “{sentence}” past the file.");
            faults.AddRange(from text in said where Hole().IsMatch(text) select $"{address} says “{text}” with a part left open.");
            if (s_whole.Contains(address))
            {
                var unmarked = await page.EvaluateAsync<string[]>(Unmarked);
                faults.AddRange(from text in unmarked select $"{address} has “{text}” in the page itself.");
            }

            shown.UnionWith(said.SelectMany(t => Marked().Matches(t)).Select(m => m.Value));
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults.Distinct()));
        // Faults, counts and other answers are not on these pages; but most of what the file has must be.
        Assert.True(shown.Count >= sentences.Count / 3, $"{shown.Count} sentences of {sentences.Count} were shown.");
        await page.GotoAsync("/cars/1/floor");
        await page.Picture("pseudo-floor");
    }

    /// <summary>Everything a page says, seen or read out.</summary>
    private const string Said = """
        () => {
          const texts = [];
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walk.nextNode()) {
            const at = walk.currentNode.parentElement.tagName;
            if (at !== 'SCRIPT' && walk.currentNode.data.trim()) { texts.push(walk.currentNode.data.trim()); }
          }
          for (const e of document.querySelectorAll('[aria-label],[alt],[placeholder],[title]')) {
            for (const n of ['aria-label', 'alt', 'placeholder', 'title']) {
              if (e.getAttribute(n)) { texts.push(e.getAttribute(n)); }
            }
          }
          return texts;
        }
        """;

    /// <summary>Headings, labels and buttons of the page's own part with letters in them, none of which is marked; the car's own name is nobody's sentence.</summary>
    private const string Unmarked = """
        () => [...document.querySelectorAll('main :is(h1, h2, h3, label, legend, summary, button, caption, th[scope=col], a.button)')]
          .map(e => e.textContent.trim())
          .filter(t => /[a-z]{3}/.test(t) && !t.includes('⟦') && t !== document.querySelector('.top-car')?.textContent.trim())
        """;

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Hole();

    [GeneratedRegex("⟦[^⟧]*⟧")]
    private static partial Regex Marked();
}
