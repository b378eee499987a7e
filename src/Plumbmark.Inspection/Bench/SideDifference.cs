using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>How much larger a dimension is on this part than on its partner, seen directly with both laid together.</summary>
/// <param name="Dimension">The dimension.</param>
/// <param name="Value">Positive where this part is the larger.</param>
public sealed record SideDifference(string Dimension, Length Value);
