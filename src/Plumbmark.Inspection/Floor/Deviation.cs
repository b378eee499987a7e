namespace Plumbmark.Inspection.Floor;

/// <summary>How far a point lies from where it should be, and what says where that is.</summary>
/// <param name="DxMetres">Forward of it; null when unknown.</param>
/// <param name="DyMetres">To the left of it; null when unknown.</param>
/// <param name="DzMetres">Above it; null when unknown.</param>
/// <param name="Against">What it is compared with.</param>
public sealed record Deviation(double? DxMetres, double? DyMetres, double? DzMetres, DeviationFrom Against);
