namespace Plumbmark.Engine.Uncertainty;

/// <summary>The gamma function and its incomplete forms, for the chi-square and the distributions built on it.</summary>
internal static class GammaFunction
{
    /// <summary>ln(1 + x), accurate where 1 + x would round x away.</summary>
    public static double LogOnePlus(double x)
    {
        var u = 1 + x; // Kahan: the error of u cancels in log(u)/(u − 1)
        return u == 1 ? x
            : double.IsInfinity(u) ? u
            : Math.Log(u) * (x / (u - 1));
    }

    /// <summary>
    /// ln(1+μ) − μ, never positive, accurate where μ is small; <paramref name="ratio"/> is 1+μ, given separately so that it is accurate
    /// where μ is near −1.
    /// </summary>
    public static double LogExcess(double ratio, double mu)
    {
        if (Math.Abs(mu) > 0.4)
        {
            return Math.Log(ratio) - mu;
        }

        // ln(1+μ) = 2(r + r³/3 + r⁵/5 + …) with r = μ/(2+μ), and 2r − μ = −μr.
        var r = mu / (2 + mu);
        var (power, sum) = (r * r * r, 0.0);
        for (var k = 3; Math.Abs(power) > 1e-18 * Math.Abs(mu * r); k += 2)
        {
            sum += power / k;
            power *= r * r;
        }

        return 2 * sum - mu * r;
    }

    /// <summary>What Stirling's formula leaves out: δ(a) = ln Γ(a) − (a − ½) ln a + a − ½ ln 2π.</summary>
    public static double StirlingError(double a)
    {
        var sum = 0.0;
        for (; a < 15; a++)
        {
            sum += (a + 0.5) * LogOnePlus(1 / a) - 1; // δ(a) − δ(a+1)
        }

        // DLMF 5.11.1:  Σ B₂ₖ / (2k (2k−1) a^(2k−1))
        var s = 1 / (a * a);
        return sum
            + (1 / 12.0 - s * (1 / 360.0 - s * (1 / 1260.0 - s * (1 / 1680.0 - s * (1 / 1188.0 - s * (691 / 360360.0 - s / 156)))))) / a;
    }

    /// <summary>ln Γ(a) for a &gt; 0.</summary>
    public static double LogGamma(double a) => (a - 0.5) * Math.Log(a) - a + 0.5 * Math.Log(2 * Math.PI) + StirlingError(a);

    /// <summary>x^a e^(−x) / Γ(a), without the cancellation of its logarithms for large a.</summary>
    public static double Front(double a, double x) =>
        x == 0 || double.IsInfinity(x) ? 0 : Math.Sqrt(a / (2 * Math.PI)) * Math.Exp(a * LogExcess(x / a, (x - a) / a) - StirlingError(a));

    /// <summary>P(a, x) = γ(a, x)/Γ(a), the lower share.</summary>
    public static double Lower(double a, double x) => x < a + 1 ? LowerBySeries(a, x) : 1 - UpperByContinuedFraction(a, x);

    /// <summary>Q(a, x) = Γ(a, x)/Γ(a), the upper share.</summary>
    public static double Upper(double a, double x) => x < a + 1 ? 1 - LowerBySeries(a, x) : UpperByContinuedFraction(a, x);

    // DLMF 8.11.4:  γ(a,x) = x^a e^(−x) Σ xⁿ / (a (a+1) ··· (a+n))
    private static double LowerBySeries(double a, double x)
    {
        var (term, sum) = (1 / a, 1 / a);
        for (var n = 1; term > 1e-17 * sum; n++)
        {
            term *= x / (a + n);
            sum += term;
        }

        return Front(a, x) * sum;
    }

    // DLMF 8.9.2, even part:  Γ(a,x) = x^a e^(−x) · 1/(x+1−a − 1(1−a)/(x+3−a − 2(2−a)/(x+5−a − …, by Lentz's method.
    private static double UpperByContinuedFraction(double a, double x)
    {
        if (double.IsInfinity(x))
        {
            return 0;
        }

        var b = x + 1 - a;
        var c = double.PositiveInfinity;
        var d = 1 / b;
        var h = d;
        for (var n = 1; n < 1_000_000; n++)
        {
            var an = -n * (n - a);
            b += 2;
            d = 1 / (b + an * d);
            c = b + an / c;
            h *= c * d;
            if (Math.Abs(c * d - 1) < 2e-16)
            {
                break;
            }
        }

        return Front(a, x) * h;
    }
}
