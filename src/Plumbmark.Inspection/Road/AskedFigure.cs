using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Road;

/// <summary>What the book, the trade or the owner asks of one angle or length. A side that is null is not limited; without any limit there is no verdict.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Value">The figure itself; null when only limits are known.</param>
/// <param name="Limit">How far either way from the value; null when not told.</param>
/// <param name="Least">The least that is allowed; null when not told.</param>
/// <param name="Most">The most that is allowed; null when not told.</param>
/// <param name="Source">Whose figure it is.</param>
/// <param name="Note">Where it is from: a page, a habit; null when not told.</param>
public sealed record AskedFigure(
    FigureKind Kind,
    FigureAmount? Value,
    FigureAmount? Limit,
    FigureAmount? Least,
    FigureAmount? Most,
    LimitSource Source,
    string? Note
)
{
    /// <summary>The least allowed, radians or metres; null when not limited below. A limit without a value is about zero: a split, a thrust line.</summary>
    public double? LeastSi => Least?.Si ?? (Limit is { } limit ? (Value?.Si ?? 0) - limit.Si : null);

    /// <summary>The most allowed, radians or metres; null when not limited above.</summary>
    public double? MostSi => Most?.Si ?? (Limit is { } limit ? (Value?.Si ?? 0) + limit.Si : null);

    /// <summary>What to aim at, radians or metres: the value, else the middle of the limits; null when neither is known.</summary>
    public double? AimSi => Value?.Si ?? (LeastSi is { } least && MostSi is { } most ? 0.5 * (least + most) : null);
}
