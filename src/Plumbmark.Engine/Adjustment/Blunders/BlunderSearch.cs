namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Looks for what is wrong when readings contradict each other: which reading or point, and by which slip.</summary>
/// <remarks>
/// <para>Alternatives compete by prior times evidence (<see cref="Evidence"/>): one reading off by an exact slip or by a free amount, other points or kind meant,
/// one point wrong, and any two of these. An exact slip has no free number and so beats a free amount whenever it fits.</para>
/// <para>Nothing is named unless a test asks for it (the global test at 5 % or a standardised residual beyond 3.29) and the best explanation is at least
/// <see cref="NamingOdds"/> times likelier than any other, "nothing is wrong" included.</para>
/// </remarks>
public static class BlunderSearch
{
    /// <summary>Odds against the next best explanation from which one is named.</summary>
    public const double NamingOdds = 6;

    /// <summary>Odds that anything is wrong at all from which the reader is told so.</summary>
    public const double DoubtOdds = 2;

    private const double GlobalTest = 0.05;
    private const int FirstLeads = 10;
    private const int SecondStarts = 4;
    private const int SecondLeads = 6;

    /// <summary>Looks for blunders behind a fit.</summary>
    /// <param name="fit">The fit of all readings.</param>
    /// <param name="hints">What is known beyond the numbers: meanings of the text as typed, units, hole diameters.</param>
    public static BlunderOutcome Of(NetworkFit fit, BlunderHints? hints = null)
    {
        var drops = DropTrials.Of(fit).ToList();
        var isFitSuspicious = IsSuspicious(fit);
        if (!isFitSuspicious && !drops.Exists(d => d.LogOdds > 0))
        {
            return new BlunderOutcome.NothingDoubted();
        }

        var hypotheses = isFitSuspicious ? OfTheFit(fit, hints ?? BlunderHints.None) : [];
        return BlunderVerdict.Of(fit, [.. hypotheses, .. drops, .. Together(hypotheses, drops)]);
    }

    private static bool IsSuspicious(NetworkFit fit) =>
        fit.Redundancy > 0 && (fit.ChiSquareProbability < GlobalTest || Leads.Largest(fit) > Detection.CriticalValue);

    private static List<Hypothesis> OfTheFit(NetworkFit fit, BlunderHints hints)
    {
        var robust = RobustView.Of(fit);
        var alternatives = Alternatives(fit, hints);
        var points = new PointTrials(fit).All().ToList();
        var hypotheses = OfReadings(fit, robust, new ReadingTrials(fit, robust, alternatives));

        // An error of metres may have folded the figure over, and every trial started from the fold.
        const double Metres = 0.2;
        var best = hypotheses.MaxBy(h => h.LogOdds);
        var isFolded =
            hypotheses.Concat(points).All(h => h.FitProbability < BlunderVerdict.StillWrong)
            || best?.Doubted.Any(d => Math.Abs(d.SizeMetres) > Metres) is true;
        return isFolded && Unfolded(fit, robust) is { } unfolded
            ? [.. points, .. OfReadings(fit, unfolded, new ReadingTrials(fit, unfolded, alternatives))]
            : [.. points, .. hypotheses];
    }

    // The best figure that any start leads to when one of the readings most distrusted is left out, or when the sketch says what is far off.
    private static NetworkFit? Unfolded(NetworkFit fit, NetworkFit robust)
    {
        const int Tries = 6;
        var source = fit.State.Network.Source;
        return RobustView
            .Leads(robust, source, Tries)
            .Concat(Leads.Of(fit, Tries))
            .DistinctBy(o => o.Id)
            .Take(Tries)
            .Select(lead => NetworkAdjustment.Solve(source.Without(lead.Id), robust).FitOrNull)
            .Append(RobustView.OfSketch(source))
            .OfType<NetworkFit>()
            .MinBy(f => RobustView.Cost(f, source));
    }

    private static List<Hypothesis> OfReadings(NetworkFit fit, NetworkFit robust, ReadingTrials trials)
    {
        var hypotheses = new List<Hypothesis>();
        var distrusted = RobustView
            .Leads(robust, fit.State.Network.Source, FirstLeads)
            .Where(o => fit.Reading(o.Id).Standardised is not null)
            .ToList();
        var left = new List<(Observation Reading, NetworkFit Others)>();
        foreach (var reading in distrusted.Concat(Leads.Of(fit, FirstLeads)).DistinctBy(o => o.Id))
        {
            if (trials.One(reading) is { } rest)
            {
                left.Add((reading, rest));
            }
        }

        var tried = new HashSet<(string, string)>();
        void Try(Observation a, Observation b)
        {
            var key = string.CompareOrdinal(a.Id, b.Id) < 0 ? (a.Id, b.Id) : (b.Id, a.Id);
            hypotheses.AddRange(tried.Add(key) ? trials.Two(a, b) : []);
        }

        foreach (var (a, b) in RobustView.Exchanged(robust, distrusted))
        {
            Try(a, b);
        }

        foreach (var (first, rest) in left.Where(l => IsSuspicious(l.Others)).OrderBy(l => l.Others.WeightedSquares).Take(SecondStarts))
        {
            foreach (var second in Leads.Of(rest, SecondLeads).Take(SecondLeads))
            {
                Try(first, second);
            }
        }

        return [.. trials.Ones, .. hypotheses];
    }

    private static Dictionary<string, List<Alternative>> Alternatives(NetworkFit fit, BlunderHints hints)
    {
        var network = fit.State.Network.Source;
        return network
            .Observations.SelectMany(o => NumericSlips.Of(o, network, hints))
            .Concat(hints.Meanings)
            .GroupBy(a => a.Believed.Id, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Distinct().ToList(), StringComparer.Ordinal);
    }

    // Drops are judged by drops alone, so a stray drop and a wrong length are independent: their odds multiply.
    private static IEnumerable<Hypothesis> Together(List<Hypothesis> hypotheses, List<Hypothesis> drops)
    {
        const int Best = 20;
        return from drop in drops
            where drop.LogOdds > 0
            from other in hypotheses.Where(h => h.Doubted.Count == 1).OrderByDescending(h => h.LogOdds).Take(Best)
            select new Hypothesis([.. other.Doubted, .. drop.Doubted], other.LogOdds + drop.LogOdds, other.FitProbability);
    }
}
