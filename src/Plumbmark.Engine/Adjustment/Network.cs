namespace Plumbmark.Engine.Adjustment;

/// <summary>Points, the readings between them, and the tools they were read with: all that <see cref="NetworkAdjustment"/> needs.</summary>
/// <remarks>Nothing is checked here; faults are collected by <see cref="NetworkAdjustment.Solve"/> and come back as an outcome.</remarks>
public sealed class Network(
    IEnumerable<NetworkPoint> points,
    IEnumerable<Observation> observations,
    IEnumerable<NetworkTool>? tools = null,
    IEnumerable<MirrorPair>? mirrorPairs = null
)
{
    /// <summary>The points, in the order in which results are listed.</summary>
    public IReadOnlyList<NetworkPoint> Points { get; } = [.. points];

    /// <summary>The readings, in the order in which results are listed.</summary>
    public IReadOnlyList<Observation> Observations { get; } = [.. observations];

    /// <summary>The tools whose zero or scale is shared by their readings.</summary>
    public IReadOnlyList<NetworkTool> Tools { get; } = [.. tools ?? []];

    /// <summary>Which points are left and right of the centre line: hints for start values without a sketch.</summary>
    public IReadOnlyList<MirrorPair> MirrorPairs { get; } = [.. mirrorPairs ?? []];

    /// <summary>The same network with one reading more.</summary>
    public Network With(Observation observation) => new(Points, [.. Observations, observation], Tools, MirrorPairs);

    /// <summary>The same network with one reading left out.</summary>
    public Network Without(string readingId) => new(Points, Observations.Where(o => o.Id != readingId), Tools, MirrorPairs);
}
