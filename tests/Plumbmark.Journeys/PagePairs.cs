using System.Text.Json;
using Microsoft.Playwright;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Journeys;

/// <summary>The table of pairs on the floor page, and what it must say by the numbers of <c>check --json</c>.</summary>
internal static class PagePairs
{
    /// <summary>Each pair as its name and its three cells, in the order of the page.</summary>
    public static async Task<IReadOnlyList<string[]>> Of(IPage page)
    {
        var rows = new List<string[]>();
        foreach (var body in await page.Locator(".floor-pairs tbody").AllAsync())
        {
            var name = (await body.Locator("th").InnerTextAsync()).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)[0];
            rows.Add([name, .. (await body.Locator("td").AllInnerTextsAsync()).Select(Line)]);
        }

        return rows;
    }

    /// <summary>What the page must say of every pair of an answer.</summary>
    /// <param name="answer">The answer of <c>check --json</c>.</param>
    /// <param name="division">What the finest tool of the car reads.</param>
    public static IReadOnlyList<string[]> Expected(JsonElement answer, Length division) =>
        [.. answer.GetProperty("pairs").EnumerateArray().Select(p => Row(answer, p, new LengthDisplay(division)))];

    private static string[] Row(JsonElement answer, JsonElement pair, LengthDisplay display)
    {
        var (left, right) = (pair.GetProperty("left").GetString()!, pair.GetProperty("right").GetString()!);
        Assert.Equal(left[..^2], right[..^2]);
        return
        [
            left[..^2],
            Cell("sideShift", "sideShift", "left", "right"),
            Cell("stagger", "stagger", "left ahead", "right ahead"),
            Cell("levelledHeightDifference", "heightDifference", "left high", "right high"),
        ];

        string Cell(string field, string kind, string plus, string minus)
        {
            if (pair.GetProperty(field).ValueKind != JsonValueKind.Number)
            {
                return "not measured";
            }

            var metres = pair.GetProperty(field).GetDouble() / 1000;
            var u = pair.GetProperty($"u{char.ToUpperInvariant(field[0])}{field[1..]}").GetDouble() / 1000;
            var number = display.Number(Math.Abs(metres));
            var value = number == "0" ? "0" : $"{number} {(metres > 0 ? plus : minus)}";
            var check = answer
                .GetProperty("checks")
                .EnumerateArray()
                .Single(c =>
                    c.GetProperty("kind").GetString() == kind && c.GetProperty("points").EnumerateArray().Any(p => p.GetString() == left)
                );
            var verdict =
                check.GetProperty("limit").ValueKind == JsonValueKind.Number ? $" {check.GetProperty("verdict").GetString()}" : "";
            return Line($"{value} {display.PlusMinus(2 * u)}{verdict}");
        }
    }

    private static string Line(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
