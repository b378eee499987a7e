namespace Plumbmark.Engine.Adjustment;

/// <summary>The few tail probabilities the adjustment needs.</summary>
internal static class Quantiles
{
    /// <summary>P(χ²_ν ≥ x): regularised upper incomplete gamma Q(ν/2, x/2).</summary>
    public static double ChiSquareUpper(double x, double degreesOfFreedom)
    {
        var (a, z) = (degreesOfFreedom / 2, x / 2);
        return z <= 0 ? 1
            : z < a + 1 ? 1 - LowerSeries(a, z)
            : UpperFraction(a, z);
    }

    /// <summary>P(Z ≥ z) for a standard normal Z.</summary>
    public static double NormalUpper(double z) => z >= 0 ? 0.5 * ChiSquareUpper(z * z, 1) : 1 - 0.5 * ChiSquareUpper(z * z, 1);

    /// <summary>The z with P(Z ≥ z) = p, by bisection and Newton's steps.</summary>
    public static double NormalUpperQuantile(double p)
    {
        var (low, high) = (-40.0, 40.0);
        for (var k = 0; k < 200 && high - low > 1e-15 * Math.Max(1, Math.Abs(low)); k++)
        {
            var middle = (low + high) / 2;
            (low, high) = NormalUpper(middle) > p ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double LowerSeries(double a, double x)
    {
        var (term, sum) = (1 / a, 1 / a);
        for (var n = 1; n < 10_000 && Math.Abs(term) > 1e-17 * Math.Abs(sum); n++)
        {
            term *= x / (a + n);
            sum += term;
        }

        return sum * Math.Exp(a * Math.Log(x) - x - LogGamma(a));
    }

    // Lentz's continued fraction.
    private static double UpperFraction(double a, double x)
    {
        const double Tiny = 1e-300;
        var b = x + 1 - a;
        var c = 1 / Tiny;
        var d = 1 / b;
        var h = d;
        for (var i = 1; i < 10_000; i++)
        {
            var an = -i * (i - a);
            b += 2;
            d = an * d + b;
            d = Math.Abs(d) < Tiny ? Tiny : d;
            c = b + an / c;
            c = Math.Abs(c) < Tiny ? Tiny : c;
            d = 1 / d;
            h *= d * c;
            if (Math.Abs(d * c - 1) < 1e-16)
            {
                break;
            }
        }

        return h * Math.Exp(a * Math.Log(x) - x - LogGamma(a));
    }

    // Stirling's series after shifting the argument above 10.
    private static double LogGamma(double x)
    {
        var shift = 0.0;
        while (x < 10)
        {
            shift += Math.Log(x);
            x++;
        }

        var y = 1 / (x * x);
        var series = (1.0 / 12 - y * (1.0 / 360 - y * (1.0 / 1260 - y * (1.0 / 1680 - y / 1188)))) / x;
        return (x - 0.5) * Math.Log(x) - x + 0.5 * Math.Log(2 * Math.PI) + series - shift;
    }
}
