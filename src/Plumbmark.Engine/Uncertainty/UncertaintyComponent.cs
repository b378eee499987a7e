namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// One cause of doubt about a result, as a standard uncertainty (k = 1) with its degrees of freedom; in the unit of the result once
/// <see cref="Times"/> has applied the sensitivity. Several make a <see cref="CombinedUncertainty"/>.
/// </summary>
public sealed record UncertaintyComponent
{
    private UncertaintyComponent(string name, double standardUncertainty, double degreesOfFreedom)
    {
        Name = name;
        StandardUncertainty = standardUncertainty;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>What it comes from, such as "tape division".</summary>
    public string Name { get; }

    /// <summary>The standard uncertainty, k = 1; not negative.</summary>
    public double StandardUncertainty { get; }

    /// <summary>ν, how well the standard uncertainty itself is known; infinite when it is taken as exact.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>A standard uncertainty that is simply known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is negative or not finite, or the degrees of freedom are not positive.</exception>
    public static UncertaintyComponent Standard(string name, double standardUncertainty, double degreesOfFreedom = double.PositiveInfinity)
    {
        Demand.NotNegative(standardUncertainty);
        Demand.Finite(standardUncertainty);
        Demand.Positive(degreesOfFreedom);
        return new UncertaintyComponent(name, standardUncertainty, degreesOfFreedom);
    }

    /// <summary>Anywhere within ±<paramref name="halfWidth"/>, nowhere more likely: u = a/√3 (JCGM 100:2008, 4.3.7).</summary>
    public static UncertaintyComponent Rectangular(string name, double halfWidth) => Standard(name, halfWidth / Math.Sqrt(3));

    /// <summary>Within ±<paramref name="halfWidth"/>, most likely in the middle: u = a/√6 (JCGM 100:2008, 4.3.9).</summary>
    public static UncertaintyComponent Triangular(string name, double halfWidth) => Standard(name, halfWidth / Math.Sqrt(6));

    /// <summary>Rounding to the nearest division of a scale: u = division/√12 (JCGM 100:2008, F.2.2.1).</summary>
    public static UncertaintyComponent Division(string name, double division) => Standard(name, division / Math.Sqrt(12));

    /// <summary>An expanded uncertainty from a certificate: u = U/k (JCGM 100:2008, 4.3.3).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The coverage factor is not positive.</exception>
    public static UncertaintyComponent Expanded(string name, double expandedUncertainty, double coverageFactor)
    {
        Demand.Positive(coverageFactor);
        return Standard(name, expandedUncertainty / coverageFactor);
    }

    /// <summary>The mean of some readings whose spread is known from repeats: u = s/√n (JCGM 100:2008, 4.2.3).</summary>
    /// <param name="name">What it comes from.</param>
    /// <param name="spread">The pooled spread of single readings.</param>
    /// <param name="readings">n, how many readings the mean is of; at least one.</param>
    public static UncertaintyComponent Repeats(string name, PooledRepeatability spread, int readings)
    {
        ArgumentNullException.ThrowIfNull(spread);
        ArgumentOutOfRangeException.ThrowIfLessThan(readings, 1);
        return Standard(name, spread.StandardDeviation / Math.Sqrt(readings), spread.DegreesOfFreedom);
    }

    /// <summary>The same cause seen in a result that moves by <paramref name="sensitivity"/> for each unit of it; the sign does not matter.</summary>
    public UncertaintyComponent Times(double sensitivity) => Standard(Name, Math.Abs(sensitivity) * StandardUncertainty, DegreesOfFreedom);

    /// <summary>
    /// The same, but itself doubted by a share such as 0.25 of its value: ν = ½ (Δu/u)⁻² (JCGM 100:2008, G.4.2, eq. (G.3)), here 8.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not positive.</exception>
    public UncertaintyComponent DoubtedBy(double share)
    {
        Demand.Positive(share);
        return Standard(Name, StandardUncertainty, 0.5 / (share * share));
    }
}
