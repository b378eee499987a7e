namespace Plumbmark.Engine.Linkage;

/// <summary>How a wishbone is made, which decides how it sits on pivots that are not where the drawing puts them.</summary>
public enum ArmMake
{
    /// <summary>
    /// Two halves, each with one eye, that meet at the outer joint: each half keeps its own length. Also right for two plain links.
    /// This is the default.
    /// </summary>
    TwoHalves,

    /// <summary>
    /// One rigid piece: it keeps its reach from the line through the eyes, and the rubbers centre it between the two pivots, so a pivot that has moved along the
    /// line carries the arm half as far.
    /// </summary>
    OnePiece,
}
