using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>A height of a place that matters: it becomes a dimension, measured square to the clamped face.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="X">Where, along the surface.</param>
/// <param name="Y">Where, across the surface.</param>
/// <param name="Height">Height above the surface.</param>
public sealed record PlaceHeight(string Dimension, Length X, Length Y, Length Height);
