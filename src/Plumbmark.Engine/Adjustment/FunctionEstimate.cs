namespace Plumbmark.Engine.Adjustment;

/// <summary>The value of a function of points and its standard uncertainty (k = 1), by linear propagation from the full covariance.</summary>
/// <param name="Value">In the function's own unit.</param>
/// <param name="Sigma">Standard uncertainty in the same unit.</param>
/// <param name="Gradient">Derivative by every coordinate, per metre, in the order of <see cref="NetworkCovariance.Coordinates"/>.</param>
public sealed record FunctionEstimate(double Value, double Sigma, IReadOnlyList<double> Gradient);
