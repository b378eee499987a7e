namespace Plumbmark.Engine.Fits;

/// <summary>A straight tube without ends: a bore or a pin, and by its axis the line that matters.</summary>
/// <param name="Axis">The axis; its point is the place nearest the points' centroid.</param>
/// <param name="RadiusMetres">Radius, metres, above zero.</param>
public sealed record Cylinder(Line3 Axis, double RadiusMetres)
{
    /// <summary>Distance of a place from the surface, metres, positive outside.</summary>
    public double Distance(Vector3 place) => Axis.Distance(place) - RadiusMetres;
}
