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
        foreach (var group in source.Observations.OfType<Observation.DropShift>().GroupBy(o => o.Point, StringComparer.Ordinal))
        {
            var sigma = source.Points.Single(p => p.Id == group.Key).DropSigmaMetres;
            foreach (var hypothesis in sigma > 0 ? OfPoint(group.Key, [.. group], sigma, fit.ChiSquareProbability) : [])
            {
                yield return hypothesis;
            }
        }
    }

    private static IEnumerable<Hypothesis> OfPoint(string point, List<Observation.DropShift> drops, double sigma, double? fitProbability)
    {
        (double X, double Y)[] marks = [(0, 0), .. drops.Select(o => (o.DxMetres, o.DyMetres))];
        var n = marks.Length;
        var s = sigma * sigma * n / (n - 1);
        var misfit = Scatter(marks) / (sigma * sigma);
        var weighed = new Evidence(misfit, 2 * (n - 1));
        for (var k = 0; k < n; k++)
        {
            var own = k;
            var others = marks.Where((_, i) => i != own).ToArray();
            var d = (X: marks[k].X - others.Average(m => m.X), Y: marks[k].Y - others.Average(m => m.Y));
            var rest = Scatter(others) / (sigma * sigma);
            var evidence = Evidence.Mean([
                .. BlunderPriors.PointSizesMetres.Select(t => weighed.Of(rest, (s, 0, s), d, (s, 0, s), (t * t, t * t))),
            ]);
            var doubted =
                k == 0
                    ? new Doubted(null, point, BlunderKind.PointOff, double.Hypot(d.X, d.Y), null)
                    : new Doubted(drops[k - 1].Id, null, BlunderKind.FreeAmount, double.Hypot(d.X, d.Y), null);
            yield return new Hypothesis([doubted], Math.Log(BlunderPriors.Point) + evidence, fitProbability);
        }
    }

    private static double Scatter((double X, double Y)[] marks)
    {
        var (x, y) = (marks.Average(m => m.X), marks.Average(m => m.Y));
        return marks.Sum(m => (m.X - x) * (m.X - x) + (m.Y - y) * (m.Y - y));
    }
}
