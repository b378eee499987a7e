using Plumbmark.Engine.Linkage;

namespace Plumbmark.Inspection.Road;

/// <summary>The rear wheels at ride height for a drawing.</summary>
/// <param name="DrawnLeft">Left wheel as drawn.</param>
/// <param name="DrawnRight">Right wheel as drawn.</param>
/// <param name="FoundLeft">Left wheel as found.</param>
/// <param name="FoundRight">Right wheel as found.</param>
public sealed record RearSketch(WheelStance DrawnLeft, WheelStance DrawnRight, WheelStance FoundLeft, WheelStance FoundRight);
