using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Car;

/// <summary>How far a thing may be out before its owner calls it out. A limit that is null is unknown and gives no verdict.</summary>
/// <param name="Mirror">Side against side in plan: side shift, stagger, width.</param>
/// <param name="Height">Height difference of a pair.</param>
/// <param name="Point">A point against the book, each direction.</param>
/// <param name="Source">Whose limits these are.</param>
/// <param name="Note">Where they are from: a page, a club, a habit; null when not told.</param>
public sealed record Limits(
    Length? Mirror = null,
    Length? Height = null,
    Length? Point = null,
    LimitSource Source = LimitSource.Own,
    string? Note = null
);
