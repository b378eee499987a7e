using Plumbmark.Engine.Adjustment.Starts;
using Plumbmark.Engine.LeastSquares;

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
    public static NetworkFit Of(NetworkFit fit) => Descend(fit.State.Network.Source, fit, 1);

    /// <summary>
    /// The robust fit found from the sketch instead of from the fit of all readings, which one error of metres may have folded over. Null when it leads nowhere.
    /// </summary>
    /// <remarks>
    /// Graduated: at first the sketch's own error counts as ordinary scatter and only what stands out from that is distrusted; the scatter allowed then shrinks to
    /// the readings' own.
    /// </remarks>
    public static NetworkFit? OfSketch(Network source)
    {
        var compiled = NetworkCompiler.Compile(source);
        var start = new StartFinder(compiled).All().First();
        if (!Dense.IsFinite(start))
        {
            return null;
        }

        var rows = new LinearRows(compiled);
        rows.Evaluate(start);
        var misses = Enumerable.Range(0, compiled.RowCount).Where(i => compiled.Rows[i].Observation >= 0).ToList();
        var scatter = Math.Max(1, 1.4826 * Median([.. misses.Select(i => Math.Abs(rows.Misclosures[i]))]));
        var byReading = misses
            .GroupBy(i => source.Observations[compiled.Rows[i].Observation].Id, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => rows.Misclosures[g.First()] * source.Observations[compiled.Rows[g.First()].Observation].SigmaMetres,
                StringComparer.Ordinal
            );
        var solver = new NetworkSolver(compiled = NetworkCompiler.Compile(Swollen(source, byReading, scatter)), RigidMotions.Of(compiled));
        var rest = solver.Iterate(start);
        return rest.Summary.IsSolutionUsable && NetworkFinish.Of(solver, rest.X, rest.Summary, false).FitOrNull is { } fit
            ? Descend(source, fit, scatter)
            : null;
    }

    /// <summary>Cauchy's cost of a fit over all readings of a network, those that were left out of the fit included.</summary>
    public static double Cost(NetworkFit fit, Network source)
    {
        var prediction = new Prediction(fit);
        return source
            .Observations.Where(o => o.SigmaMetres > 0)
            .Sum(o => prediction.Of(o) is { } held ? Rest.Robust(held.Difference / o.SigmaMetres) : 0);
    }

    private static NetworkFit Descend(Network source, NetworkFit now, double scatter)
    {
        const double Shrink = 3;
        for (var round = 0; round < Rounds; round++)
        {
            scatter = Math.Max(1, scatter / Shrink);
            var residuals = now.Readings.ToDictionary(r => r.Id, r => r.ResidualMetres, StringComparer.Ordinal);
            if (NetworkAdjustment.SolveNear(Swollen(source, residuals, scatter), now).FitOrNull is not { } next)
            {
                return now;
            }

            now = next;
        }

        return now;
    }

    private static Network Swollen(Network source, Dictionary<string, double> residuals, double scatter) =>
        new(
            source.Points,
            source.Observations.Select(o =>
                o.SigmaMetres > 0
                    ? o with
                    {
                        SigmaMetres = o.SigmaMetres * Math.Sqrt(scatter * scatter + Math.Pow(residuals[o.Id] / (C * o.SigmaMetres), 2)),
                    }
                    : o
            ),
            source.Tools,
            source.MirrorPairs
        );

    private static double Median(List<double> values)
    {
        values.Sort();
        return values.Count > 0 ? values[values.Count / 2] : 0;
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
