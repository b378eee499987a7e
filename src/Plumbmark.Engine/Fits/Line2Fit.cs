namespace Plumbmark.Engine.Fits;

/// <summary>A line through points of a plane by least squares.</summary>
/// <param name="Line">The line; its point is the centroid.</param>
/// <param name="Residuals">Distances to the left of the line.</param>
/// <param name="Cofactor">Unknowns: shift to the left at the centroid (metres), turn to the left (radians).</param>
public sealed record Line2Fit(Line2 Line, FitResiduals Residuals, FitCofactor Cofactor)
{
    /// <summary>
    /// Standard uncertainty of the line's own position beside a place, metres: small at the centroid, growing beyond the ends.
    /// </summary>
    /// <param name="place">The place, metres.</param>
    /// <param name="sigmaMetres">Standard uncertainty of one measured coordinate, metres.</param>
    public double UncertaintyBeside(Point2 place, double sigmaMetres) =>
        sigmaMetres * Math.Sqrt(Cofactor.VarianceOf([1, Line.Direction.Dot(place - Line.Point)]));
}
