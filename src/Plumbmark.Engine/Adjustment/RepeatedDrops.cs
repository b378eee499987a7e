using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Adjustment;

/// <summary>How far repeated plumb drops of the same points scatter.</summary>
public static class RepeatedDrops
{
    /// <summary>
    /// What a default is worth that is believed to about a quarter of itself: ½ (Δu / u)⁻² = 8 degrees of freedom (JCGM 100:2008, G.4.2, eq. G.3).
    /// </summary>
    public const double DefaultDegreesOfFreedom = 8;

    /// <summary>The spread of one drop per axis, pooled over all points of a network. Null when no point was dropped twice.</summary>
    /// <remarks>
    /// n marks with dx, dy give 2 (n − 1) differences from their mean. Of marks kept as distances d from the first, Σ d² has the expectation
    /// 4 (n − 1) σ² and, the distances sharing the first mark, is worth 8 (n − 1) / (n + 2) degrees of freedom (own derivation, by Satterthwaite's
    /// rule). An estimate from few repeats is itself uncertain: cover it with Student's t, never with z.
    /// </remarks>
    public static PooledRepeatability? Pool(IEnumerable<Observation> observations)
    {
        var all = observations.ToList();
        var (squares, freedom) = (0.0, 0.0);
        foreach (var group in all.OfType<Observation.DropShift>().GroupBy(o => o.Point, StringComparer.Ordinal))
        {
            double[] dx = [0, .. group.Select(o => o.DxMetres)];
            double[] dy = [0, .. group.Select(o => o.DyMetres)];
            squares += dx.Sum(v => Math.Pow(v - dx.Average(), 2)) + dy.Sum(v => Math.Pow(v - dy.Average(), 2));
            freedom += 2 * (dx.Length - 1);
        }

        foreach (var group in all.OfType<Observation.DropDistance>().GroupBy(o => o.Point, StringComparer.Ordinal))
        {
            var later = group.Count();
            var worth = 8.0 * later / (later + 3);
            squares += group.Sum(o => o.ValueMetres * o.ValueMetres) / (4 * later) * worth;
            freedom += worth;
        }

        return freedom > 0 ? new PooledRepeatability(Math.Sqrt(squares / freedom), freedom) : null;
    }
}
