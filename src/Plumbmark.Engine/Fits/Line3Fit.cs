namespace Plumbmark.Engine.Fits;

/// <summary>A line through points of space by least squares.</summary>
/// <param name="Line">The line; its point is the centroid.</param>
/// <param name="First">Unit direction square to the line.</param>
/// <param name="Second">Unit direction square to the line and to <paramref name="First"/>.</param>
/// <param name="Residuals">Distances from the line; two observed values and so two residuals stand behind each.</param>
/// <param name="Cofactor">Unknowns: shifts along First and Second at the centroid (metres), tilts towards First and Second (radians).</param>
public sealed record Line3Fit(Line3 Line, Vector3 First, Vector3 Second, FitResiduals Residuals, FitCofactor Cofactor);
