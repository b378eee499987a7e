using Plumbmark.Engine.Lengths;

namespace Plumbmark.Inspection.Road;

/// <summary>Something that can be adjusted on one side, and how far. All amounts are counted from the state that the drawing (and the measured frame) stands for.</summary>
/// <param name="Id">Its own name.</param>
/// <param name="Kind">Shims, an eccentric or a track rod.</param>
/// <param name="Side">On which side.</param>
/// <param name="At">The pivots it moves, for shims and eccentrics.</param>
/// <param name="Direction">Which way more of it moves them.</param>
/// <param name="Least">The least it can be: no shims, the eccentric at one end (negative), the rod screwed in (negative).</param>
/// <param name="Most">The most it can be.</param>
/// <param name="Step">The thinnest shim there is; null for one that can be set anywhere.</param>
/// <param name="Fitted">What is fitted now; null is zero, the drawn state.</param>
/// <param name="Usual">Beyond this either way it is not usual: a fault absorbed; null when not told.</param>
/// <param name="Note">Anything noted; null when nothing.</param>
public sealed record Adjuster(
    string Id,
    AdjusterKind Kind,
    Side Side,
    IReadOnlyList<CornerPart> At,
    AdjusterDirection Direction,
    Length Least,
    Length Most,
    Length? Step = null,
    Length? Fitted = null,
    Length? Usual = null,
    string? Note = null
);
