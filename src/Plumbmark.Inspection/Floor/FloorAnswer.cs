namespace Plumbmark.Inspection.Floor;

/// <summary>Everything the readings of a frame say so far: the one answer that the page, the sheet and <c>plumbmark check</c> show.</summary>
/// <remarks>Metres and radians; every u is a standard uncertainty (k = 1). A list is empty when there is nothing to say, never when something failed.</remarks>
/// <param name="Overall">The verdict on the frame as a whole, with its reasons.</param>
/// <param name="Points">Where each point is, as far as the readings tell.</param>
/// <param name="Adjustment">How well the readings agree with each other.</param>
/// <param name="Readings">What each reading contributes and how it fits.</param>
/// <param name="Suspects">Readings or points that the fit does not believe, most likely first.</param>
/// <param name="Pairs">Left against right, in the order of the points.</param>
/// <param name="Comparisons">Lengths measured on both sides, compared directly.</param>
/// <param name="Damage">The form of damage that explains the frame best, and those nearly as good.</param>
/// <param name="Checks">Each value with its limit, probability and verdict.</param>
/// <param name="BlindSpots">Damage that the readings so far could not have shown.</param>
/// <param name="Next">The readings worth taking next, best first.</param>
public sealed record FloorAnswer(
    OverallAnswer Overall,
    IReadOnlyList<PointEstimate> Points,
    AdjustmentSummary Adjustment,
    IReadOnlyList<ReadingFit> Readings,
    IReadOnlyList<Suspect> Suspects,
    IReadOnlyList<PairEstimate> Pairs,
    IReadOnlyList<SideComparison> Comparisons,
    IReadOnlyList<DamageEstimate> Damage,
    IReadOnlyList<Check> Checks,
    IReadOnlyList<BlindSpot> BlindSpots,
    IReadOnlyList<NextReading> Next
)
{
    /// <summary>Explanations of what was measured that are no damage: the frame not level, a tape's scale, a centre line through a bent horn.</summary>
    public IReadOnlyList<LookAlike> LookAlikes { get; init; } = [];

    /// <summary>For each form of damage and each point that must be true the smallest amount that would show, blind or not.</summary>
    public IReadOnlyList<BlindSpot> Sight { get; init; } = [];

    /// <summary>Readings that the numbers leave out until they are measured again: those doubted. All others take part.</summary>
    public IReadOnlyList<string> LeftOut { get; init; } = [];
}
