namespace Plumbmark.Engine.Bending;

/// <summary>What is believed about the spring-back before the first bite.</summary>
/// <param name="YieldTravelMetres">Middle value of the travel at first yield, m.</param>
/// <param name="LogSpread">Standard deviation of its natural logarithm: the yield range of the steel, the gauge of the section and the give of the
/// packing together.</param>
public sealed record BitePrior(double YieldTravelMetres, double LogSpread)
{
    // A yield range "from … to" is taken as the middle 95 % of what a part may have, which is four standard deviations.
    private const double RangeWidthInDeviations = 4;

    /// <summary>The belief from a yield range and the theory of the set-up at the middle of it.</summary>
    /// <param name="middle">The set-up with the geometric middle of the range as yield stress.</param>
    /// <param name="range">The yield range of the steel.</param>
    /// <param name="otherLogSpread">Everything else: section sizes, E, the give of blocks and packing.</param>
    public static BitePrior From(ThreePointBend middle, YieldRange range, double otherLogSpread)
    {
        ArgumentNullException.ThrowIfNull(middle);
        ArgumentNullException.ThrowIfNull(range);
        var yieldSpread = Math.Log(range.HighPascals / range.LowPascals) / RangeWidthInDeviations;
        return new(middle.YieldTravelMetres, Math.Sqrt((yieldSpread * yieldSpread) + (otherLogSpread * otherLogSpread)));
    }
}
