namespace Plumbmark.Inspection.Bench;

/// <summary>How a crack was looked for.</summary>
public enum CrackMethod
{
    /// <summary>Dye penetrant.</summary>
    Dye,

    /// <summary>Magnetic particles.</summary>
    Magnetic,

    /// <summary>By eye and glass alone: not a crack test, but an inspection.</summary>
    Eye,
}
