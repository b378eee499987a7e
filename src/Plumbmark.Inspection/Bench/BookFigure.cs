using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>What the book says of one dimension of one variant.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="Nominal">What it should be.</param>
/// <param name="Tolerance">How far it may be off, either way; null when the book does not say.</param>
/// <param name="Source">Whose figure it is.</param>
/// <param name="Note">Edition and page, or who measured it; null when not told.</param>
public sealed record BookFigure(
    string Dimension,
    Amount Nominal,
    Amount? Tolerance = null,
    LimitSource Source = LimitSource.Factory,
    string? Note = null
);
