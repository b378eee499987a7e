using Plumbmark.Engine.LeastSquares;

namespace Plumbmark.Engine.Adjustment.Starts;

/// <summary>Where an iteration came to rest, with a cost that a single gross error does not dominate.</summary>
/// <param name="X">The unknowns.</param>
/// <param name="Summary">How it went.</param>
/// <param name="RobustCost">Σ ln(1 + (r / 3)²) over all weighted misclosures: Cauchy's cost.</param>
internal sealed record Rest(double[] X, SolveSummary Summary, double RobustCost)
{
    public static double Robust(double misclosure) => Math.Log(1 + misclosure * misclosure / 9);
}
