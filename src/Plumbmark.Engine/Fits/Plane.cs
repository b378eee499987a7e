namespace Plumbmark.Engine.Fits;

/// <summary>A flat surface, for example the face by which a part is clamped.</summary>
/// <param name="Point">A place in the plane, metres.</param>
/// <param name="Normal">Unit direction square to it; a fit returns the one whose largest component is positive.</param>
public sealed record Plane(Vector3 Point, Vector3 Normal)
{
    /// <summary>Height of a place above the plane, metres, positive on the side of <see cref="Normal"/>.</summary>
    public double Distance(Vector3 place) => Vector3.Dot(Normal, place - Point);
}
