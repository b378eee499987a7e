namespace Plumbmark.Inspection.Road;

/// <summary>How an adjuster works.</summary>
public enum AdjusterKind
{
    /// <summary>Shims behind a bracket: their thickness moves the pivots one way.</summary>
    Shims,

    /// <summary>An eccentric bolt or bush: it moves the pivots either way, up to its throw.</summary>
    Eccentric,

    /// <summary>The track rod's screw: it changes the rod's length.</summary>
    TrackRod,
}
