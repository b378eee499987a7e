namespace Plumbmark.Engine.Adjustment;

/// <summary>What a <see cref="NetworkFit"/> is put together from.</summary>
internal sealed record FitParts(
    IReadOnlyList<PointEstimate> Points,
    IReadOnlyList<ReadingEstimate> Readings,
    IReadOnlyList<ToolEstimate> Tools,
    NetworkCovariance Covariance,
    DatumReport Datum,
    int Redundancy
);
