using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>How sure single readings with one tool are: what was assumed, what its repeats say, and what both give together.</summary>
/// <param name="Tool">The tool; null for readings without one.</param>
/// <param name="IsBetweenMarks">Lengths with two ends set by eye; otherwise heights.</param>
/// <param name="AssumedMetres">Standard uncertainty assumed beforehand.</param>
/// <param name="Repeats">The spread of repeated readings with their degrees of freedom; null when nothing was read twice.</param>
/// <param name="Used">What is used: both, each with the weight of its degrees of freedom. Cover it with Student's t.</param>
public sealed record ReadingSpread(
    string? Tool,
    bool IsBetweenMarks,
    double AssumedMetres,
    PooledRepeatability? Repeats,
    PooledRepeatability Used
)
{
    /// <summary>Brings an assumed spread up to date with repeats.</summary>
    internal static ReadingSpread Of(string? tool, bool isBetweenMarks, double assumedMetres, PooledRepeatability? repeats)
    {
        var assumed = new PooledRepeatability(assumedMetres, Engine.Adjustment.RepeatedDrops.DefaultDegreesOfFreedom);
        return new ReadingSpread(tool, isBetweenMarks, assumedMetres, repeats, repeats is null ? assumed : assumed.With(repeats));
    }
}
