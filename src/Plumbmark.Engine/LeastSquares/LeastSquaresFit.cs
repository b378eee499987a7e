namespace Plumbmark.Engine.LeastSquares;

/// <summary>Where a least-squares iteration stopped. Ask <see cref="SolveSummary.IsSolutionUsable"/> before using it as an estimate.</summary>
/// <param name="Unknowns">The unknowns x̂.</param>
/// <param name="Residuals">The weighted residuals there.</param>
/// <param name="Factor">QR of the Jacobian there: rank, null space, cofactor matrix.</param>
/// <param name="Summary">How the iteration went.</param>
public sealed record LeastSquaresFit(double[] Unknowns, double[] Residuals, PivotedQr Factor, SolveSummary Summary)
{
    /// <summary>Σ r².</summary>
    public double SumOfSquares => Dense.SumOfSquares(Residuals);

    /// <summary>Residuals less determined unknowns.</summary>
    public int DegreesOfFreedom => Residuals.Length - Factor.Rank;

    /// <summary>Residual standard deviation √(Σ r² / ν); null without degrees of freedom.</summary>
    public double? ResidualDeviation => DegreesOfFreedom > 0 ? Math.Sqrt(SumOfSquares / DegreesOfFreedom) : null;
}
