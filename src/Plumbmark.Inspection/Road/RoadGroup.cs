using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>One part or place on one side, with the parameters that describe it.</summary>
/// <param name="What">The part or place; null for a rear pick-up.</param>
/// <param name="RearPlace">For the rear: 0 or 1; null for the front.</param>
/// <param name="Side">The side.</param>
/// <param name="Parameters">Its indices among <see cref="RoadParameters"/>.</param>
internal sealed record RoadGroup(CornerPart? What, int? RearPlace, Side Side, int[] Parameters)
{
    /// <summary>Every part and place of the car.</summary>
    public static IReadOnlyList<RoadGroup> All { get; } = [.. Build()];

    private static IEnumerable<RoadGroup> Build()
    {
        var parameters = Enum.GetValues<CornerParameter>();
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            foreach (var part in parameters.GroupBy(RoadParameters.PartOf))
            {
                yield return new(part.Key, null, side, [.. part.Select(p => RoadParameters.Of(side, p))]);
            }

            foreach (var place in new[] { 0, 1 })
            {
                yield return new(null, place, side, [.. Enumerable.Range(0, 3).Select(axis => RoadParameters.OfRear(side, place, axis))]);
            }
        }
    }
}
