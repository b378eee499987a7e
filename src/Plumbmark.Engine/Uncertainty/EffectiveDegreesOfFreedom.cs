namespace Plumbmark.Engine.Uncertainty;

/// <summary>How many repeat readings a combined uncertainty is worth, for choosing a coverage factor.</summary>
/// <remarks>Assumes independent components; correlated ones must be merged first. Not an integer: <see cref="CombinedUncertainty"/> truncates.</remarks>
public static class EffectiveDegreesOfFreedom
{
    // JCGM 100:2008 (GUM), G.4.1, eq. (G.2b), with all sensitivity coefficients already applied:
    //   ν_eff = u_c⁴ / Σ (u_i⁴ / ν_i),   u_c² = Σ u_i²
    /// <summary>The Welch-Satterthwaite value; infinite when no component was estimated from repeats.</summary>
    public static double Of(IReadOnlyList<UncertaintyComponent> components)
    {
        ArgumentNullException.ThrowIfNull(components);
        var largest = components.Count == 0 ? 0 : components.Max(c => c.StandardUncertainty);
        if (largest == 0)
        {
            return double.PositiveInfinity;
        }

        // Shares of the largest, so that fourth powers of micrometres in metres do not vanish.
        var shares = components.Select(c => (Square: Math.Pow(c.StandardUncertainty / largest, 2), Nu: c.DegreesOfFreedom)).ToArray();
        var combined = shares.Sum(s => s.Square);
        return combined * combined / shares.Sum(s => s.Square * s.Square / s.Nu);
    }
}
