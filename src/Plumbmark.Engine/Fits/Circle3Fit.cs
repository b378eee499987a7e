namespace Plumbmark.Engine.Fits;

/// <summary>A circle through points of space by least squares of the distances from it, in and out of its plane together.</summary>
/// <param name="Circle">The circle.</param>
/// <param name="First">Unit direction in the circle's plane.</param>
/// <param name="Second">Unit direction in the circle's plane square to it.</param>
/// <param name="Residuals">Distances from the circle.</param>
/// <param name="Cofactor">Unknowns: centre along First, Second and the normal (metres), rise of the plane along First and Second (radians),
/// radius (metres).</param>
/// <param name="Steps">Steps of the search.</param>
public sealed record Circle3Fit(Circle3 Circle, Vector3 First, Vector3 Second, FitResiduals Residuals, FitCofactor Cofactor, int Steps);
