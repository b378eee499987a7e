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
    public double SpringBackRatio(int hardening, double setRatio) => Between(_set[hardening], _springBack[hardening], setRatio);

    /// <summary>Largest outermost strain that goes with a set.</summary>
    /// <param name="hardening">Which of <see cref="HardeningRatios"/>.</param>
    /// <param name="setRatio">Set over the travel at first yield; below 0 counts as 0.</param>
    public double OuterStrain(int hardening, double setRatio) => Between(_set[hardening], _strain[hardening], setRatio);

    private void Fill(int h, MomentCurvature curve)
    {
        var bend = new ThreePointBend(curve, 1, 1);
        var (set, back, strain) = (new List<double>(Points), new List<double>(Points), new List<double>(Points));
        for (var i = 0; i < Points; i++)
        {
            // Close together near first yield, where the set starts as the square of the load beyond it.
            var k = Math.Pow(SharpestCurvatureRatio, (double)i / (Points - 1));
            var bite = bend.At(k * curve.YieldCurvaturePerMetre);
            set.Add(Math.Max(0, bite.SetMetres) / bend.YieldTravelMetres);
            back.Add(bite.SpringBackMetres / bend.YieldTravelMetres);
            strain.Add(bite.OuterStrain);
            if (set[^1] > LargestSetRatio)
            {
                break;
            }
        }

        (_set[h], _springBack[h], _strain[h]) = ([.. set], [.. back], [.. strain]);
    }

    private static double Between(double[] x, double[] y, double at)
    {
        if (at <= x[0])
        {
            return y[0];
        }

        if (at >= x[^1])
        {
            return y[^1];
        }

        var found = Array.BinarySearch(x, at);
        var right = found >= 0 ? Math.Max(1, found) : ~found;
        var share = (at - x[right - 1]) / (x[right] - x[right - 1]);
        return y[right - 1] + (share * (y[right] - y[right - 1]));
    }
}
