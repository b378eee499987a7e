namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Hypotheses that one of a point's repeated drops went astray, judged by the other drops alone.</summary>
/// <remarks>
/// Of n marks one is compared with the mean of the others: d with variance s² = σ² n / (n − 1) per axis. The lengths go to the first mark: when that one is
/// astray the point is wrong, otherwise only the drop. Of two marks nobody can say which.
/// </remarks>
internal static class DropTrials
{
    public static IEnumerable<Hypothesis> Of(NetworkFit fit)
    {
        var source = fit.State.Network.Source;
        var points = source
            .Observations.OfType<Observation.DropShift>()
            .GroupBy(o => o.Point, StringComparer.Ordinal)
            .Select(g => (Sigma: source.Points.Single(p => p.Id == g.Key).DropSigmaMetres, Drops: g.ToList()))
            .Where(p => p.Sigma > 0)
            .ToList();

        // All drops together tell how far drops scatter; a stray one must stand out from that.
        var misfit = points.Sum(p => Scatter(Marks(p.Drops)) / (p.Sigma * p.Sigma));
        var weighed = new Evidence(misfit, points.Sum(p => 2 * p.Drops.Count));
        return points.SelectMany(p => OfPoint(p.Drops, p.Sigma, misfit, weighed, fit.ChiSquareProbability));
    }

    private static IEnumerable<Hypothesis> OfPoint(
        List<Observation.DropShift> drops,
        double sigma,
        double misfit,
        Evidence weighed,
        double? fitProbability
    )
    {
        var marks = Marks(drops);
        var n = marks.Length;
        var s = sigma * sigma * n / (n - 1);
        for (var k = 0; k < n; k++)
        {
            var own = k;
            var others = marks.Where((_, i) => i != own).ToArray();
            var d = (X: marks[k].X - others.Average(m => m.X), Y: marks[k].Y - others.Average(m => m.Y));
            var rest = misfit + (Scatter(others) - Scatter(marks)) / (sigma * sigma);
            var evidence = Evidence.Mean([
                .. BlunderPriors.PointSizesMetres.Select(t => weighed.Of(rest, (s, 0, s), d, (s, 0, s), (t * t, t * t))),
            ]);
            var doubted =
                k == 0
                    ? new Doubted(null, drops[0].Point, BlunderKind.PointOff, double.Hypot(d.X, d.Y), null)
                    : new Doubted(drops[k - 1].Id, null, BlunderKind.FreeAmount, double.Hypot(d.X, d.Y), null);
            yield return new Hypothesis([doubted], Math.Log(BlunderPriors.Point) + evidence, fitProbability);
        }
    }

    private static (double X, double Y)[] Marks(List<Observation.DropShift> drops) =>
        [(0, 0), .. drops.Select(o => (o.DxMetres, o.DyMetres))];

    private static double Scatter((double X, double Y)[] marks)
    {
        var (x, y) = (marks.Average(m => m.X), marks.Average(m => m.Y));
        return marks.Sum(m => (m.X - x) * (m.X - x) + (m.Y - y) * (m.Y - y));
    }
}
