namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Weighs the hypotheses against each other and against "nothing is wrong", and says what may be said.</summary>
internal static class BlunderVerdict
{
    // An explanation whose rest still fails this test explains too little.
    private const double StillWrong = 1e-3;

    // Candidates this much less likely than the best are not listed.
    private const double Listed = 100;

    public static BlunderOutcome Of(NetworkFit fit, IReadOnlyList<Hypothesis> hypotheses)
    {
        // "Nothing is wrong" has log odds zero by definition.
        var all = Evidence.Sum(hypotheses.Select(h => h.LogOdds).Append(0));
        var groups = hypotheses
            .GroupBy(h => string.Join('\n', h.Doubted.Select(d => d.Subject).Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Select(g => (Kinds: g.OrderByDescending(h => h.LogOdds).ToList(), LogOdds: Evidence.Sum(g.Select(h => h.LogOdds))))
            .OrderByDescending(g => g.LogOdds)
            .ToList();
        if (groups.Count == 0 || groups[0].LogOdds <= 0)
        {
            return new BlunderOutcome.NothingDoubted();
        }

        var explanations = groups
            .Take(12)
            .Select((g, i) => ToExplanation(g.Kinds, g.LogOdds, all, i + 1 < groups.Count ? Math.Max(0, groups[i + 1].LogOdds) : 0))
            .ToList();
        var best = explanations[0];
        var odds = groups[0].LogOdds - (groups.Count > 1 ? groups[1].LogOdds : double.NegativeInfinity);
        var oddsAgainstNothing = groups[0].LogOdds;
        if (oddsAgainstNothing < Math.Log(BlunderSearch.NamingOdds))
        {
            return new BlunderOutcome.NothingDoubted();
        }

        if (best.FitProbability < StillWrong)
        {
            return new BlunderOutcome.Unexplained(explanations);
        }

        var candidates = explanations.Where(e => e.Probability * Listed >= best.Probability).ToList();
        return odds >= Math.Log(BlunderSearch.NamingOdds) && !IsTied(fit, best)
            ? new BlunderOutcome.Named(best, explanations.Skip(1).ToList())
            : new BlunderOutcome.ProvableNotLocatable(candidates);
    }

    private static Explanation ToExplanation(List<Hypothesis> kinds, double logOdds, double all, double next) =>
        new(
            kinds[0].Doubted,
            Math.Exp(logOdds - all),
            Math.Exp(Math.Min(700, logOdds - next)),
            kinds.Count > 1 ? Math.Exp(Math.Min(700, kinds[0].LogOdds - kinds[1].LogOdds)) : double.PositiveInfinity,
            kinds[0].FitProbability
        );

    // Where residuals are perfectly correlated the readings cannot say which one is wrong, however neatly an exact slip fits one of them.
    private static bool IsTied(NetworkFit fit, Explanation best) =>
        best.Doubted is [{ ReadingId: { } id }] && fit.TiedReadings().Any(g => g.Contains(id));
}
