namespace Plumbmark.Engine.Adjustment;

/// <summary>What the fit says about one reading. Residual = adjusted − observed.</summary>
/// <remarks>
/// An indirect drop is two equations; its residual is the length of the two-dimensional misclosure, its redundancy number the sum of both.
/// </remarks>
/// <param name="Id">The reading's name.</param>
/// <param name="ObservedMetres">What was read.</param>
/// <param name="AdjustedMetres">What the fitted points give for the same reading.</param>
/// <param name="ResidualMetres">Adjusted − observed.</param>
/// <param name="SigmaMetres">The stated standard uncertainty of the reading.</param>
/// <param name="RedundancyNumber">
/// The share of an error in this reading that shows in its own residual, 0 (unchecked) to 1; they add up to the redundancy.
/// </param>
/// <param name="Standardised">Residual over its own a-priori standard deviation, w = v / (σ √r); null when the reading is unchecked.</param>
/// <param name="MinimalDetectableMetres">
/// Baarda's minimal detectable bias δ₀ σ / √r with α = 0.001 and β = 0.20; null when the reading is unchecked: no error in it would show.
/// </param>
public sealed record ReadingEstimate(
    string Id,
    double ObservedMetres,
    double AdjustedMetres,
    double ResidualMetres,
    double SigmaMetres,
    double RedundancyNumber,
    double? Standardised,
    double? MinimalDetectableMetres
);
