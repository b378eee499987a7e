namespace Plumbmark.Engine.Bending;

/// <summary>Integrals of a function that may have kinks, by halving where a 7-point and a 15-point rule disagree.</summary>
internal static class Quadrature
{
    private const int DeepestHalving = 14; // a kink then sits in 1/16,000 of the interval

    // Gauss-Kronrod 7/15 on [−1, 1]: abscissae from the outside in, Kronrod weights, Gauss weights of every second abscissa.
    // R. Piessens et al., QUADPACK (1983), routine QK15.
    private static readonly double[] s_abscissae =
    [
        0.991455371120812639206854697526329,
        0.949107912342758524526189684047851,
        0.864864423359769072789712788640926,
        0.741531185599394439863864773280788,
        0.586087235467691130294144691693013,
        0.405845151377397166906606412076961,
        0.207784955007898467600689403773245,
        0,
    ];

    private static readonly double[] s_kronrod =
    [
        0.022935322010529224963732008058970,
        0.063092092629978553290700663189204,
        0.104790010322250183839876322541518,
        0.140653259715525918745189590510238,
        0.169004726639267902826583426598550,
        0.190350578064785409913256402421014,
        0.204432940075298892414161999234649,
        0.209482141084727828012999174891714,
    ];

    private static readonly double[] s_gauss =
    [
        0.129484966168869693270611432679082,
        0.279705391489276667901467771423780,
        0.381830050505118944950369775488975,
        0.417959183673469387755102040816327,
    ];

    /// <summary>The integral from <paramref name="low"/> to <paramref name="high"/>.</summary>
    /// <param name="function">Finite inside the interval; its ends are never asked for.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="relativeTolerance">Disagreement of the two rules allowed, over the size of the whole integral.</param>
    public static double Integral(Func<double, double> function, double low, double high, double relativeTolerance)
    {
        var (whole, error) = Pair(function, low, high);
        return Refine(function, low, high, whole, error, relativeTolerance * Math.Abs(whole), 0);
    }

    private static double Refine(
        Func<double, double> function,
        double low,
        double high,
        double value,
        double error,
        double allowed,
        int depth
    )
    {
        if (error <= allowed || depth == DeepestHalving)
        {
            return value;
        }

        var middle = low + ((high - low) / 2);
        var (left, leftError) = Pair(function, low, middle);
        var (right, rightError) = Pair(function, middle, high);
        return Refine(function, low, middle, left, leftError, allowed / 2, depth + 1)
            + Refine(function, middle, high, right, rightError, allowed / 2, depth + 1);
    }

    private static (double Value, double Error) Pair(Func<double, double> function, double low, double high)
    {
        var (centre, half) = ((low + high) / 2, (high - low) / 2);
        var middle = function(centre);
        var (kronrod, gauss) = (s_kronrod[7] * middle, s_gauss[3] * middle);
        for (var i = 0; i < 7; i++)
        {
            var sum = function(centre - (half * s_abscissae[i])) + function(centre + (half * s_abscissae[i]));
            kronrod += s_kronrod[i] * sum;
            gauss += i % 2 == 1 ? s_gauss[i / 2] * sum : 0;
        }

        return (half * kronrod, Math.Abs(half * (kronrod - gauss)));
    }
}
