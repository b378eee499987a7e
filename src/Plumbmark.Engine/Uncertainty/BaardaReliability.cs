namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// How large a blunder must be before a test finds it: the constants of Baarda's reliability theory. α is the risk of doubting a good
/// reading, β the risk of missing a blunder of exactly that size; the power of the test is 1 − β.
/// </summary>
/// <remarks>W. Baarda, A testing procedure for use in geodetic networks, Netherlands Geodetic Commission, 1968.</remarks>
public static class BaardaReliability
{
    /// <summary>The standardised residual from which a reading is doubted: k = z(1 − α/2); 3.2905 for 0.001.</summary>
    public static double CriticalValue(double alpha)
    {
        Demand.Probability(alpha);
        return Normal.UpperQuantile(alpha / 2);
    }

    /// <summary>
    /// δ₀, the shift of a standardised residual that is found with power 1 − β; 4.1321 for α = 0.001 and β = 0.20. The minimal detectable
    /// bias of a reading is δ₀σ/√r.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">β is not below 1 − α: the test has that power without any blunder.</exception>
    public static double Delta0(double alpha, double beta) => Math.Sqrt(Lambda0(alpha, beta, degreesOfFreedom: 1));

    /// <summary>λ₀, the non-centrality that a chi-square test with ν degrees of freedom finds with power 1 − β; for ν = 1 it is δ₀².</summary>
    /// <exception cref="ArgumentOutOfRangeException">β is not below 1 − α: the test has that power without any blunder.</exception>
    public static double Lambda0(double alpha, double beta, double degreesOfFreedom)
    {
        Demand.Positive(alpha);
        Demand.Positive(beta);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(beta, 1 - alpha);
        var nu = degreesOfFreedom;
        var critical = ChiSquare.UpperQuantile(alpha, nu);
        var start = Math.Max(0.01, Math.Pow(Normal.UpperQuantile(alpha / 2) + Normal.UpperQuantile(beta), 2) * Math.Sqrt(nu));
        // ∂P(x; ν, λ)/∂λ = −½ (P(x; ν, λ) − P(x; ν+2, λ))
        return PositiveQuantile.Solve(
            lambda =>
            {
                var missed = NonCentralChiSquare.Cumulative(critical, nu, lambda);
                return (missed, (missed - NonCentralChiSquare.Cumulative(critical, nu + 2, lambda)) / 2);
            },
            beta,
            start,
            isRising: false
        );
    }
}
