namespace Plumbmark.Inspection.Bench;

/// <summary>Which crack test was made. A test that found one is told by <see cref="PartCondition.Cracked"/>; a clear test means not found, not none.</summary>
public enum CrackTest
{
    /// <summary>None so far.</summary>
    NotDone,

    /// <summary>Dye penetrant, nothing found.</summary>
    DyeClear,

    /// <summary>Magnetic particles, nothing found.</summary>
    MagneticClear,
}
