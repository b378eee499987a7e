namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// Fisher's F distribution: the ratio of two variance estimates of the same variance, with ν₁ degrees of freedom above and ν₂ below. An
/// infinite ν₂ (a known variance below) is allowed and is <see cref="ChiSquare"/> divided by ν₁.
/// </summary>
/// <remarks>Relative accuracy better than 1e-12 for degrees of freedom up to 1e5; NaN is refused.</remarks>
public static class FisherF
{
    /// <summary>The density at x &gt; 0.</summary>
    public static double Density(double x, double above, double below)
    {
        Check(x, above, below);
        if (double.IsInfinity(below))
        {
            return above * ChiSquare.Density(above * x, above);
        }

        var (share, rest) = BetaFunction.Shares(above / below * x);
        return BetaFunction.Front(above / 2, below / 2, share, rest) / x;
    }

    /// <summary>The probability of at most x.</summary>
    public static double Cumulative(double x, double above, double below)
    {
        Check(x, above, below);
        if (double.IsInfinity(below))
        {
            return ChiSquare.Cumulative(above * x, above);
        }

        // Abramowitz & Stegun 26.6.2:  P = I_s(ν₁/2, ν₂/2), s = ν₁x/(ν₁x + ν₂)
        var (share, rest) = BetaFunction.Shares(above / below * x);
        return BetaFunction.Regularised(above / 2, below / 2, share, rest);
    }

    /// <summary>The probability of more than x.</summary>
    public static double UpperTail(double x, double above, double below)
    {
        Check(x, above, below);
        if (double.IsInfinity(below))
        {
            return ChiSquare.UpperTail(above * x, above);
        }

        var (share, rest) = BetaFunction.Shares(above / below * x);
        return BetaFunction.Regularised(below / 2, above / 2, rest, share);
    }

    /// <summary>The x that a share <paramref name="p"/> stays below.</summary>
    public static double Quantile(double p, double above, double below)
    {
        Demand.Probability(p);
        Check(1, above, below);
        return p switch
        {
            0 => 0,
            1 => double.PositiveInfinity,
            <= 0.5 => PositiveQuantile.Solve(x => (Cumulative(x, above, below), Density(x, above, below)), p, 1, isRising: true),
            _ => UpperQuantile(1 - p, above, below),
        };
    }

    /// <summary>The x that is exceeded with probability <paramref name="upperTail"/>.</summary>
    public static double UpperQuantile(double upperTail, double above, double below)
    {
        Demand.Probability(upperTail);
        Check(1, above, below);
        return upperTail switch
        {
            0 => double.PositiveInfinity,
            1 => 0,
            < 0.5 => PositiveQuantile.Solve(x => (UpperTail(x, above, below), Density(x, above, below)), upperTail, 1, isRising: false),
            _ => Quantile(1 - upperTail, above, below),
        };
    }

    private static void Check(double x, double above, double below)
    {
        Demand.NotNegative(x);
        Demand.Positive(above);
        Demand.Finite(above);
        Demand.Positive(below);
    }
}
