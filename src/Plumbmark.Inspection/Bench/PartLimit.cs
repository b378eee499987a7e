using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>How far a dimension may be from the book or from the other side, or, for one that should be nothing (a bow, a twist), how large.</summary>
/// <param name="Dimension">Which dimension.</param>
/// <param name="Within">The limit either way, above zero.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Note">Where it is from; null when not told.</param>
public sealed record PartLimit(string Dimension, Amount Within, LimitSource Source = LimitSource.Own, string? Note = null);
