namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Which readings to try leaving out: those whose standardised residuals stand out.</summary>
internal static class Leads
{
    // A blunder need not have the largest w, but it is never far behind.
    private const double NearTheLargest = 0.45;
    private const double WorthALook = 2;

    /// <summary>Readings by |w|, largest first.</summary>
    public static List<Observation> Of(NetworkFit fit, int most)
    {
        var largest = Largest(fit);
        var all = fit
            .State.Network.Source.Observations.Zip(fit.Readings)
            .Where(p => p.First is not (Observation.DropShift or Observation.DropDistance) && p.Second.Standardised is not null)
            .Select(p => (Reading: p.First, W: Math.Abs(p.Second.Standardised!.Value)))
            .Where(p => p.W >= WorthALook && p.W >= NearTheLargest * largest)
            .OrderByDescending(p => p.W)
            .ToList();

        // Tied readings have the same w: all of a tie or none.
        var count = Math.Min(most, all.Count);
        while (count < all.Count && count < 4 * most && all[count].W > 0.98 * all[count - 1].W)
        {
            count++;
        }

        return [.. all.Take(count).Select(p => p.Reading)];
    }

    /// <summary>The largest |w| of all readings but repeated drops.</summary>
    public static double Largest(NetworkFit fit) =>
        fit
            .State.Network.Source.Observations.Zip(fit.Readings)
            .Where(p => p.First is not (Observation.DropShift or Observation.DropDistance))
            .Select(p => Math.Abs(p.Second.Standardised ?? 0))
            .DefaultIfEmpty()
            .Max();
}
