namespace Plumbmark.Engine.Fits;

/// <summary>A circle in space, for example the rim of an eye.</summary>
/// <param name="Centre">Centre, metres.</param>
/// <param name="Normal">Unit direction square to the circle's plane; its sense carries no meaning.</param>
/// <param name="RadiusMetres">Radius, metres, above zero.</param>
public sealed record Circle3(Vector3 Centre, Vector3 Normal, double RadiusMetres)
{
    /// <summary>Distance of a place from the nearest place of the circle, metres, never negative.</summary>
    public double Distance(Vector3 place)
    {
        var q = place - Centre;
        var height = Vector3.Dot(q, Normal);
        var inPlane = Vector3.Cross(Normal, q).Norm - RadiusMetres;
        return Math.Sqrt((height * height) + (inPlane * inPlane));
    }
}
