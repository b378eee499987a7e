namespace Plumbmark.Inspection.Floor;

/// <summary>What can be said about a check or about the whole frame. "Can't tell yet" is an answer of equal rank, and the meaning of <c>default</c>.</summary>
/// <remarks>Rule after ISO 14253-1 and JCGM 106: true when P(within) is at least 0.95, out when it is at most 0.05.</remarks>
public enum Verdict
{
    /// <summary>The readings so far do not settle it.</summary>
    CannotTellYet,

    /// <summary>Within its limit, with a probability of at least 0.95.</summary>
    True,

    /// <summary>Outside its limit, with a probability of at least 0.95.</summary>
    Out,
}
