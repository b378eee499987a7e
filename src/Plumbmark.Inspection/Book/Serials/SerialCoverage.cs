using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book;

/// <summary>Whether ranges that should follow each other do: what lies in two of them, and what lies in none.</summary>
/// <remarks>
/// A gap is told only between two ranges of one series: where a series begins and ends, no book page knows. That the lowest or highest range
/// of a series is closed is told beside it.
/// </remarks>
/// <param name="Overlaps">Numbers in two ranges, with the places of the two in the list.</param>
/// <param name="Gaps">Numbers between two ranges and in none.</param>
/// <param name="ClosedEnds">Sentences on series whose first or last range is closed.</param>
public sealed record SerialCoverage(
    IReadOnlyList<(int First, int Second, SerialOverlap Overlap)> Overlaps,
    IReadOnlyList<SerialRange> Gaps,
    IReadOnlyList<string> ClosedEnds
)
{
    /// <summary>What ranges cover.</summary>
    public static SerialCoverage Of(IReadOnlyList<SerialRange> ranges)
    {
        var overlaps =
            from i in Enumerable.Range(0, ranges.Count)
            from j in Enumerable.Range(i + 1, ranges.Count - i - 1)
            let both = ranges[i].With(ranges[j])
            where both is SerialOverlap.Shared || (both is SerialOverlap.CannotBeCompared && IsOneSeries(ranges[i], ranges[j]))
            select (i, j, both);
        var series = ranges
            .Where(r => SeriesOf(r) is not null)
            .GroupBy(r => SeriesOf(r)!, StringComparer.Ordinal)
            .Select(g => g.OrderBy(r => r.From?.Number ?? long.MinValue).ToList())
            .ToList();
        var isEverything = ranges.Any(r => SeriesOf(r) is null);
        return new SerialCoverage(
            [.. overlaps],
            isEverything ? [] : [.. series.SelectMany(GapsIn)],
            isEverything ? [] : [.. series.SelectMany(EndsOf)]
        );
    }

    private static bool IsOneSeries(SerialRange a, SerialRange b) => SeriesOf(a) == SeriesOf(b);

    private static string? SeriesOf(SerialRange range) => (range.From ?? range.To)?.Series;

    private static IEnumerable<SerialRange> GapsIn(List<SerialRange> ordered)
    {
        var reached = ordered[0].To;
        foreach (var next in ordered.Skip(1))
        {
            if (reached is null)
            {
                yield break;
            }

            if (next.From is { } from && from.Number > reached.Number + 1)
            {
                yield return new SerialRange(reached.With(reached.Number + 1), from.With(from.Number - 1));
            }

            reached = next.To is null || next.To.Number > reached.Number ? next.To : reached;
        }
    }

    private static IEnumerable<string> EndsOf(List<SerialRange> ordered)
    {
        if (ordered.TrueForAll(r => r.From is not null))
        {
            yield return Texts.Say("book.serial-coverage.nothing-is-said-of-numbers", ordered[0].From);
        }

        if (ordered.TrueForAll(r => r.To is not null))
        {
            yield return Texts.Say("book.serial-coverage.nothing-is-said-of-numbers-after", ordered.MaxBy(r => r.To!.Number)!.To);
        }
    }
}
