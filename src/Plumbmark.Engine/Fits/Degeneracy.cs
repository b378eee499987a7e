namespace Plumbmark.Engine.Fits;

/// <summary>The way in which points fail to determine a shape.</summary>
public enum Degeneracy
{
    /// <summary>All points are one and the same: not even a direction is known.</summary>
    Coincident,

    /// <summary>All points lie on one line: no plane, no circle, no axis is known.</summary>
    Collinear,

    /// <summary>The points lie in a way that leaves one direction of the shape free, for example a ring of points for an axis.</summary>
    OneDirectionFree,
}
