namespace Plumbmark.Inspection.Bench;

/// <summary>What goes into a bore.</summary>
public enum BoreMate
{
    /// <summary>A pin that turns in it: what counts is the clearance at the most worn place.</summary>
    Pin,

    /// <summary>A bush that is pressed into it: what counts is the grip at the widest place.</summary>
    Bush,
}
