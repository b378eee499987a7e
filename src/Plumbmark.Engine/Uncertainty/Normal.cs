namespace Plumbmark.Engine.Uncertainty;

/// <summary>The standard normal distribution: mean 0, standard deviation 1. Where the deviation itself was estimated: <see cref="StudentT"/>.</summary>
/// <remarks>Relative accuracy about 1e-14 in either tail; NaN is refused.</remarks>
public static class Normal
{
    /// <summary>φ(z) = e^(−z²/2)/√2π.</summary>
    public static double Density(double z)
    {
        Demand.Number(z);
        return ErrorFunction.ExpMinusSquare(z / Math.Sqrt(2)) / Math.Sqrt(2 * Math.PI);
    }

    /// <summary>Φ(z), the probability of at most z.</summary>
    public static double Cumulative(double z)
    {
        Demand.Number(z);
        return ErrorFunction.Erfc(-z / Math.Sqrt(2)) / 2;
    }

    /// <summary>1 − Φ(z), the probability of more than z, without the loss of subtracting from one.</summary>
    public static double UpperTail(double z) => Cumulative(-z);

    /// <summary>The z that is exceeded with probability <paramref name="upperTail"/>; 0.025 gives 1.959964.</summary>
    public static double UpperQuantile(double upperTail) => -Quantile(upperTail);

    /// <summary>The z with Φ(z) = p; infinite at 0 and 1. For p near 1 <see cref="UpperQuantile"/> keeps more digits.</summary>
    public static double Quantile(double p)
    {
        Demand.Probability(p);
        if (p > 0.5)
        {
            return -Quantile(1 - p);
        }

        if (p is 0 or 0.5)
        {
            return p == 0 ? double.NegativeInfinity : 0;
        }

        // Abramowitz & Stegun 26.2.23, |error| < 4.5e-4, then Halley's method: e = (Φ−p)/φ, z ← z − e/(1 + ze/2).
        var t = Math.Sqrt(-2 * Math.Log(p));
        var z = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
        for (var i = 0; i < 3; i++)
        {
            var e = (Cumulative(z) - p) / Density(z);
            z -= e / (1 + z * e / 2);
        }

        return z;
    }
}
