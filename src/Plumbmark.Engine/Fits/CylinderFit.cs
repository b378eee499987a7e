namespace Plumbmark.Engine.Fits;

/// <summary>A cylinder and its axis through points by least squares of the distances from the surface.</summary>
/// <param name="Cylinder">The cylinder; the axis point is abreast of the points' centroid.</param>
/// <param name="First">Unit direction square to the axis.</param>
/// <param name="Second">Unit direction square to the axis and to <paramref name="First"/>.</param>
/// <param name="Residuals">Distances outside the surface.</param>
/// <param name="Cofactor">Unknowns: axis point along First and Second (metres), tilt of the axis towards First and Second (radians),
/// radius (metres).</param>
/// <param name="Steps">Steps of the search.</param>
public sealed record CylinderFit(Cylinder Cylinder, Vector3 First, Vector3 Second, FitResiduals Residuals, FitCofactor Cofactor, int Steps)
{
    /// <summary>Standard uncertainty of the axis' position at a station, in any one direction square to it, metres (the larger of the two).</summary>
    /// <param name="stationMetres">Distance along the axis from its point, metres.</param>
    /// <param name="sigmaMetres">Standard uncertainty of one measured coordinate, metres.</param>
    public double AxisUncertainty(double stationMetres, double sigmaMetres) =>
        sigmaMetres
        * Math.Sqrt(Math.Max(Cofactor.VarianceOf([1, 0, stationMetres, 0, 0]), Cofactor.VarianceOf([0, 1, 0, stationMetres, 0])));
}
