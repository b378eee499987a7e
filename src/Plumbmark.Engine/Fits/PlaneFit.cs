namespace Plumbmark.Engine.Fits;

/// <summary>A plane through points by least squares.</summary>
/// <param name="Plane">The plane; its point is the centroid.</param>
/// <param name="First">Unit direction in the plane along which the points spread most.</param>
/// <param name="Second">Unit direction in the plane square to it.</param>
/// <param name="Residuals">Heights above the plane.</param>
/// <param name="Cofactor">Unknowns: shift along the normal at the centroid (metres), rise per unit along First and along Second (radians).</param>
public sealed record PlaneFit(Plane Plane, Vector3 First, Vector3 Second, FitResiduals Residuals, FitCofactor Cofactor)
{
    /// <summary>
    /// Standard uncertainty of the plane's own height under a place, metres. A place beyond the points leans on the tilt and is less sure.
    /// Not the uncertainty of the place's measured height, which comes on top.
    /// </summary>
    /// <param name="place">The place, metres.</param>
    /// <param name="sigmaMetres">Standard uncertainty of one measured coordinate, metres.</param>
    public double UncertaintyUnder(Vector3 place, double sigmaMetres)
    {
        var q = place - Plane.Point;
        return sigmaMetres * Math.Sqrt(Cofactor.VarianceOf([1, Vector3.Dot(q, First), Vector3.Dot(q, Second)]));
    }
}
