namespace Plumbmark.Inspection.Bench;

/// <summary>How a part was made, which decides how it takes bending.</summary>
public enum PartMake
{
    /// <summary>Pressed from sheet: low-carbon steel that bends and stays.</summary>
    Pressed,

    /// <summary>Welded up from tube or plate.</summary>
    Fabricated,

    /// <summary>Forged: strong, springs back far, and may hide cracks.</summary>
    Forged,

    /// <summary>Cast iron, malleable iron or aluminium. Never straightened.</summary>
    Cast,

    /// <summary>Turned or milled from bar.</summary>
    Machined,
}
