namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Weighs the hypotheses against each other and against "nothing is wrong", and says what may be said.</summary>
/// <remarks>
/// A reading is named by its own chance of being wrong, summed over every explanation that contains it: whether a second, smaller slip sits elsewhere
/// does not make the first one doubtful.
/// </remarks>
internal sealed class BlunderVerdict
{
    /// <summary>An explanation whose rest still fails the global test at this level explains too little.</summary>
    public const double StillWrong = 1e-3;

    // Candidates this much less likely than the best are not listed, nor more of them than this.
    private const double Listed = 100;
    private const int MostListed = 12;

    private readonly NetworkFit _fit;
    private readonly List<(HashSet<string> Subjects, List<Hypothesis> Kinds, double LogOdds)> _groups;

    private BlunderVerdict(NetworkFit fit, IEnumerable<Hypothesis> hypotheses)
    {
        _fit = fit;
        _groups =
        [
            .. hypotheses
                .GroupBy(h => string.Join('\n', h.Doubted.Select(d => d.Subject).Order(StringComparer.Ordinal)), StringComparer.Ordinal)
                .Select(g =>
                    (
                        g.First().Doubted.Select(d => d.Subject).ToHashSet(StringComparer.Ordinal),
                        g.OrderByDescending(h => h.LogOdds).ToList(),
                        Evidence.Sum(g.Select(h => h.LogOdds))
                    )
                )
                .OrderByDescending(g => g.Item3),
        ];
    }

    public static BlunderOutcome Of(NetworkFit fit, IEnumerable<Hypothesis> hypotheses) => new BlunderVerdict(fit, hypotheses).Outcome();

    private BlunderOutcome Outcome()
    {
        // "Nothing is wrong" has log odds zero by definition.
        if (_groups.Count == 0 || Evidence.Sum(_groups.Select(g => g.LogOdds)) < Math.Log(BlunderSearch.DoubtOdds))
        {
            return new BlunderOutcome.NothingDoubted();
        }

        var explanations = _groups.Take(MostListed).Select(g => Explain(g.Subjects, g.Kinds)).ToList();
        if (_groups[0].Kinds[0].FitProbability < StillWrong)
        {
            return new BlunderOutcome.Unexplained(explanations);
        }

        var named = _groups
            .SelectMany(g => g.Subjects)
            .Distinct(StringComparer.Ordinal)
            .Where(s => LogOddsOf([s]) >= Math.Log(BlunderSearch.NamingOdds));
        var certain = named.Where(s => !IsTied(s)).ToHashSet(StringComparer.Ordinal);
        if (certain.Count > 0 && _groups.FirstOrDefault(g => certain.IsSubsetOf(g.Subjects)).Kinds is { } kinds)
        {
            return new BlunderOutcome.Named(
                Explain(certain, kinds),
                [.. explanations.Where(e => !e.Doubted.All(d => certain.Contains(d.Subject)))]
            );
        }

        var best = explanations[0].Probability;
        return new BlunderOutcome.ProvableNotLocatable([.. explanations.Where(e => e.Probability * Listed >= best)]);
    }

    private Explanation Explain(HashSet<string> subjects, List<Hypothesis> kinds)
    {
        var best = kinds[0].Doubted.Where(d => subjects.Contains(d.Subject)).ToList();
        var other = kinds.Find(h =>
            !h.Doubted.Where(d => subjects.Contains(d.Subject)).Select(d => d.Kind).SequenceEqual(best.Select(d => d.Kind))
        );
        var odds = LogOddsOf(subjects);
        return new Explanation(
            best,
            1 / (1 + Math.Exp(-odds)),
            Math.Exp(Math.Min(700, odds)),
            other is null ? double.PositiveInfinity : Math.Exp(Math.Min(700, kinds[0].LogOdds - other.LogOdds)),
            kinds[0].FitProbability
        );
    }

    // All of these wrong, against not all of them wrong.
    private double LogOddsOf(HashSet<string> subjects)
    {
        var with = Evidence.Sum(_groups.Where(g => subjects.IsSubsetOf(g.Subjects)).Select(g => g.LogOdds));
        return with - Evidence.Sum(_groups.Where(g => !subjects.IsSubsetOf(g.Subjects)).Select(g => g.LogOdds).Append(0));
    }

    // Where residuals are perfectly correlated the readings cannot say which one is wrong, however neatly an exact slip fits one of them.
    private bool IsTied(string subject) =>
        subject.StartsWith("r ", StringComparison.Ordinal)
        && _fit.TiedReadings().Any(g => g.Contains(subject[2..], StringComparer.Ordinal));
}
