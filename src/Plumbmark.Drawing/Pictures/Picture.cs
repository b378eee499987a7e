namespace Plumbmark.Drawing.Pictures;

/// <summary>A drawing ready to be written as SVG or put on a page. It knows nothing of cars.</summary>
/// <param name="Width">Width in picture units; on a phone 360 px wide one unit is about one pixel, on paper it is scaled to the space given.</param>
/// <param name="Height">Height in picture units.</param>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="Description">The same as sentences, for someone who cannot see it.</param>
/// <param name="Shapes">From the back to the front.</param>
public sealed record Picture(double Width, double Height, string Title, string Description, IReadOnlyList<Shape> Shapes);
