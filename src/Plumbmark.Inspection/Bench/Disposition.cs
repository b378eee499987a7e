namespace Plumbmark.Inspection.Bench;

/// <summary>What to do with a part. Advice from measurements only: cracks, rust and welds must be looked at.</summary>
public enum Disposition
{
    /// <summary>What was measured does not settle it: measure what is named.</summary>
    MeasureAgain,

    /// <summary>Nothing measured speaks against it.</summary>
    Keep,

    /// <summary>Bent, and of a sort that may be straightened cold.</summary>
    Straighten,

    /// <summary>Not to be used on this car.</summary>
    Replace,
}
