using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>A height on the clamped face.</summary>
/// <param name="X">Where, along the surface.</param>
/// <param name="Y">Where, across the surface.</param>
/// <param name="Height">Height above the surface; a feeler's thickness where the face stands off.</param>
public sealed record FaceHeight(Length X, Length Y, Length Height);
