namespace Plumbmark.Engine.Fits;

/// <summary>A straight line in a plane, for example the edge that a straightedge is laid against.</summary>
/// <param name="Point">A place on the line, metres.</param>
/// <param name="Direction">Unit direction along it.</param>
public sealed record Line2(Point2 Point, Point2 Direction)
{
    /// <summary>Distance of a place from the line, metres, positive to the left of <see cref="Direction"/>.</summary>
    public double Distance(Point2 place) => Direction.Cross(place - Point);
}
