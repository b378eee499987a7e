using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>A reading that could be taken next.</summary>
/// <param name="Kind">plan, direct, height, drop or repeat.</param>
/// <param name="From">Where it starts; null for a height or a drop.</param>
/// <param name="To">Where it ends; null for a height or a drop.</param>
/// <param name="Point">The point of a height or a drop; null otherwise.</param>
/// <param name="Observation">What it would tell.</param>
internal sealed record Candidate(string Kind, string? From, string? To, string? Point, Observation Observation)
{
    /// <summary>The points it touches.</summary>
    public IEnumerable<string> Points => Point is not null ? [Point] : [From!, To!];

    /// <summary>The points whose marks on the floor it uses.</summary>
    public IEnumerable<string> Marks => Kind is "height" or "direct" ? [] : Points;
}
