namespace Plumbmark.Engine.Uncertainty;

/// <summary>The chi-square distribution: the sum of ν squared standard normal deviations. ν need not be whole.</summary>
/// <remarks>Relative accuracy better than 1e-12 in either tail for ν up to 1e6; NaN is refused.</remarks>
public static class ChiSquare
{
    /// <summary>The density at x ≥ 0.</summary>
    public static double Density(double x, double degreesOfFreedom)
    {
        Check(x, degreesOfFreedom);
        // Abramowitz & Stegun 26.4.1:  f = (x/2)^(ν/2) e^(−x/2) / (x Γ(ν/2))
        if (x == 0)
        {
            return degreesOfFreedom switch
            {
                < 2 => double.PositiveInfinity,
                2 => 0.5,
                _ => 0,
            };
        }

        return GammaFunction.Front(degreesOfFreedom / 2, x / 2) / x;
    }

    /// <summary>The probability of at most x.</summary>
    public static double Cumulative(double x, double degreesOfFreedom)
    {
        Check(x, degreesOfFreedom);
        return GammaFunction.Lower(degreesOfFreedom / 2, x / 2);
    }

    /// <summary>The probability of more than x.</summary>
    public static double UpperTail(double x, double degreesOfFreedom)
    {
        Check(x, degreesOfFreedom);
        return GammaFunction.Upper(degreesOfFreedom / 2, x / 2);
    }

    /// <summary>The x that a share <paramref name="p"/> stays below.</summary>
    public static double Quantile(double p, double degreesOfFreedom)
    {
        Demand.Probability(p);
        Demand.Positive(degreesOfFreedom);
        return p switch
        {
            0 => 0,
            1 => double.PositiveInfinity,
            <= 0.5 => PositiveQuantile.Solve(
                x => (Cumulative(x, degreesOfFreedom), Density(x, degreesOfFreedom)),
                p,
                Start(Normal.Quantile(p), degreesOfFreedom),
                isRising: true
            ),
            _ => UpperQuantile(1 - p, degreesOfFreedom),
        };
    }

    /// <summary>The x that is exceeded with probability <paramref name="upperTail"/>.</summary>
    public static double UpperQuantile(double upperTail, double degreesOfFreedom)
    {
        Demand.Probability(upperTail);
        Demand.Positive(degreesOfFreedom);
        return upperTail switch
        {
            0 => double.PositiveInfinity,
            1 => 0,
            < 0.5 => PositiveQuantile.Solve(
                x => (UpperTail(x, degreesOfFreedom), Density(x, degreesOfFreedom)),
                upperTail,
                Start(Normal.UpperQuantile(upperTail), degreesOfFreedom),
                isRising: false
            ),
            _ => Quantile(1 - upperTail, degreesOfFreedom),
        };
    }

    // Wilson and Hilferty, Abramowitz & Stegun 26.4.17; far below, where it turns negative, any small number starts as well.
    private static double Start(double z, double nu)
    {
        var root = 1 - 2 / (9 * nu) + z * Math.Sqrt(2 / (9 * nu));
        return nu * Math.Pow(Math.Max(root, 0.01), 3);
    }

    private static void Check(double x, double degreesOfFreedom)
    {
        Demand.NotNegative(x);
        Demand.Positive(degreesOfFreedom);
    }
}
