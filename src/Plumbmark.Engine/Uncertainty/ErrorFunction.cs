namespace Plumbmark.Engine.Uncertainty;

/// <summary>The complementary error function, with its relative accuracy kept far into the tail.</summary>
internal static class ErrorFunction
{
    /// <summary>erfc x = 2/√π ∫ₓ^∞ e^(−t²) dt.</summary>
    public static double Erfc(double x) =>
        x switch
        {
            < 0 => 2 - Erfc(-x),
            <= 1 => 1 - ErfBySeries(x),
            < 27.3 => ErfcByContinuedFraction(x),
            _ => 0, // below the smallest double
        };

    // Abramowitz & Stegun 7.1.6:  erf x = 2/√π e^(−x²) Σ 2ⁿ x^(2n+1) / (1·3···(2n+1)); no term is negative.
    private static double ErfBySeries(double x)
    {
        var (term, sum) = (x, x);
        for (var n = 1; term > 1e-17 * sum; n++)
        {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }

        return 2 / Math.Sqrt(Math.PI) * ExpMinusSquare(x) * sum;
    }

    // Abramowitz & Stegun 7.1.14:  √π e^(x²) erfc x = 1/(x + ½/(x + 1/(x + 3/2/(x + 2/(x + …
    // Taken backwards. What the N-th tail still changes falls like exp(−2x√(2N)); 220/x² brings that below 1e-17.
    private static double ErfcByContinuedFraction(double x)
    {
        var f = x;
        for (var n = 20 + (int)(220 / (x * x)); n > 0; n--)
        {
            f = x + n / 2.0 / f;
        }

        return ExpMinusSquare(x) / (Math.Sqrt(Math.PI) * f);
    }

    /// <summary>e^(−x²) without the error that rounding x² would bring, 700 ε at x = 27.</summary>
    public static double ExpMinusSquare(double x)
    {
        var square = x * x;
        return Math.Exp(-square) * (1 - Math.FusedMultiplyAdd(x, x, -square));
    }
}
