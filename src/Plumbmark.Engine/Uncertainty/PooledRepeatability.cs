namespace Plumbmark.Engine.Uncertainty;

/// <summary>The spread of single readings, learnt from every quantity that was read more than once.</summary>
/// <param name="StandardDeviation">s_p of one reading, in the unit of the readings.</param>
/// <param name="DegreesOfFreedom">ν = Σ(n_j − 1); at least 1.</param>
public sealed record PooledRepeatability(double StandardDeviation, double DegreesOfFreedom)
{
    // JCGM 100:2008, H.1.3.2 and H.3.6 (pooled estimate):  s_p² = Σ_j (n_j − 1) s_j² / Σ_j (n_j − 1)
    /// <summary>
    /// Pools groups of readings, each group the repeats of one quantity; null when no group has two readings, because then nothing is known.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">A reading is not finite.</exception>
    public static PooledRepeatability? Of(IEnumerable<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        var (squares, degrees) = (0.0, 0);
        foreach (var group in groups.Where(g => g.Count > 1))
        {
            var mean = group.Average();
            Demand.Finite(mean);
            squares += group.Sum(x => (x - mean) * (x - mean));
            degrees += group.Count - 1;
        }

        return degrees == 0 ? null : new PooledRepeatability(Math.Sqrt(squares / degrees), degrees);
    }

    /// <summary>
    /// Both estimates of the same spread as one, each with the weight of its degrees of freedom. A default that is doubted by a share d is worth
    /// ½ d⁻² of them (JCGM 100:2008, G.4.2): so a handful of repeats moves it a little and many replace it.
    /// </summary>
    public PooledRepeatability With(PooledRepeatability other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var degrees = DegreesOfFreedom + other.DegreesOfFreedom;
        var share = other.DegreesOfFreedom / degrees;
        var square = (1 - share) * StandardDeviation * StandardDeviation + share * other.StandardDeviation * other.StandardDeviation;
        return new PooledRepeatability(Math.Sqrt(square), degrees);
    }

    /// <summary>
    /// How often a true spread of <paramref name="assumed"/> would show repeats at least this far apart: small means that the assumed
    /// spread is too small, near 1 that it is too large. νs²/σ² is chi-square distributed.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The assumed standard deviation is not positive.</exception>
    public double ProbabilityOfAtLeast(double assumed)
    {
        Demand.Positive(assumed);
        var ratio = StandardDeviation / assumed;
        return ChiSquare.UpperTail(DegreesOfFreedom * ratio * ratio, DegreesOfFreedom);
    }

    /// <summary>The true spread that is not exceeded with this confidence: s √(ν/χ²) with the lower χ² quantile.</summary>
    public double UpperBound(double confidence)
    {
        Demand.Probability(confidence);
        return StandardDeviation * Math.Sqrt(DegreesOfFreedom / ChiSquare.Quantile(1 - confidence, DegreesOfFreedom));
    }
}
