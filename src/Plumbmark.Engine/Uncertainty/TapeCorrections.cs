namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// What must be added to the length a steel tape shows. Each correction is in metres and carries its sign; they are independent to
/// first order, so they add. SI throughout.
/// </summary>
/// <remarks>C. D. Ghilani and P. R. Wolf, Elementary Surveying, chapter 6; the formulas are in every surveying textbook.</remarks>
public static class TapeCorrections
{
    /// <summary>Thermal expansion of steel as surveying textbooks take it, 11.6e-6 per kelvin.</summary>
    public const double SteelExpansionPerKelvin = 11.6e-6;

    /// <summary>C_L = (l − l₀)/l₀ · L: the tape is really <paramref name="actualMetres"/> long where it says <paramref name="nominalMetres"/>.</summary>
    public static double Length(double shownMetres, double actualMetres, double nominalMetres)
    {
        Demand.Positive(nominalMetres);
        return (actualMetres - nominalMetres) / nominalMetres * shownMetres;
    }

    /// <summary>C_T = α (T − T₀) L: a warm tape is long and shows too little. T₀ is 20 °C on tapes made to a standard.</summary>
    public static double Temperature(
        double shownMetres,
        double temperatureCelsius,
        double standardCelsius,
        double expansionPerKelvin = SteelExpansionPerKelvin
    ) => expansionPerKelvin * (temperatureCelsius - standardCelsius) * shownMetres;

    /// <summary>C_P = (P − P₀) L / (A E): a tape pulled harder than its standard pull is long.</summary>
    /// <param name="shownMetres">L.</param>
    /// <param name="pullNewtons">P.</param>
    /// <param name="standardPullNewtons">P₀, 50 N on tapes of 5 m and more unless marked otherwise.</param>
    /// <param name="sectionSquareMetres">A.</param>
    /// <param name="modulusPascals">E, about 200e9 for steel.</param>
    public static double Pull(
        double shownMetres,
        double pullNewtons,
        double standardPullNewtons,
        double sectionSquareMetres,
        double modulusPascals
    )
    {
        Demand.Positive(sectionSquareMetres * modulusPascals);
        return (pullNewtons - standardPullNewtons) * shownMetres / (sectionSquareMetres * modulusPascals);
    }

    /// <summary>C_S = −w² L³ / (24 P²) for one span hanging free between supports: the chord is shorter than the tape.</summary>
    /// <remarks>The first term of the catenary; <see cref="SagOfCatenary"/> is exact. For a 3 m span of a light tape at 20 N they differ by 5e-9 m.</remarks>
    /// <param name="spanMetres">L, along the tape.</param>
    /// <param name="weightNewtonsPerMetre">w.</param>
    /// <param name="pullNewtons">P.</param>
    public static double Sag(double spanMetres, double weightNewtonsPerMetre, double pullNewtons)
    {
        Demand.Positive(pullNewtons);
        var load = weightNewtonsPerMetre * spanMetres / pullNewtons;
        return -load * load * spanMetres / 24;
    }

    /// <summary>The same for an inextensible chain with horizontal pull P: chord − L, chord = 2 (P/w) arsinh(wL / 2P).</summary>
    /// <param name="spanMetres">L, along the tape.</param>
    /// <param name="weightNewtonsPerMetre">w; positive.</param>
    /// <param name="pullNewtons">P.</param>
    public static double SagOfCatenary(double spanMetres, double weightNewtonsPerMetre, double pullNewtons)
    {
        Demand.Positive(pullNewtons);
        Demand.Positive(weightNewtonsPerMetre);
        var parameterMetres = pullNewtons / weightNewtonsPerMetre;
        return 2 * parameterMetres * Math.Asinh(spanMetres / (2 * parameterMetres)) - spanMetres;
    }

    /// <summary>√(L² − h²) − L: what a rise of <paramref name="riseMetres"/> takes from the plan length; about −h²/2L.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rise is more than the length.</exception>
    public static double Slope(double shownMetres, double riseMetres)
    {
        Demand.Positive(shownMetres);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(riseMetres, shownMetres);
        ArgumentOutOfRangeException.ThrowIfLessThan(riseMetres, -shownMetres);
        // −h²/(L + √(L²−h²)), the same without subtracting two lengths that are nearly equal
        return -riseMetres * riseMetres / (shownMetres + Math.Sqrt((shownMetres - riseMetres) * (shownMetres + riseMetres)));
    }
}
