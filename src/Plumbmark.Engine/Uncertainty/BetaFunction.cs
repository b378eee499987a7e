namespace Plumbmark.Engine.Uncertainty;

/// <summary>The incomplete beta function, for Student's t and Fisher's F.</summary>
internal static class BetaFunction
{
    /// <summary>x^a y^b / B(a, b) with y = 1 − x, without the cancellation of its logarithms for large a and b.</summary>
    /// <remarks>
    /// With n = a + b and Stirling's formula for the three gammas:
    /// √(ab/2πn) · exp(δ(n) − δ(a) − δ(b)) · (xn/a)^a (yn/b)^b, and a(xn−a)/a + b(yn−b)/b = 0.
    /// </remarks>
    public static double Front(double a, double b, double x, double y)
    {
        if (x == 0 || y == 0)
        {
            return 0;
        }

        var n = a + b;
        var excess = x < y ? x * n - a : b - y * n; // xn − a, from whichever of x and y is the more exact
        var exponent = a * GammaFunction.LogExcess(x * n / a, excess / a) + b * GammaFunction.LogExcess(y * n / b, -excess / b);
        var delta = GammaFunction.StirlingError(n) - GammaFunction.StirlingError(a) - GammaFunction.StirlingError(b);
        return Math.Sqrt(a * b / (2 * Math.PI * n)) * Math.Exp(delta + exponent);
    }

    /// <summary>
    /// I_x(a, b), the share below x; <paramref name="y"/> is 1 − x, given separately so that neither is lost when the other is near 1.
    /// </summary>
    public static double Regularised(double a, double b, double x, double y) =>
        x <= (a + 1) / (a + b + 2) ? ByContinuedFraction(a, b, x, y) : 1 - ByContinuedFraction(b, a, y, x);

    // Didonato & Morris 1992 (ACM TOMS 18, 360-373), the even part of DLMF 8.17.22, which does not cancel where y is small:
    //   I_x(a,b) = x^a y^b / B(a,b) · 1/(β₀ + α₁/(β₁ + α₂/(β₂ + …,   λ = a − (a+b)x = (a+b)y − b
    //   αₘ = (a+m−1)(a+b+m−1) m (b−m) x² / (a+2m−1)²
    //   βₘ = m + m(b−m)x/(a+2m−1) + (a+m)(λ + 1 + m(1+y))/(a+2m+1)
    // by Lentz's method.
    private static double ByContinuedFraction(double a, double b, double x, double y)
    {
        var lambda = x < y ? a - (a + b) * x : (a + b) * y - b;
        var h = a * (lambda + 1) / (a + 1);
        var (c, d) = (h, 0.0);
        for (var m = 1; m < 1_000_000; m++)
        {
            var s = a + 2 * m - 1;
            var alpha = (a + m - 1) / s * ((a + b + m - 1) / s) * m * (b - m) * x * x;
            var beta = m + m * (b - m) * x / s + (a + m) * (lambda + 1 + m * (1 + y)) / (s + 2);
            d = 1 / (beta + alpha * d);
            c = beta + alpha / c;
            h *= c * d;
            if (Math.Abs(c * d - 1) < 2e-16)
            {
                break;
            }
        }

        return Front(a, b, x, y) / h;
    }

    /// <summary>How a whole is shared at this ratio: r/(1+r) and 1/(1+r).</summary>
    public static (double Above, double Below) Shares(double ratio) =>
        double.IsInfinity(ratio) ? (1, 0) : (ratio / (1 + ratio), 1 / (1 + ratio));
}
