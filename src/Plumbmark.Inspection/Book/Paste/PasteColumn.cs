namespace Plumbmark.Inspection.Book.Paste;

/// <summary>What a column of a pasted block holds.</summary>
public enum PasteColumn
{
    /// <summary>The figure's name or letter.</summary>
    Id,

    /// <summary>What it is about: plan, direct, along, height, part.</summary>
    Kind,

    /// <summary>The first point, or the only one.</summary>
    From,

    /// <summary>The second point.</summary>
    To,

    /// <summary>The printed figure.</summary>
    Value,

    /// <summary>The printed figure in the second column.</summary>
    Also,

    /// <summary>The printed tolerance.</summary>
    Tolerance,

    /// <summary>Whether it holds for both sides.</summary>
    Sides,

    /// <summary>The part it belongs to.</summary>
    Part,

    /// <summary>The variant of the part.</summary>
    Variant,

    /// <summary>The dimension of the part.</summary>
    Dimension,

    /// <summary>The first serial number it is for.</summary>
    SerialFrom,

    /// <summary>The last serial number it is for.</summary>
    SerialTo,

    /// <summary>The page, where it differs.</summary>
    Page,

    /// <summary>The figure or letter in the drawing.</summary>
    Figure,

    /// <summary>Anything else.</summary>
    Note,
}
