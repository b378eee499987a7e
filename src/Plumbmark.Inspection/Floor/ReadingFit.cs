namespace Plumbmark.Inspection.Floor;

/// <summary>How one reading fits the rest.</summary>
/// <param name="Id">The reading.</param>
/// <param name="ResidualMetres">Adjusted minus observed.</param>
/// <param name="Standardised">The residual over its own standard uncertainty; null when no other reading controls this one.</param>
/// <param name="RedundancyNumber">How much of an error in this reading would show in its own residual, 0 to 1.</param>
/// <param name="MinimalDetectableMetres">The smallest error that would be noticed (alpha 0.001, beta 0.20); null when none would.</param>
/// <param name="SigmaMetres">Standard uncertainty that was used for it.</param>
public sealed record ReadingFit(
    string Id,
    double ResidualMetres,
    double? Standardised,
    double RedundancyNumber,
    double? MinimalDetectableMetres,
    double SigmaMetres
);
