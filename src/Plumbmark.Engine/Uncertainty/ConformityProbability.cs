namespace Plumbmark.Engine.Uncertainty;

/// <summary>How likely it is that the true value lies within its limits, given what was measured. What follows from it is <see cref="DecisionRule"/>'s.</summary>
/// <remarks>
/// JCGM 106:2012, 7.3 and 7.4: the knowledge after measuring is normal with mean y and standard deviation u, or, where u was estimated
/// with ν degrees of freedom, a scaled and shifted t distribution. No prior knowledge of the part is used.
/// </remarks>
public static class ConformityProbability
{
    /// <summary>p_c = F((T_U − y)/u): the probability of at most the upper limit.</summary>
    /// <param name="value">y.</param>
    /// <param name="standardUncertainty">u, k = 1, in the unit of y; zero means y is known exactly.</param>
    /// <param name="upperLimit">T_U; a value on the limit is within it.</param>
    /// <param name="degreesOfFreedom">ν of u.</param>
    public static double AtMost(
        double value,
        double standardUncertainty,
        double upperLimit,
        double degreesOfFreedom = double.PositiveInfinity
    )
    {
        Demand.Finite(value);
        Demand.Number(upperLimit);
        Demand.NotNegative(standardUncertainty);
        Demand.Finite(standardUncertainty);
        if (standardUncertainty == 0)
        {
            return value <= upperLimit ? 1 : 0;
        }

        return StudentT.Cumulative((upperLimit - value) / standardUncertainty, degreesOfFreedom);
    }

    /// <summary>The probability of at least the lower limit.</summary>
    /// <param name="value">y.</param>
    /// <param name="standardUncertainty">u, k = 1, in the unit of y; zero means y is known exactly.</param>
    /// <param name="lowerLimit">T_L; a value on the limit is within it.</param>
    /// <param name="degreesOfFreedom">ν of u.</param>
    public static double AtLeast(
        double value,
        double standardUncertainty,
        double lowerLimit,
        double degreesOfFreedom = double.PositiveInfinity
    ) => AtMost(-value, standardUncertainty, -lowerLimit, degreesOfFreedom);

    /// <summary>p_c = F((T_U − y)/u) − F((T_L − y)/u): the probability of lying between both limits.</summary>
    /// <param name="value">y.</param>
    /// <param name="standardUncertainty">u, k = 1, in the unit of y; zero means y is known exactly.</param>
    /// <param name="lowerLimit">T_L.</param>
    /// <param name="upperLimit">T_U, not below T_L.</param>
    /// <param name="degreesOfFreedom">ν of u.</param>
    public static double Between(
        double value,
        double standardUncertainty,
        double lowerLimit,
        double upperLimit,
        double degreesOfFreedom = double.PositiveInfinity
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(upperLimit, lowerLimit);
        if (standardUncertainty == 0)
        {
            Demand.Finite(value);
            return value >= lowerLimit && value <= upperLimit ? 1 : 0;
        }

        // A value outside keeps its digits when the nearer limit's own tail is taken; 1 − 1 would be left of it otherwise.
        var above = AtLeast(value, standardUncertainty, upperLimit, degreesOfFreedom);
        var below = AtMost(value, standardUncertainty, lowerLimit, degreesOfFreedom);
        return value > upperLimit ? AtMost(value, standardUncertainty, upperLimit, degreesOfFreedom) - below
            : value < lowerLimit ? AtLeast(value, standardUncertainty, lowerLimit, degreesOfFreedom) - above
            : 1 - above - below;
    }
}
