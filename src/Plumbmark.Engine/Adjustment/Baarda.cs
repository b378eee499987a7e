namespace Plumbmark.Engine.Adjustment;

/// <summary>How large an error in one reading must be before its own residual gives it away.</summary>
/// <remarks>
/// A bias ∇ in a reading with redundancy number r shifts the expectation of w = v / (σ √r) by ∇ √r / σ. The test |w| &gt; z(1 − α/2) then
/// finds it with power 1 − β when the shift is δ₀ = z(1 − α/2) + z(1 − β) (the far tail is left out). Source: Baarda, A testing procedure
/// for use in geodetic networks, 1968 (from memory).
/// </remarks>
public static class Baarda
{
    /// <summary>Chance of doubting a good reading, α.</summary>
    public const double Significance = 0.001;

    /// <summary>Chance of missing a bias of the minimal detectable size, β.</summary>
    public const double Miss = 0.20;

    /// <summary>Critical value of |w| at <see cref="Significance"/>: 3.2905.</summary>
    public static double CriticalValue { get; } = Critical(Significance);

    /// <summary>δ₀ for <see cref="Significance"/> and <see cref="Miss"/>: 4.1321.</summary>
    public static double Delta0 { get; } = NonCentrality(Significance, Miss);

    /// <summary>Critical value of |w| for a two-sided test at a significance α.</summary>
    public static double Critical(double significance) => Quantiles.NormalUpperQuantile(significance / 2);

    /// <summary>δ₀ for a significance α and a chance β of missing the bias.</summary>
    public static double NonCentrality(double significance, double miss) =>
        Quantiles.NormalUpperQuantile(significance / 2) + Quantiles.NormalUpperQuantile(miss);
}
