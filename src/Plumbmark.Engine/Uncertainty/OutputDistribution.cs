namespace Plumbmark.Engine.Uncertainty;

/// <summary>What a Monte Carlo propagation says of one result: M trial values, in order, and what follows from them.</summary>
/// <remarks>JCGM 101:2008, 7.5 to 7.7. All values in the result's own unit; a coverage is a probability.</remarks>
public sealed class OutputDistribution
{
    private readonly double[] _ordered;

    internal OutputDistribution(double[] values)
    {
        _ordered = values;
        Array.Sort(_ordered);
        Estimate = _ordered.Average();
        StandardUncertainty = Math.Sqrt(_ordered.Sum(y => (y - Estimate) * (y - Estimate)) / (_ordered.Length - 1));
    }

    /// <summary>M.</summary>
    public int Trials => _ordered.Length;

    /// <summary>ỹ, the mean of the trials (7.6, eq. (16)).</summary>
    public double Estimate { get; }

    /// <summary>u(ỹ), their standard deviation (7.6, eq. (17)); k = 1.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The interval that leaves as many trials below as above (7.7.2).</summary>
    /// <param name="coverage">p, above 0 and below 1.</param>
    public CoverageInterval SymmetricInterval(double coverage)
    {
        var q = Covered(coverage);
        var r = Math.Max(1, (Trials - q + 1) / 2); // 7.7.2: (M − q)/2, or the whole part of (M − q + 1)/2; it counts from 1
        return new CoverageInterval(_ordered[r - 1], _ordered[r - 1 + q]);
    }

    /// <summary>The narrowest interval that covers as many (7.7.3, 5.3.4); for a lop-sided result it is nearer to the heap.</summary>
    /// <param name="coverage">p, above 0 and below 1.</param>
    public CoverageInterval ShortestInterval(double coverage)
    {
        var q = Covered(coverage);
        var best = new CoverageInterval(_ordered[0], _ordered[q]);
        for (var r = 1; r + q < Trials; r++)
        {
            var next = new CoverageInterval(_ordered[r], _ordered[r + q]);
            best = next.Width < best.Width ? next : best;
        }

        return best;
    }

    // 7.7.1: q = pM, or the whole part of pM + ½
    private int Covered(double coverage)
    {
        Demand.Probability(coverage);
        return Math.Clamp((int)Math.Floor(coverage * Trials + 0.5), 1, Trials - 1);
    }
}
