using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Press;

/// <summary>The heights of both edges above a table at one place, to see whether the part is twisted.</summary>
/// <param name="At">Place along the part, from the same end as the profile.</param>
/// <param name="Left">Height of the left edge, looking from that end.</param>
/// <param name="Right">Height of the right edge.</param>
/// <param name="Width">Distance between the two.</param>
public sealed record WindingReading(Length At, Length Left, Length Right, Length Width);
