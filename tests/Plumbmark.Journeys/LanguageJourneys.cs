using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>
/// Another language is one file. Pseudo is English with marks round every sentence that comes from the file: every page is walked in it, scripts and all.
/// That nothing stands past the file is held by PseudoTests.
/// </summary>
public sealed partial class LanguageJourneys(Browser browser)
{
    [Fact]
    public async Task EveryPage_ShowsItsSentencesFromTheFile()
    {
        var sentences = JsonSerializer.Deserialize<Dictionary<string, string>>(
            await File.ReadAllTextAsync(
                Repository.PathTo("src", "Plumbmark.Inspection", "Language", "en-GB.json"),
                TestContext.Current.CancellationToken
            )
        )!;
        await using var app = await AppProcess.Start(language: "pseudo");
        var page = await browser.Open(app);
        var shown = new HashSet<string>(StringComparer.Ordinal);
        var faults = new List<string>();
        foreach (var address in Pages.All.SelectMany(p => p.Addresses))
        {
            await page.GotoAsync(address);
            var said = await page.EvaluateAsync<string[]>(Said);
            faults.AddRange(from text in said where Hole().IsMatch(text) select $"{address} says “{text}” with a part left open.");
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

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Hole();

    [GeneratedRegex("⟦[^⟧]*⟧")]
    private static partial Regex Marked();
}
