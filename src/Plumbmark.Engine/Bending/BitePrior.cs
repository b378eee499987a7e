namespace Plumbmark.Engine.Bending;

/// <summary>What is believed about the spring-back before the first bite.</summary>
/// <param name="YieldTravelMetres">Middle value of the travel at first yield of the part alone, m.</param>
/// <param name="LogSpread">Standard deviation of its natural logarithm: the yield range of the steel and the gauge of the section together.</param>
/// <param name="Gives">What may give besides the part, over what the part gives, each with its weight; 0 alone when the travel is read at the part.</param>
public sealed record BitePrior(double YieldTravelMetres, double LogSpread, IReadOnlyList<(double Ratio, double Weight)> Gives)
{
    // A yield range "from … to" is taken as the middle 95 % of what a part may have, which is four standard deviations.
    private const double RangeWidthInDeviations = 4;

    // Metres per newton of saddles, blocks and frame together, from a stiff press on steel blocks to hardwood saddles in a light frame
    // (1 mm per tonne is 10⁻⁷ m/N); own choice.
    private static readonly (double MetresPerNewton, double Weight)[] s_gives =
    [
        (0, 0.2),
        (2e-8, 0.2),
        (6e-8, 0.2),
        (1.6e-7, 0.18),
        (4e-7, 0.12),
        (1e-6, 0.1),
    ];

    /// <summary>The belief from a yield range and the theory of the set-up at the middle of it.</summary>
    /// <param name="middle">The set-up with the geometric middle of the range as yield stress.</param>
    /// <param name="range">The yield range of the steel.</param>
    /// <param name="otherLogSpread">Everything else: section sizes, E, small settling.</param>
    /// <param name="readAtPart">Whether the travel is read by a gauge on the part; false when it is the ram's, with all that gives below it.</param>
    public static BitePrior From(ThreePointBend middle, YieldRange range, double otherLogSpread, bool readAtPart)
    {
        ArgumentNullException.ThrowIfNull(middle);
        ArgumentNullException.ThrowIfNull(range);
        var yieldSpread = Math.Log(range.HighPascals / range.LowPascals) / RangeWidthInDeviations;
        var spread = Math.Sqrt((yieldSpread * yieldSpread) + (otherLogSpread * otherLogSpread));
        IReadOnlyList<(double, double)> gives = readAtPart
            ? [(0, 1)]
            : [.. s_gives.Select(g => (g.MetresPerNewton * middle.StiffnessNewtonsPerMetre, g.Weight))];
        return new(middle.YieldTravelMetres, spread, gives);
    }
}
