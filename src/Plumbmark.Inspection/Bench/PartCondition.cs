namespace Plumbmark.Inspection.Bench;

/// <summary>What was seen on a part that no measurement shows. Any of these rules out straightening.</summary>
public enum PartCondition
{
    /// <summary>A crack was seen, or a crack test found one.</summary>
    Cracked,

    /// <summary>A kink, a crease or a buckled flange.</summary>
    Kinked,

    /// <summary>Pitted or thinned by rust; not surface rust.</summary>
    Corroded,

    /// <summary>Straightened in a press before.</summary>
    PressedBefore,

    /// <summary>Welded where the maker did not weld.</summary>
    Welded,

    /// <summary>Heated to bend it.</summary>
    Heated,

    /// <summary>A thread or a seat is damaged.</summary>
    ThreadDamaged,
}
