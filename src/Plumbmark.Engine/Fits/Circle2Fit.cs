namespace Plumbmark.Engine.Fits;

/// <summary>A circle through points of a plane by least squares of the distances from it.</summary>
/// <param name="Circle">The circle.</param>
/// <param name="Residuals">Distances outside the circle.</param>
/// <param name="Cofactor">Unknowns: centre x, centre y, radius (metres).</param>
/// <param name="Steps">Steps of the search.</param>
public sealed record Circle2Fit(Circle2 Circle, FitResiduals Residuals, FitCofactor Cofactor, int Steps);
