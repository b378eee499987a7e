namespace Plumbmark.Inspection.Book;

/// <summary>What several cars say of one dimension: a mean that one odd car cannot drag, the spread between cars, and how many cars.</summary>
/// <remarks>
/// Algorithm A of ISO 13528:2015, C.3.1 (Huber's proposal 2 with k = 1.5): values further than 1.5 s from the mean are drawn in to there, mean
/// and spread are taken anew, until both rest. Assumes cars built alike; it cannot see that all were bent alike, or measured in one wrong way.
/// </remarks>
/// <param name="Mean">The robust mean, in the unit of the values (metres, radians, newtons per metre).</param>
/// <param name="Spread">Robust standard deviation between cars, same unit; null for fewer than three cars.</param>
/// <param name="Count">How many cars.</param>
public sealed record RobustMean(double Mean, double? Spread, int Count)
{
    private const int FewestForSpread = 3;
    private const int MostRounds = 200;

    /// <summary>Standard uncertainty of the mean, 1.25 s / √n (ISO 13528:2015, 7.7.3); null when there is no spread.</summary>
    public double? MeanSigma => Spread is { } s ? 1.25 * s / Math.Sqrt(Count) : null;

    /// <summary>The robust mean of values; null when there are none.</summary>
    public static RobustMean? Of(IReadOnlyList<double> values)
    {
        if (values.Count == 0)
        {
            return null;
        }

        if (values.Count < FewestForSpread)
        {
            return new RobustMean(values.Average(), null, values.Count);
        }

        // x* - robust mean; s* - robust standard deviation; start: median and 1.483 times the median distance from it.
        var mean = Median(values);
        var spread = 1.483 * Median([.. values.Select(v => Math.Abs(v - mean))]);
        if (spread <= 0)
        {
            // More than half of the values are alike to the last digit; the plain standard deviation is the start then (own choice).
            var plain = values.Average();
            spread = Math.Sqrt(values.Sum(v => (v - plain) * (v - plain)) / (values.Count - 1));
        }

        for (var round = 0; round < MostRounds && spread > 0; round++)
        {
            var (low, high) = (mean - (1.5 * spread), mean + (1.5 * spread));
            var drawnIn = values.Select(v => Math.Clamp(v, low, high)).ToList();
            var nextMean = drawnIn.Average();
            var nextSpread = 1.134 * Math.Sqrt(drawnIn.Sum(v => (v - nextMean) * (v - nextMean)) / (values.Count - 1));
            var isAtRest = Math.Abs(nextMean - mean) + Math.Abs(nextSpread - spread) <= 1e-9 * spread; // far below what any tape shows
            (mean, spread) = (nextMean, nextSpread);
            if (isAtRest)
            {
                break;
            }
        }

        return new RobustMean(mean, spread, values.Count);
    }

    /// <summary>The robust mean of the cars behind a figure, each car once by its latest value; values of another sort than the figure are left out.</summary>
    public static RobustMean? Of(BookDimension dimension)
    {
        var quantity = (dimension.Value ?? dimension.Evidence.Select(e => e.Value).FirstOrDefault())?.Quantity;
        return Of([
            .. dimension
                .Evidence.GroupBy(e => e.Car.Trim(), StringComparer.OrdinalIgnoreCase)
                .Select(g => g.Last().Value)
                .Where(v => v.Quantity == quantity)
                .Select(v => v.Si),
        ]);
    }

    private static double Median(IReadOnlyList<double> values)
    {
        var ordered = values.Order().ToList();
        var middle = ordered.Count / 2;
        return ordered.Count % 2 == 1 ? ordered[middle] : (ordered[middle - 1] + ordered[middle]) / 2;
    }
}
