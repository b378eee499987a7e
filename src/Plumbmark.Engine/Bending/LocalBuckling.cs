namespace Plumbmark.Engine.Bending;

/// <summary>How far the squeezed side of a section may be strained before a wall of it buckles.</summary>
/// <remarks>
/// <para>Plates: the base curve of the continuous strength method, S. Afshan and L. Gardner, Thin-Walled Structures 68 (2013) 37-49:
/// ε_lim/ε_Y = 0.25/λ^3.6 (at most 15) for λ ≤ 0.68 and (1 − 0.222/λ^1.05)/λ^1.05 beyond, λ = √(σ_Y/σ_cr).
/// Tubes: C. Buchanan, L. Gardner and A. Liew, J. Constr. Steel Res. 118 (2016): 4.44·10⁻³/λ^4.5 (at most 15) for λ ≤ 0.3 and
/// (1 − 0.224/λ^0.342)/λ^0.342 beyond. Both from memory. They were fitted to whole, flat walls: a dented wall buckles sooner.</para>
/// <para>σ_cr = k·π²E/(12(1 − ν²))·(t/b)², k of EN 1993-1-5 tables 4.1 and 4.2 (from memory); tube σ_cr = E/√(3(1 − ν²))·2t/D.</para>
/// </remarks>
public static class LocalBuckling
{
    /// <summary>The ratio above which the sources make no use of a wall's ductility.</summary>
    public const double LargestStrainRatio = 15;

    private const double Poisson = 0.3; // steel, EN 1993-1-1:2005, 3.2.6

    /// <summary>Slenderness λ = √(σ_Y/σ_cr) of a wall in a steel.</summary>
    public static double Slenderness(PlateElement plate, Steel steel)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(steel);
        var slimness = plate.ThicknessMetres / plate.WidthMetres;
        var critical =
            plate.Support == PlateSupport.TubeWall
                ? 2 * slimness / Math.Sqrt(3 * (1 - (Poisson * Poisson)))
                : BucklingFactor(plate.Support) * Math.PI * Math.PI / (12 * (1 - (Poisson * Poisson))) * slimness * slimness;
        return Math.Sqrt(steel.YieldStrain / critical);
    }

    /// <summary>Largest safe strain of the squeezed fibre over the yield strain, for one wall.</summary>
    public static double StrainRatio(PlateElement plate, Steel steel)
    {
        var slenderness = Slenderness(plate, steel);
        var (limit, factor, power, drop, flat) =
            plate.Support == PlateSupport.TubeWall ? (0.3, 4.44e-3, 4.5, 0.224, 0.342) : (0.68, 0.25, 3.6, 0.222, 1.05);
        if (slenderness <= limit)
        {
            return Math.Min(LargestStrainRatio, factor / Math.Pow(slenderness, power));
        }

        var spread = Math.Pow(slenderness, flat);
        return (1 - (drop / spread)) / spread;
    }

    /// <summary>The wall of a section that buckles first and its strain, or null for a solid bar.</summary>
    public static (PlateElement Plate, double StrainRatio)? First(CrossSection section, Steel steel)
    {
        ArgumentNullException.ThrowIfNull(section);
        (PlateElement, double)? first = null;
        foreach (var plate in section.Plates)
        {
            var ratio = StrainRatio(plate, steel);
            first = first is null || ratio < first.Value.Item2 ? (plate, ratio) : first;
        }

        return first;
    }

    /// <summary>Largest set of one bite before a wall may buckle, m; infinite for a solid bar, 0 where a wall buckles before it yields.</summary>
    /// <remarks>
    /// In three-point bending the strain falls off to both sides of the ram, and a buckle needs room: the strain is averaged over one half-wave of
    /// the buckle under the ram and compared with <see cref="StrainRatio"/> (own reasoning; half-waves of elastic plates and shells, from memory).
    /// </remarks>
    public static double LargestSetMetres(ThreePointBend bend)
    {
        ArgumentNullException.ThrowIfNull(bend);
        var largest = double.PositiveInfinity;
        foreach (var plate in bend.Curve.Section.Plates)
        {
            largest = Math.Min(largest, LargestSetMetres(bend, plate));
        }

        return largest;
    }

    private static double LargestSetMetres(ThreePointBend bend, PlateElement plate)
    {
        const int Halvings = 18;
        const double SharpestRatio = 200; // times the yield curvature: no press goes there
        var limit = StrainRatio(plate, bend.Curve.Steel) * bend.Curve.Steel.YieldStrain;
        var (low, high) = (0.0, SharpestRatio * bend.Curve.YieldCurvaturePerMetre);
        for (var i = 0; i < Halvings; i++)
        {
            var k = (low + high) / 2;
            (low, high) = MeanRamSideStrain(bend, k, HalfWaveMetres(plate)) < limit ? (k, high) : (low, k);
        }

        return Math.Max(0, bend.SetAtCurvature(low));
    }

    private static double MeanRamSideStrain(ThreePointBend bend, double peakCurvature, double lengthMetres)
    {
        const int Slices = 8;
        var peak = bend.Curve.MomentAt(peakCurvature);
        double sum = 0;
        foreach (var arm in (double[])[bend.LeftArmMetres, bend.RightArmMetres])
        {
            for (var i = 0; i < Slices; i++)
            {
                // Slices crowd towards the ram as t².
                var (t0, t1) = ((double)i / Slices, (i + 1.0) / Slices);
                var fromRam = lengthMetres / 2 * ((t0 * t0) + (t1 * t1)) / 2;
                var curvature = bend.Curve.CurvatureFor(peak * Math.Max(0, 1 - (fromRam / arm)));
                sum += bend.Curve.RamSideStrainAt(curvature) * ((t1 * t1) - (t0 * t0)) / 2;
            }
        }

        return sum;
    }

    private static double HalfWaveMetres(PlateElement plate) =>
        plate.Support switch
        {
            PlateSupport.HeldBothEdges => plate.WidthMetres,
            PlateSupport.OneEdgeFree or PlateSupport.FreeEdgeSqueezedMost => 2 * plate.WidthMetres,
            PlateSupport.Web => 0.7 * plate.WidthMetres,
            _ => 1.72 * Math.Sqrt(plate.WidthMetres / 2 * plate.ThicknessMetres),
        };

    private static double BucklingFactor(PlateSupport support) =>
        support switch
        {
            PlateSupport.HeldBothEdges => 4.0,
            PlateSupport.OneEdgeFree => 0.43,
            PlateSupport.FreeEdgeSqueezedMost => 0.57,
            PlateSupport.Web => 23.9,
            _ => throw new ArgumentOutOfRangeException(nameof(support), support, "A tube has its own formula."),
        };
}
