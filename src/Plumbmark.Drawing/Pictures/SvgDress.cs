namespace Plumbmark.Drawing.Pictures;

/// <summary>How an SVG gets its looks.</summary>
public enum SvgDress
{
    /// <summary>By classes, from <see cref="Palette.StyleSheet"/>: for a page.</summary>
    Classes,

    /// <summary>By attributes of its own: for a file that stands alone.</summary>
    Attributes,
}
