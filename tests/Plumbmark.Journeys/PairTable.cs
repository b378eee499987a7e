using System.Text.Json;
using Plumbmark.Engine.Lengths;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Plumbmark.Journeys;

/// <summary>The table of pairs on a frame sheet, read by where its words stand, and what it must say by the numbers of <c>check --json</c>.</summary>
internal static class PairTable
{
    private static readonly string[] s_heads = ["Pair", "Middle", "Ahead:", "Width", "Higher:"];

    // The demo's finest tool for a frame reads 1/32 in.
    private static readonly LengthDisplay s_display = new(Length.FromFraction(0, 1, 32, LengthUnit.Inch));

    /// <summary>Each row as its cells, in the order of the page.</summary>
    public static IReadOnlyList<string[]> Of(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        foreach (var page in document.GetPages())
        {
            var words = page.GetWords().ToList();
            if (words.Find(w => w.Text == "Middle" && HeadAt(words, w) is not null) is { } middle)
            {
                return Rows(words, HeadAt(words, middle)!);
            }
        }

        return [];
    }

    /// <summary>What the row of a pair must say.</summary>
    public static string[] Expected(JsonElement answer, JsonElement pair)
    {
        var (left, right) = (pair.GetProperty("left").GetString()!, pair.GetProperty("right").GetString()!);
        return
        [
            $"{left} – {right}",
            Cell("sideShift", "sideShift", "left", "right"),
            Cell("stagger", "stagger", "left", "right"),
            Cell("width", "width", "", ""),
            Cell("levelledHeightDifference", "heightDifference", "left", "right"),
        ];

        string Cell(string field, string kind, string plus, string minus)
        {
            if (pair.GetProperty(field).ValueKind != JsonValueKind.Number)
            {
                return "not measured";
            }

            var metres = pair.GetProperty(field).GetDouble() / 1000;
            var u = pair.GetProperty($"u{char.ToUpperInvariant(field[0])}{field[1..]}").GetDouble() / 1000;
            var number = s_display.Number(Math.Abs(metres));
            var direction =
                number == "0" ? ""
                : metres > 0 ? plus
                : minus;
            var sure = s_display.PlusMinus(2 * u);
            var check = answer
                .GetProperty("checks")
                .EnumerateArray()
                .FirstOrDefault(c =>
                    c.GetProperty("kind").GetString() == kind && c.GetProperty("points").EnumerateArray().Any(p => p.GetString() == left)
                );
            var verdict = check.ValueKind == JsonValueKind.Object ? check.GetProperty("verdict").GetString() ?? "no limit known" : "";
            return $"{direction} {number} {sure[..sure.LastIndexOf(' ')]} {verdict}".Trim();
        }
    }

    private static double[]? HeadAt(List<Word> words, Word middle)
    {
        var line = words.Where(w => Math.Abs(w.BoundingBox.Bottom - middle.BoundingBox.Bottom) < 3).ToList();
        var heads = s_heads.Select(h => line.Find(w => w.Text == h)).ToList();
        return heads.Contains(null) ? null : [.. heads.Select(h => h!.BoundingBox.Left), middle.BoundingBox.Bottom];
    }

    private static IReadOnlyList<string[]> Rows(List<Word> words, double[] head)
    {
        var (lefts, top) = (head[..^1], head[^1]);
        var labels = words
            .Where(w =>
                w.Text.EndsWith(".L", StringComparison.Ordinal) && Math.Abs(w.BoundingBox.Left - lefts[0]) < 2 && w.BoundingBox.Bottom < top
            )
            .OrderByDescending(w => w.BoundingBox.Bottom)
            .TakeWhile(w =>
                words.Exists(o =>
                    o.Text == "–"
                    && Math.Abs(o.BoundingBox.Bottom - w.BoundingBox.Bottom) < 6
                    && o.BoundingBox.Left - w.BoundingBox.Right is > 0 and < 12
                )
            )
            .ToList();
        var rows = new List<string[]>();
        for (var r = 0; r < labels.Count; r++)
        {
            // A row reaches from its first line down to the next row's; the last is as tall as the tallest.
            var (from, to) = (
                labels[r].BoundingBox.Top + 3,
                r + 1 < labels.Count ? labels[r + 1].BoundingBox.Top + 3 : labels[r].BoundingBox.Bottom - 11
            );
            var inRow = words.Where(w => w.BoundingBox.Bottom < from && w.BoundingBox.Bottom > to).ToList();
            rows.Add([
                .. lefts.Select((left, c) => CellText(inRow, left - 2, c + 1 < lefts.Length ? lefts[c + 1] - 2 : double.PositiveInfinity)),
            ]);
        }

        return rows;
    }

    private static string CellText(List<Word> row, double left, double right) =>
        string.Join(
            ' ',
            row.Where(w => w.BoundingBox.Left >= left && w.BoundingBox.Left < right)
                .OrderByDescending(w => Math.Round(w.BoundingBox.Bottom / 4))
                .ThenBy(w => w.BoundingBox.Left)
                .Select(w => w.Text)
        );
}
