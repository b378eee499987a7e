namespace Plumbmark.Engine.Uncertainty;

/// <summary>Several independent causes of doubt put together, as JCGM 100:2008 (the GUM) prescribes.</summary>
/// <param name="StandardUncertainty">u_c, the root of the sum of squares; k = 1, in the unit of the components.</param>
/// <param name="DegreesOfFreedom">ν_eff (G.4.1); not whole, may be infinite.</param>
public sealed record CombinedUncertainty(double StandardUncertainty, double DegreesOfFreedom)
{
    /// <summary>u_c² = Σ u_i² (JCGM 100:2008, 5.1.2, eq. (10)), with ν_eff.</summary>
    public static CombinedUncertainty Of(params IReadOnlyList<UncertaintyComponent> components)
    {
        ArgumentNullException.ThrowIfNull(components);
        var combined = Math.Sqrt(components.Sum(c => c.StandardUncertainty * c.StandardUncertainty));
        return new CombinedUncertainty(combined, EffectiveDegreesOfFreedom.Of(components));
    }

    /// <summary>This uncertainty as one cause among others.</summary>
    public UncertaintyComponent AsComponent(string name) => UncertaintyComponent.Standard(name, StandardUncertainty, DegreesOfFreedom);

    /// <summary>
    /// k, the t of table G.2 for a coverage such as 0.95, with ν_eff truncated to the next lower whole number (JCGM 100:2008, G.4.1 note 1).
    /// </summary>
    public double CoverageFactor(double coverage) => StudentT.CoverageFactor(coverage, Math.Max(1, Math.Floor(DegreesOfFreedom)));

    /// <summary>U = k u_c: half the width of the interval that covers this share (JCGM 100:2008, 6.2.1).</summary>
    public double Expanded(double coverage) => CoverageFactor(coverage) * StandardUncertainty;
}
