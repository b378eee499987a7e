namespace Plumbmark.Engine.Bending;

/// <summary>Spring-back against set for one shape of section, both over the travel at first yield, for several hardening ratios.</summary>
/// <remarks>
/// In three-point bending the arms and the size of the section drop out of these ratios: only the shape of the section and the hardening
/// are left, so that one table serves every span. Between its points the table is straight; beyond the last it stays level.
/// </remarks>
public sealed class SpringBackTable
{
    private const int Points = 48;
    private const double SharpestCurvatureRatio = 60;
    private const double LargestSetRatio = 40;

    private readonly double[][] _set;
    private readonly double[][] _springBack;
    private readonly double[][] _strain;

    /// <summary>Works the table out by <see cref="ThreePointBend"/>.</summary>
    /// <param name="section">The section.</param>
    /// <param name="yieldStrain">Strain at first yield; it only scales the strains.</param>
    /// <param name="hardeningRatios">Slopes beyond yield over E.</param>
    public SpringBackTable(CrossSection section, double yieldStrain, IReadOnlyList<double> hardeningRatios)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(hardeningRatios);
        HardeningRatios = [.. hardeningRatios];
        _set = new double[hardeningRatios.Count][];
        _springBack = new double[hardeningRatios.Count][];
        _strain = new double[hardeningRatios.Count][];
        for (var h = 0; h < hardeningRatios.Count; h++)
        {
            Fill(h, new MomentCurvature(section, new Steel(1, yieldStrain, hardeningRatios[h])));
        }
    }

    /// <summary>The hardening ratios in the order given.</summary>
    public IReadOnlyList<double> HardeningRatios { get; }

    /// <summary>Spring-back over the travel at first yield, after a set of that many travels at first yield.</summary>
    /// <param name="hardening">Which of <see cref="HardeningRatios"/>.</param>
    /// <param name="setRatio">Set over the travel at first yield; below 0 counts as 0.</param>
    public double SpringBackRatio(int hardening, double setRatio)
    {
        var near = 0;
        return SpringBackRatio(hardening, setRatio, ref near);
    }

    /// <summary>The same for one of many questions about neighbouring places.</summary>
    /// <param name="hardening">Which of <see cref="HardeningRatios"/>.</param>
    /// <param name="setRatio">Set over the travel at first yield; below 0 counts as 0.</param>
    /// <param name="near">Between which points of the table the last place lay; the answer does not depend on it.</param>
    internal double SpringBackRatio(int hardening, double setRatio, ref int near) =>
        Between(_set[hardening], _springBack[hardening], setRatio, ref near);

    /// <summary>Largest outermost strain that goes with a set.</summary>
    /// <param name="hardening">Which of <see cref="HardeningRatios"/>.</param>
    /// <param name="setRatio">Set over the travel at first yield; below 0 counts as 0.</param>
    public double OuterStrain(int hardening, double setRatio)
    {
        var near = 0;
        return Between(_set[hardening], _strain[hardening], setRatio, ref near);
    }

    // With arms of 1 m the integral of ThreePointBend is δ = (κ̂ − ∫₀^κ̂ M² dκ / M̂²)/2; summed up from point to point it costs three moments a step.
    private void Fill(int h, MomentCurvature curve)
    {
        var (yield, stiffness) = (curve.YieldCurvaturePerMetre, curve.StiffnessNewtonSquareMetres);
        var yieldTravel = yield / 3;
        var (set, back, strain) = (new List<double>(Points), new List<double>(Points), new List<double>(Points));
        var (last, squares) = (yield, curve.YieldMomentNewtonMetres * curve.YieldMomentNewtonMetres * yield / 3);
        for (var i = 0; i < Points; i++)
        {
            // Close together near first yield, where the set starts as the square of the load beyond it.
            var share = (double)i / (Points - 1);
            var k = yield * Math.Pow(SharpestCurvatureRatio, share * share);
            squares += SquaresBetween(curve, last, k);
            last = k;
            var moment = curve.MomentAt(k);
            var springBack = moment / (3 * stiffness);
            set.Add(Math.Max(0, ((k - (squares / (moment * moment))) / 2) - springBack) / yieldTravel);
            back.Add(springBack / yieldTravel);
            strain.Add(curve.OuterStrainAt(k));
            if (set[^1] > LargestSetRatio)
            {
                break;
            }
        }

        (_set[h], _springBack[h], _strain[h]) = ([.. set], [.. back], [.. strain]);
    }

    // Gauss-Legendre with three points; the moment is smooth but for slight kinks where a yield front crosses an edge of the section.
    private static double SquaresBetween(MomentCurvature curve, double low, double high)
    {
        var (middle, half) = ((low + high) / 2, (high - low) / 2);
        double Square(double k) => curve.MomentAt(k) * curve.MomentAt(k);
        var reach = half * Math.Sqrt(0.6);
        return half * ((5 * (Square(middle - reach) + Square(middle + reach))) + (8 * Square(middle))) / 9;
    }

    private static double Between(double[] x, double[] y, double at, ref int near)
    {
        if (at <= x[0])
        {
            return y[0];
        }

        if (at >= x[^1])
        {
            return y[^1];
        }

        if (!(near < x.Length - 1 && x[near] < at && at <= x[near + 1]))
        {
            near = Before(x, at);
        }

        var share = (at - x[near]) / (x[near + 1] - x[near]);
        return y[near] + (share * (y[near + 1] - y[near]));
    }

    private static int Before(double[] x, double at)
    {
        var (left, right) = (0, x.Length - 1);
        while (right - left > 1)
        {
            var middle = (left + right) / 2;
            (left, right) = x[middle] < at ? (middle, right) : (left, middle);
        }

        return left;
    }
}
