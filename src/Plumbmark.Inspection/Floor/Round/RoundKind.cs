namespace Plumbmark.Inspection.Floor.Round;

/// <summary>How a line of a round is measured; in the order in which a round goes.</summary>
public enum RoundKind
{
    /// <summary>Height above the reference.</summary>
    Height,

    /// <summary>Height difference of two points.</summary>
    Rise,

    /// <summary>One more plumb drop.</summary>
    Drop,

    /// <summary>Tape between two floor marks.</summary>
    Plan,

    /// <summary>From point to point in space.</summary>
    Direct,
}
