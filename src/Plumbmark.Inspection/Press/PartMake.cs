namespace Plumbmark.Inspection.Press;

/// <summary>How the part was made.</summary>
public enum PartMake
{
    /// <summary>Pressed from sheet.</summary>
    Pressed,

    /// <summary>Built up of sheet or tube by its maker.</summary>
    Fabricated,

    /// <summary>Cut from bar.</summary>
    Bar,

    /// <summary>Drawn or rolled tube.</summary>
    Tube,

    /// <summary>Forged: a thick flash line, numbers standing proud.</summary>
    Forged,

    /// <summary>Cast: a fine parting line, a grainy skin.</summary>
    Cast,
}
