namespace Plumbmark.Inspection.Bench;

/// <summary>A measured dimension with everything it was held against.</summary>
/// <param name="Value">The dimension.</param>
/// <param name="Comparisons">Against the book, the other side, itself; empty when there is nothing to hold it against.</param>
public sealed record DimensionAnswer(DimensionValue Value, IReadOnlyList<Comparison> Comparisons);
