namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// The non-central chi-square distribution: what a chi-square test sees when there is a blunder; λ is the squared length of the shift,
/// in standard deviations. With λ = 0 it is <see cref="ChiSquare"/>.
/// </summary>
/// <remarks>
/// Abramowitz &amp; Stegun 26.4.25: a Poisson mixture of chi-squares, Σ e^(−λ/2)(λ/2)ʲ/j! · P(ν + 2j). All terms are positive; they are
/// summed from the heaviest outwards. Relative accuracy better than 1e-12 for λ up to 1e4.
/// </remarks>
public static class NonCentralChiSquare
{
    /// <summary>The probability of at most x.</summary>
    public static double Cumulative(double x, double degreesOfFreedom, double nonCentrality) =>
        Mixture(x, degreesOfFreedom, nonCentrality, ChiSquare.Cumulative);

    /// <summary>The probability of more than x: the power of a test with the critical value x.</summary>
    public static double UpperTail(double x, double degreesOfFreedom, double nonCentrality) =>
        Mixture(x, degreesOfFreedom, nonCentrality, ChiSquare.UpperTail);

    private static double Mixture(double x, double nu, double lambda, Func<double, double, double> share)
    {
        Demand.NotNegative(x);
        Demand.Positive(nu);
        Demand.NotNegative(lambda);
        Demand.Finite(lambda);
        var half = lambda / 2;
        if (half == 0)
        {
            return share(x, nu);
        }

        var heaviest = Math.Floor(half);
        // e^(−h) hʲ/j! = Front(j+1, h)/h
        var weight = GammaFunction.Front(heaviest + 1, half) / half;
        var sum = weight * share(x, nu + 2 * heaviest);
        sum += Side(j => half / j, heaviest + 1, +1);
        return sum + Side(j => (j + 1) / half, heaviest - 1, -1);

        // The weights fall away from the heaviest on either side; so does the whole term sooner or later.
        double Side(Func<double, double> ratio, double from, int step)
        {
            var (w, part) = (weight, 0.0);
            for (var j = from; j >= 0; j += step)
            {
                w *= ratio(j);
                var term = w * share(x, nu + 2 * j);
                part += term;
                if (w < 1e-17 * weight && term <= 1e-17 * (sum + part))
                {
                    break;
                }
            }

            return part;
        }
    }
}
