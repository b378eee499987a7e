namespace Plumbmark.Inspection.Bench;

/// <summary>Two variants that the measures so far cannot separate, and what would.</summary>
/// <param name="First">One variant.</param>
/// <param name="Second">The other.</param>
/// <param name="Separation">Distance of the two in standard uncertainties over all that was measured.</param>
/// <param name="MeasureNext">The dimension that would separate them; null when the book has none that differs enough.</param>
/// <param name="DifferenceMetresOrRadians">By how much that dimension differs; null when there is none.</param>
/// <param name="Sentence">The same for a person.</param>
public sealed record LookAlikes(
    PartVariant First,
    PartVariant Second,
    double Separation,
    string? MeasureNext,
    double? DifferenceMetresOrRadians,
    string Sentence
);
