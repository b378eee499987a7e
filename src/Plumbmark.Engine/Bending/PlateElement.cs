namespace Plumbmark.Engine.Bending;

/// <summary>A flat wall of a section, or the wall of a tube, that may buckle when the ram side is squeezed.</summary>
/// <param name="Name">What the person calls it: "ram-side flange", "web".</param>
/// <param name="WidthMetres">Clear width of the flat; for a tube wall the outside diameter. m.</param>
/// <param name="ThicknessMetres">Thickness, m.</param>
/// <param name="Support">How its edges are held and how the stress runs across it.</param>
public sealed record PlateElement(string Name, double WidthMetres, double ThicknessMetres, PlateSupport Support);
