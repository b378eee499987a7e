namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>What a frame shop is asked to do with one point. A wish, not a finding: see <see cref="Check"/> for that.</summary>
/// <param name="Point">The point to move.</param>
/// <param name="Parts">Which way and how far; the largest first.</param>
/// <param name="Against">What says where it belongs.</param>
/// <param name="IsOneOfAPair">Whether only the difference to its partner is known, so that either of the two may be the bent one.</param>
/// <param name="Guides">What to measure while moving it; the best first.</param>
public sealed record WorkshopMove(
    string Point,
    IReadOnlyList<MovePart> Parts,
    DeviationFrom Against,
    bool IsOneOfAPair,
    IReadOnlyList<Guide> Guides
);
