using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Adjustment;

/// <summary>The levels at which readings are doubted and small biases are called detectable.</summary>
/// <remarks>
/// A bias ∇ in a reading with redundancy number r shifts the expectation of w = v / (σ √r) by ∇ √r / σ; it is found with power 1 − β when
/// that is δ₀, so the minimal detectable bias is δ₀ σ / √r (<see cref="BaardaReliability"/>).
/// </remarks>
public static class Detection
{
    /// <summary>Chance of doubting a good reading, α.</summary>
    public const double Significance = 0.001;

    /// <summary>Chance of missing a bias of the minimal detectable size, β.</summary>
    public const double Miss = 0.20;

    /// <summary>Critical value of |w|: 3.2905.</summary>
    public static double CriticalValue { get; } = BaardaReliability.CriticalValue(Significance);

    /// <summary>δ₀: 4.1321.</summary>
    public static double Delta0 { get; } = BaardaReliability.Delta0(Significance, Miss);
}
