namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>A fit in which readings that disagree with most others count for less: it shows gross errors where least squares spreads them.</summary>
/// <remarks>
/// Iteratively reweighted with Cauchy's weights 1 / (1 + (v / cσ)²), c = 2.385, which costs 5 % of efficiency on honest readings. Source: Huber and
/// Ronchetti, Robust Statistics, 2nd ed. 2009 (from memory). Only a lead: what is doubted is decided by evidence.
/// </remarks>
internal static class RobustView
{
    private const double C = 2.385;
    private const int Rounds = 8;

    /// <summary>The robust fit; its sigmas are swollen where readings were distrusted.</summary>
    public static NetworkFit Of(NetworkFit fit)
    {
        var source = fit.State.Network.Source;
        var now = fit;
        for (var round = 0; round < Rounds; round++)
        {
            var residuals = now.Readings.ToDictionary(r => r.Id, r => r.ResidualMetres, StringComparer.Ordinal);
            var readings = source.Observations.Select(o =>
                o.SigmaMetres > 0
                    ? o with
                    {
                        SigmaMetres = o.SigmaMetres * Math.Sqrt(1 + Math.Pow(residuals[o.Id] / (C * o.SigmaMetres), 2)),
                    }
                    : o
            );
            var network = new Network(source.Points, readings, source.Tools, source.MirrorPairs);
            if (NetworkAdjustment.SolveNear(network, now).FitOrNull is not { } next)
            {
                return now;
            }

            now = next;
        }

        return now;
    }

    /// <summary>Readings that stand out from a fit, worst first; one that was left out of it stands out most.</summary>
    public static List<Observation> Leads(NetworkFit robust, Network source, int most)
    {
        const double StandsOut = 4;
        var residuals = robust.Readings.ToDictionary(r => r.Id, r => r.ResidualMetres, StringComparer.Ordinal);
        double Size(Observation o) => residuals.TryGetValue(o.Id, out var v) ? Math.Abs(v) / o.SigmaMetres : double.PositiveInfinity;
        return
        [
            .. source
                .Observations.Where(o => o.SigmaMetres > 0)
                .Select(o => (Reading: o, Size: Size(o)))
                .Where(p => p.Size > StandsOut)
                .OrderByDescending(p => p.Size)
                .Take(most)
                .Select(p => p.Reading),
        ];
    }

    /// <summary>Pairs of readings each of which says what the other should.</summary>
    public static IEnumerable<(Observation, Observation)> Exchanged(NetworkFit robust, List<Observation> leads)
    {
        const double Agrees = 8; // sigmas: the robust fit is a little off itself
        var believed = robust.Readings.ToDictionary(r => r.Id, r => r.AdjustedMetres, StringComparer.Ordinal);
        var known = leads.Where(o => believed.ContainsKey(o.Id)).ToList();
        return from i in Enumerable.Range(0, known.Count)
            from j in Enumerable.Range(i + 1, known.Count - i - 1)
            let a = known[i]
            let b = known[j]
            where a.GetType() == b.GetType()
            where Math.Abs(a.ValueMetres - believed[b.Id]) < Agrees * (a.SigmaMetres + b.SigmaMetres)
            where Math.Abs(b.ValueMetres - believed[a.Id]) < Agrees * (a.SigmaMetres + b.SigmaMetres)
            select (a, b);
    }
}
