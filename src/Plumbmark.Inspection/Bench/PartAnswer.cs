using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>What the measures of a part say about it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Verdict">Whether it is straight and unworn as far as measured; not whether it is the right type.</param>
/// <param name="Disposition">What to do with it.</param>
/// <param name="Reasons">Why, most important first; each one sentence.</param>
/// <param name="Dimensions">Every measured dimension with what it was held against.</param>
/// <param name="Variant">Which variant it is; null when the book has none of its kind.</param>
/// <param name="IsRightForThisCar">Whether its type was fitted to this car; null when that cannot be told.</param>
/// <param name="MeasureNext">What to measure to settle what is open, most telling first.</param>
/// <param name="Wanting">What measures lack to be of use.</param>
/// <param name="Reminders">Crack tests and cautions that belong to this part.</param>
public sealed record PartAnswer(
    Part Part,
    Verdict Verdict,
    Disposition Disposition,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<DimensionAnswer> Dimensions,
    VariantAnswer? Variant,
    bool? IsRightForThisCar,
    IReadOnlyList<string> MeasureNext,
    IReadOnlyList<string> Wanting,
    IReadOnlyList<string> Reminders
);
