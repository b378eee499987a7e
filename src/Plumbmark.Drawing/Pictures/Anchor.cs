namespace Plumbmark.Drawing.Pictures;

/// <summary>Which part of a line of words stands at its spot.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
