namespace Plumbmark.Engine.Fits;

/// <summary>A circle in space, for example the rim of an eye.</summary>
/// <param name="Centre">Centre, metres.</param>
/// <param name="Normal">Unit direction square to the circle's plane; its sense carries no meaning.</param>
/// <param name="RadiusMetres">Radius, metres, above zero.</param>
public sealed record Circle3(Point3 Centre, Point3 Normal, double RadiusMetres)
{
    /// <summary>Distance of a place from the nearest place of the circle, metres, never negative.</summary>
    public double Distance(Point3 place)
    {
        var q = place - Centre;
        var height = q.Dot(Normal);
        var inPlane = Normal.Cross(q).Norm - RadiusMetres;
        return Math.Sqrt((height * height) + (inPlane * inPlane));
    }
}
