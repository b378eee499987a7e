using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>Between which stresses a metal is expected to yield, and where the numbers come from.</summary>
/// <param name="Material">The metal.</param>
/// <param name="Name">Its trade name.</param>
/// <param name="Yield">The range; null where the press plans nothing, or the metal is unknown.</param>
/// <param name="Source">Source of both ends of the range.</param>
public sealed record MaterialEntry(Material Material, string Name, YieldRange? Yield, string Source);
