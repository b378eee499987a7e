namespace Plumbmark.Engine.Lengths;

/// <summary>Whether a minus has a meaning where a length is read: an offset has a side, a tape reading has none.</summary>
public enum LengthSign
{
    /// <summary>A minus (and a plus) is refused.</summary>
    NeverNegative,

    /// <summary>A leading minus or plus is understood.</summary>
    MayBeNegative,
}
