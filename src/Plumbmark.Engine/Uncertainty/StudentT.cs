namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// Student's t distribution: a normal deviation divided by a standard deviation that was itself estimated, with ν degrees of freedom.
/// Infinite ν is allowed and is the <see cref="Normal"/> distribution; ν need not be whole.
/// </summary>
/// <remarks>
/// Relative accuracy better than 1e-12 for ν from 0.5 to 1e6; from 1e15 on it is the normal distribution, which it is to 1e-12 as far as eight
/// deviations out. NaN is refused.
/// </remarks>
public static class StudentT
{
    /// <summary>The density at t.</summary>
    public static double Density(double t, double degreesOfFreedom)
    {
        Demand.Number(t);
        Demand.Positive(degreesOfFreedom);
        if (IsNormal(degreesOfFreedom))
        {
            return Normal.Density(t);
        }

        // Abramowitz & Stegun 26.7.1:  f = (1 + t²/ν)^(−(ν+1)/2) / (√ν B(½, ν/2));
        // with b = ν/2 Stirling's formula gives 1/B(½,b) = √(b/2π) exp(b ln(1 + 1/2b) + δ(b+½) − δ(½) − δ(b)).
        var nu = degreesOfFreedom;
        var b = nu / 2;
        var delta = GammaFunction.StirlingError(b + 0.5) - GammaFunction.StirlingError(0.5) - GammaFunction.StirlingError(b);
        var exponent = b * GammaFunction.LogOnePlus(1 / nu) + delta - (nu + 1) / 2 * GammaFunction.LogOnePlus(t * t / nu);
        return Math.Exp(exponent) / Math.Sqrt(4 * Math.PI);
    }

    /// <summary>The probability of at most t.</summary>
    public static double Cumulative(double t, double degreesOfFreedom) => UpperTail(-t, degreesOfFreedom);

    /// <summary>The probability of more than t.</summary>
    public static double UpperTail(double t, double degreesOfFreedom)
    {
        Demand.Number(t);
        Demand.Positive(degreesOfFreedom);
        return t < 0 ? 1 - TwoTails(-t, degreesOfFreedom) / 2 : TwoTails(t, degreesOfFreedom) / 2;
    }

    /// <summary>The t that is exceeded with probability <paramref name="upperTail"/>.</summary>
    public static double UpperQuantile(double upperTail, double degreesOfFreedom) => -Quantile(upperTail, degreesOfFreedom);

    /// <summary>The t that a share <paramref name="p"/> stays below; infinite at 0 and 1.</summary>
    public static double Quantile(double p, double degreesOfFreedom)
    {
        Demand.Probability(p);
        Demand.Positive(degreesOfFreedom);
        if (IsNormal(degreesOfFreedom) || p is 0 or 0.5 or 1)
        {
            return Normal.Quantile(p);
        }

        return p < 0.5 ? -PositiveQuantileOf(p, degreesOfFreedom) : PositiveQuantileOf(1 - p, degreesOfFreedom);
    }

    /// <summary>t of GUM table G.2: the half width, in standard uncertainties, of an interval that covers a share p.</summary>
    /// <param name="coverage">p, such as 0.95.</param>
    /// <param name="degreesOfFreedom">ν.</param>
    public static double CoverageFactor(double coverage, double degreesOfFreedom)
    {
        Demand.Probability(coverage);
        return UpperQuantile((1 - coverage) / 2, degreesOfFreedom);
    }

    // The two differ by about t⁴/4ν of the tail (Abramowitz & Stegun 26.7.8); the incomplete beta function fails where ν exceeds the digits of a double.
    private static bool IsNormal(double nu) => nu >= 1e15;

    private static double PositiveQuantileOf(double tail, double nu)
    {
        var z = Normal.UpperQuantile(tail);
        var start = z * (1 + (z * z + 1) / (4 * nu)); // Abramowitz & Stegun 26.7.5, first term
        var central = 1 - 2 * tail;
        return central < 0.5
            ? PositiveQuantile.Solve(t => (Central(t, nu), 2 * Density(t, nu)), central, start, isRising: true)
            : PositiveQuantile.Solve(t => (TwoTails(t, nu), 2 * Density(t, nu)), 2 * tail, start, isRising: false);
    }

    // Abramowitz & Stegun 26.7.1 and 26.5.27:  P(|T| > t) = I_x(ν/2, ½) with x = ν/(ν + t²).
    private static double TwoTails(double t, double nu)
    {
        if (IsNormal(nu))
        {
            return 2 * Normal.UpperTail(t);
        }

        var (away, near) = BetaFunction.Shares(t / Math.Sqrt(nu) * (t / Math.Sqrt(nu)));
        return BetaFunction.Regularised(nu / 2, 0.5, near, away);
    }

    private static double Central(double t, double nu)
    {
        var (away, near) = BetaFunction.Shares(t / Math.Sqrt(nu) * (t / Math.Sqrt(nu)));
        return BetaFunction.Regularised(0.5, nu / 2, away, near);
    }
}
