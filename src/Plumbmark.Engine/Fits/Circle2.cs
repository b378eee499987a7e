namespace Plumbmark.Engine.Fits;

/// <summary>A circle in a plane, for example a bore seen end on.</summary>
/// <param name="Centre">Centre, metres.</param>
/// <param name="RadiusMetres">Radius, metres, above zero.</param>
public sealed record Circle2(Point2 Centre, double RadiusMetres)
{
    /// <summary>Distance of a place from the circle, metres, positive outside.</summary>
    public double Distance(Point2 place) => (place - Centre).Norm - RadiusMetres;
}
