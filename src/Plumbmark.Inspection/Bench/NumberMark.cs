namespace Plumbmark.Inspection.Bench;

/// <summary>How a number got onto a part.</summary>
public enum NumberMark
{
    /// <summary>Not told.</summary>
    Unknown,

    /// <summary>Raised, from the mould or die.</summary>
    Cast,

    /// <summary>Struck into the metal.</summary>
    Stamped,

    /// <summary>On a label, a tag or in paint.</summary>
    Label,
}
