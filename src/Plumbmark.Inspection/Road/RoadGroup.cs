namespace Plumbmark.Inspection.Road;

/// <summary>One part or place on one side, with the parameters that describe it.</summary>
/// <param name="What">The part or place.</param>
/// <param name="Side">The side.</param>
/// <param name="Parameters">Its indices among <see cref="RoadParameters"/>.</param>
internal sealed record RoadGroup(CornerPart What, Side Side, IReadOnlyList<int> Parameters)
{
    /// <summary>Every part and place of the car.</summary>
    public static IReadOnlyList<RoadGroup> All { get; } =
    [
        .. from side in Enum.GetValues<Side>()
        from part in Enum.GetValues<CornerPart>()
        select new RoadGroup(part, side, [.. Enumerable.Range(RoadParameters.Of(side, part), RoadParameters.SizeOf(part))]),
    ];
}
