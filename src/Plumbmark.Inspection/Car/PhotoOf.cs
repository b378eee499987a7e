namespace Plumbmark.Inspection.Car;

/// <summary>A photo that shows a point or how a reading was taken. The picture itself is kept beside the journal; a car file names it only.</summary>
/// <param name="Photo">The picture's name.</param>
/// <param name="Point">The point it shows; null for a reading's.</param>
/// <param name="Reading">The reading it shows; null for a point's.</param>
public sealed record PhotoOf(string Photo, string? Point = null, string? Reading = null);
