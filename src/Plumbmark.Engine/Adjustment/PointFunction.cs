namespace Plumbmark.Engine.Adjustment;

/// <summary>Any smooth quantity computed from the coordinates of points, metres in, its own unit out.</summary>
/// <param name="coordinatesMetres">In the order of <see cref="NetworkCovariance.Coordinates"/>.</param>
public delegate double PointFunction(ReadOnlySpan<double> coordinatesMetres);
