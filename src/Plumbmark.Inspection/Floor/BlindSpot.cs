namespace Plumbmark.Inspection.Floor;

/// <summary>Damage that the readings so far could not have shown, although it would be beyond the limit.</summary>
/// <param name="Form">The form of damage, or <c>point</c>.</param>
/// <param name="Point">The point concerned; null for the whole frame.</param>
/// <param name="SmallestSeenMetres">The smallest amount that would show; null when no amount would.</param>
/// <param name="LimitMetres">The limit.</param>
/// <param name="Sentence">What could hide and which readings would show it.</param>
public sealed record BlindSpot(string Form, string? Point, double? SmallestSeenMetres, double LimitMetres, string Sentence)
{
    /// <summary>For a point <c>plan</c> or <c>height</c>; null for a form.</summary>
    public string? Direction { get; init; }
}
