namespace Plumbmark.Drawing.Pictures;

/// <summary>How a line or an area looks. On screen it is a class that the style sheet colours; printed, the same values are written out.</summary>
/// <param name="Name">Its name, also the end of its class.</param>
/// <param name="Stroke">Colour of the line as #rrggbb; null for no line.</param>
/// <param name="Width">Width of the line in picture units.</param>
/// <param name="Fill">Colour of the area as #rrggbb; null for none.</param>
/// <param name="Dashes">Lengths of dash and gap in turn, in picture units; null for an unbroken line.</param>
public sealed record Ink(string Name, string? Stroke, double Width, string? Fill = null, IReadOnlyList<double>? Dashes = null);
