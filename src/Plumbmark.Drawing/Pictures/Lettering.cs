namespace Plumbmark.Drawing.Pictures;

/// <summary>How words in a picture look.</summary>
/// <param name="Name">Its name, also the end of its class.</param>
/// <param name="Size">Height of the type in picture units.</param>
/// <param name="Fill">Colour as #rrggbb.</param>
/// <param name="IsBold">Whether the type is bold.</param>
public sealed record Lettering(string Name, double Size, string Fill, bool IsBold = false);
