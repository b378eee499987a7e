namespace Plumbmark.Engine.Uncertainty;

/// <summary>How far inside a limit a value must be measured before it counts as within, for a given probability.</summary>
/// <remarks>
/// ISO 14253-1:2017 (from memory: g = 1.65 u where u is small against the tolerance); here computed exactly, so that it also holds where both
/// limits are felt at once.
/// </remarks>
public abstract record GuardBand
{
    private GuardBand() { }

    /// <summary>Values at least this far inside the limit count as within.</summary>
    /// <param name="Width">g, in the unit of the limit; not negative.</param>
    public sealed record Guard(double Width) : GuardBand;

    /// <summary>Even a value measured exactly in the middle is not sure enough: measure better.</summary>
    /// <param name="BestProbability">The probability of being within, for a value in the middle.</param>
    public sealed record NoAcceptanceZone(double BestProbability) : GuardBand;

    /// <summary>The guard for a single limit: g = t_p u.</summary>
    /// <param name="standardUncertainty">u, k = 1; not negative.</param>
    /// <param name="probability">The probability asked for, above one half.</param>
    /// <param name="degreesOfFreedom">ν of u.</param>
    public static double OneSided(double standardUncertainty, double probability, double degreesOfFreedom = double.PositiveInfinity)
    {
        Demand.NotNegative(standardUncertainty);
        return standardUncertainty * StudentT.UpperQuantile(1 - DecisionRule.Asking(probability).Probability, degreesOfFreedom);
    }

    /// <summary>The guard inside both limits ±T: the g with p_c(T − g) = p.</summary>
    /// <param name="halfWidth">T, half the distance between the limits; positive.</param>
    /// <param name="standardUncertainty">u, k = 1; not negative.</param>
    /// <param name="probability">The probability asked for, above one half.</param>
    /// <param name="degreesOfFreedom">ν of u.</param>
    public static GuardBand TwoSided(
        double halfWidth,
        double standardUncertainty,
        double probability,
        double degreesOfFreedom = double.PositiveInfinity
    )
    {
        Demand.Positive(halfWidth);
        double Within(double value) => ConformityProbability.Between(value, standardUncertainty, -halfWidth, halfWidth, degreesOfFreedom);
        var (low, high) = (OneSided(standardUncertainty, probability, degreesOfFreedom), halfWidth);
        if (Within(0) < probability)
        {
            return new NoAcceptanceZone(Within(0));
        }

        // p_c falls steadily from the middle outwards, and the far limit only adds to the one-sided guard. Halving ends when the
        // two ends are neighbours; the inner end, where the probability is reached, is taken.
        while (high - low > 1e-15 * halfWidth)
        {
            var middle = (low + high) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = Within(halfWidth - middle) >= probability ? (low, middle) : (middle, high);
        }

        return new Guard(Within(halfWidth - low) >= probability ? low : high);
    }

    /// <summary>Goes on with whichever of the two it is.</summary>
    public T Match<T>(Func<Guard, T> guard, Func<NoAcceptanceZone, T> noAcceptanceZone)
    {
        ArgumentNullException.ThrowIfNull(guard);
        ArgumentNullException.ThrowIfNull(noAcceptanceZone);
        return this switch
        {
            Guard g => guard(g),
            NoAcceptanceZone n => noAcceptanceZone(n),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
