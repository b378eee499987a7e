using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>One reading along a line.</summary>
/// <param name="At">Place along the part, from one end.</param>
/// <param name="Gap">Gap or height there.</param>
public sealed record ProfileGap(Length At, Length Gap);
