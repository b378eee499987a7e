using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Adjustment;

/// <summary>How far repeats of the same thing scatter: a standard deviation worth a number of degrees of freedom.</summary>
/// <remarks>
/// An estimate from few repeats is itself uncertain: cover it with Student's t at <see cref="DegreesOfFreedom"/>, never with z.
/// </remarks>
/// <param name="SigmaMetres">Standard deviation of one repeat, metres; per axis for drops.</param>
/// <param name="DegreesOfFreedom">How many independent differences it rests on; not necessarily whole.</param>
public sealed record RepeatSpread(double SigmaMetres, double DegreesOfFreedom)
{
    /// <summary>Degrees of freedom of a default that is believed to about a quarter of itself: ½ (Δu / u)⁻² = 8 (GUM G.4.2, eq. G.3).</summary>
    public const double DefaultDegreesOfFreedom = 8;

    /// <summary>Pools groups of repeated values: s² = Σ Σ (value − group mean)² / Σ (n − 1). Null when no value was repeated.</summary>
    /// <param name="groups">Each group holds the repeats of one length, metres.</param>
    public static RepeatSpread? Of(IEnumerable<IReadOnlyCollection<double>> groups)
    {
        var (squares, freedom) = (0.0, 0);
        foreach (var group in groups.Where(g => g.Count > 1))
        {
            var mean = group.Average();
            squares += group.Sum(v => (v - mean) * (v - mean));
            freedom += group.Count - 1;
        }

        return freedom > 0 ? new RepeatSpread(Math.Sqrt(squares / freedom), freedom) : null;
    }

    /// <summary>Pools all repeated drops of a network. Null when no point was dropped twice.</summary>
    /// <remarks>
    /// n marks with dx, dy give 2 (n − 1) differences from their mean. Of marks kept as distances d from the first, Σ d² has the expectation
    /// 4 (n − 1) σ² and, the distances sharing the first mark, is worth 8 (n − 1) / (n + 2) degrees of freedom (own derivation, by Satterthwaite's rule).
    /// </remarks>
    public static RepeatSpread? OfDrops(Network network)
    {
        var (squares, freedom) = (0.0, 0.0);
        foreach (var group in network.Observations.OfType<Observation.DropShift>().GroupBy(o => o.Point, StringComparer.Ordinal))
        {
            double[] dx = [0, .. group.Select(o => o.DxMetres)];
            double[] dy = [0, .. group.Select(o => o.DyMetres)];
            squares += dx.Sum(v => Math.Pow(v - dx.Average(), 2)) + dy.Sum(v => Math.Pow(v - dy.Average(), 2));
            freedom += 2 * (dx.Length - 1);
        }

        foreach (var group in network.Observations.OfType<Observation.DropDistance>().GroupBy(o => o.Point, StringComparer.Ordinal))
        {
            var later = group.Count();
            var worth = 8.0 * later / (later + 3);
            squares += group.Sum(o => o.ValueMetres * o.ValueMetres) / (4 * later) * worth;
            freedom += worth;
        }

        return freedom > 0 ? new RepeatSpread(Math.Sqrt(squares / freedom), freedom) : null;
    }

    /// <summary>Chance of a spread at least this large when the default is right: the upper tail of χ².</summary>
    public double ChanceOfMore(double defaultSigmaMetres) =>
        ChiSquare.UpperTail(DegreesOfFreedom * SigmaMetres * SigmaMetres / (defaultSigmaMetres * defaultSigmaMetres), DegreesOfFreedom);

    /// <summary>The default brought up to date: variances averaged by what each is worth, degrees of freedom added.</summary>
    /// <param name="defaultSigmaMetres">What was believed before.</param>
    /// <param name="defaultDegreesOfFreedom">How firmly.</param>
    public RepeatSpread Update(double defaultSigmaMetres, double defaultDegreesOfFreedom = DefaultDegreesOfFreedom)
    {
        var worth = DegreesOfFreedom + defaultDegreesOfFreedom;
        var variance =
            (DegreesOfFreedom * SigmaMetres * SigmaMetres + defaultDegreesOfFreedom * defaultSigmaMetres * defaultSigmaMetres) / worth;
        return new RepeatSpread(Math.Sqrt(variance), worth);
    }
}
