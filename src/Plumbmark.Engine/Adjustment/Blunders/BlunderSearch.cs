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
    public const double NamingOdds = 10;

    private const double GlobalTest = 0.05;
    private const int FirstLeads = 10;
    private const int SecondStarts = 4;
    private const int SecondLeads = 6;

    /// <summary>Looks for blunders behind a fit.</summary>
    /// <param name="fit">The fit of all readings.</param>
    /// <param name="more">Meanings beyond <see cref="NumericSlips"/>, such as <see cref="LengthSlips"/> of the text as typed.</param>
    public static BlunderOutcome Of(NetworkFit fit, IEnumerable<Alternative>? more = null)
    {
        var drops = DropTrials.Of(fit).ToList();
        var isFitSuspicious = IsSuspicious(fit);
        if (!isFitSuspicious && !drops.Exists(d => d.LogOdds > 0))
        {
            return new BlunderOutcome.NothingDoubted();
        }

        var hypotheses = isFitSuspicious ? OfTheFit(fit, more ?? []) : [];
        return BlunderVerdict.Of(fit, [.. hypotheses, .. drops, .. Together(hypotheses, drops)]);
    }

    private static bool IsSuspicious(NetworkFit fit) =>
        fit.Redundancy > 0 && (fit.ChiSquareProbability < GlobalTest || Leads.Largest(fit) > Detection.CriticalValue);

    private static List<Hypothesis> OfTheFit(NetworkFit fit, IEnumerable<Alternative> more)
    {
        var leads = Leads.Of(fit, FirstLeads);
        var trials = new ReadingTrials(fit, Alternatives(fit, more));
        var hypotheses = new PointTrials(fit).All().ToList();
        var left = new List<(Observation Reading, NetworkFit Fit, double Best)>();
        foreach (var reading in leads)
        {
            if (trials.One(reading) is { } one)
            {
                hypotheses.AddRange(one.Hypotheses);
                left.Add((reading, one.Fit, one.Hypotheses.Max(h => h.LogOdds)));
            }
        }

        var tried = new HashSet<(string, string)>();
        foreach (var (first, rest, _) in left.Where(l => IsSuspicious(l.Fit)).OrderByDescending(l => l.Best).Take(SecondStarts))
        {
            foreach (var second in Leads.Of(rest, SecondLeads).Take(SecondLeads))
            {
                var key = string.CompareOrdinal(first.Id, second.Id) < 0 ? (first.Id, second.Id) : (second.Id, first.Id);
                hypotheses.AddRange(tried.Add(key) ? trials.Two(first, second) : []);
            }
        }

        return hypotheses;
    }

    private static Dictionary<string, List<Alternative>> Alternatives(NetworkFit fit, IEnumerable<Alternative> more)
    {
        var network = fit.State.Network.Source;
        return network
            .Observations.SelectMany(o => NumericSlips.Of(o, network))
            .Concat(more)
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
