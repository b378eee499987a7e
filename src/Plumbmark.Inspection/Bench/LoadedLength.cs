using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Bench;

/// <summary>A spring's length under a load.</summary>
/// <param name="Load">The load.</param>
/// <param name="Length">The length.</param>
public sealed record LoadedLength(Load Load, Length Length);
