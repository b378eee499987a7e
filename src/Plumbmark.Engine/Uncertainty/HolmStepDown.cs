namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// Allows for how many checks there were: of twenty good points one will look out at 5 %. Holds whatever the checks have in common.
/// </summary>
/// <remarks>
/// S. Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6 (1979), 65-70: with
/// p₍₁₎ ≤ … ≤ p₍ₘ₎, the adjusted value is p̃₍ᵢ₎ = max over j ≤ i of min(1, (m − j + 1) p₍ⱼ₎). The probability of even one false alarm
/// is at most α when all adjusted values up to α are acted upon.
/// </remarks>
public static class HolmStepDown
{
    /// <summary>The adjusted probabilities, in the order given; an empty list gives an empty one.</summary>
    /// <param name="probabilities">For each check, how often a good part would look at least this bad.</param>
    public static double[] Adjusted(IReadOnlyList<double> probabilities)
    {
        ArgumentNullException.ThrowIfNull(probabilities);
        foreach (var p in probabilities)
        {
            Demand.Probability(p, nameof(probabilities));
        }

        var adjusted = new double[probabilities.Count];
        var (rank, largest) = (0, 0.0);
        foreach (var index in Enumerable.Range(0, adjusted.Length).OrderBy(i => probabilities[i]))
        {
            largest = Math.Max(largest, Math.Min(1, (adjusted.Length - rank) * probabilities[index]));
            adjusted[index] = largest;
            rank++;
        }

        return adjusted;
    }
}
