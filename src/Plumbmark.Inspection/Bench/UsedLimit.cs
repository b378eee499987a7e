using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>The limit that a dimension was held against, and whose it is.</summary>
/// <param name="Si">Either way, in the dimension's unit, above zero.</param>
/// <param name="Source">Factory, practice or own.</param>
/// <param name="Note">Where it is from; null when not told.</param>
public sealed record UsedLimit(double Si, LimitSource Source, string? Note);
