namespace Plumbmark.Inspection.Bench;

/// <summary>How likely a part is to be one variant.</summary>
/// <param name="Variant">The variant.</param>
/// <param name="Straight">Probability that it is this variant and straight.</param>
/// <param name="Bent">Probability that it is this variant and bent.</param>
/// <param name="IsFittedToThisCar">Whether the car's serial number lies in its range; null when that cannot be told.</param>
public sealed record VariantOdds(PartVariant Variant, double Straight, double Bent, bool? IsFittedToThisCar);
