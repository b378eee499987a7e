namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>Hypotheses about one reading or two: the network is solved without them, and they are held against it in every way they may have been meant.</summary>
/// <remarks>
/// The network is solved afresh for each trial: tens of millimetres are not linear. Weak combinations of two slips are left out early.
/// </remarks>
internal sealed class ReadingTrials
{
    // A meaning this much less likely than the best of its reading decides nothing (ln of a million).
    private const double Negligible = 14;

    private readonly NetworkFit _fit;
    private readonly NetworkFit _near;
    private readonly Dictionary<string, (NetworkFit Fit, List<Hypothesis> Hypotheses)> _ones = new(StringComparer.Ordinal);
    private readonly Network _network;
    private readonly IReadOnlyDictionary<string, List<Alternative>> _alternatives;
    private readonly Dictionary<string, int> _place;
    private readonly Evidence _evidence;

    /// <param name="fit">The fit of all readings.</param>
    /// <param name="near">Where to start from: a robust fit.</param>
    /// <param name="alternatives">What each reading may have been meant to be.</param>
    public ReadingTrials(NetworkFit fit, NetworkFit near, IReadOnlyDictionary<string, List<Alternative>> alternatives)
    {
        (_fit, _near, _network, _alternatives) = (fit, near, fit.State.Network.Source, alternatives);
        _evidence = new Evidence(fit.WeightedSquares, fit.Redundancy);
        _place = _network.Observations.Select((o, i) => (o.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
    }

    /// <summary>A way in which a reading may have been meant: how it differs then, and its prior.</summary>
    private sealed record Meaning(Doubted Doubted, Prediction.Held Held, double FreeVariance, double LogPrior);

    /// <summary>All hypotheses about one reading, from the best fit found without each.</summary>
    public IEnumerable<Hypothesis> Ones => _ones.Values.SelectMany(o => o.Hypotheses);

    /// <summary>Tries one reading; null when nothing checks it. Tried again from another fit, the better result is kept.</summary>
    public NetworkFit? One(Observation reading, NetworkFit? near = null)
    {
        var tried = _ones.TryGetValue(reading.Id, out var known) ? known.Fit : null;
        if (Without([reading.Id], near ?? _near) is not { } fit || tried?.WeightedSquares <= fit.WeightedSquares)
        {
            return tried;
        }

        var prediction = new Prediction(fit);
        if (prediction.Of(reading) is not { } held)
        {
            return null;
        }

        var s = prediction.Variance(held);
        var hypotheses = Meanings(reading, prediction, held)
            .GroupBy(m => m.Doubted)
            .Select(g => new Hypothesis(
                [g.Key],
                Evidence.Sum(
                    g.Select(m =>
                        m.LogPrior + _evidence.Of(fit.WeightedSquares, s, m.Held.Difference, prediction.Variance(m.Held), m.FreeVariance)
                    )
                ),
                fit.ChiSquareProbability
            ))
            .ToList();
        _ones[reading.Id] = (fit, hypotheses);
        return fit;
    }

    /// <summary>Hypotheses that both readings are wrong.</summary>
    public List<Hypothesis> Two(Observation first, Observation second)
    {
        if (Without([first.Id, second.Id], _near) is not { } fit)
        {
            return [];
        }

        if (!(fit.ChiSquareProbability < BlunderVerdict.StillWrong))
        {
            // From a figure that fits, one of the two may turn out to be enough.
            One(first, fit);
            One(second, fit);
        }

        var prediction = new Prediction(fit);
        if (prediction.Of(first) is not { } a || prediction.Of(second) is not { } b)
        {
            return [];
        }

        var s = (prediction.Variance(a), prediction.Covariance(a, b), prediction.Variance(b));
        double LogEvidence(Meaning x, Meaning y) =>
            _evidence.Of(
                fit.WeightedSquares,
                s,
                (x.Held.Difference, y.Held.Difference),
                (prediction.Variance(x.Held), prediction.Covariance(x.Held, y.Held), prediction.Variance(y.Held)),
                (x.FreeVariance, y.FreeVariance)
            );
        var pairs =
            from x in Plausible(prediction, Meanings(first, prediction, a))
            from y in Plausible(prediction, Meanings(second, prediction, b))
            select (x, y);
        return
        [
            .. pairs
                .GroupBy(p => (p.x.Doubted, p.y.Doubted))
                .Select(g => new Hypothesis(
                    [g.Key.Item1, g.Key.Item2],
                    Evidence.Sum(g.Select(p => p.x.LogPrior + p.y.LogPrior + LogEvidence(p.x, p.y))),
                    fit.ChiSquareProbability
                )),
            .. Swapped(first, second, prediction, LogEvidence).Select(h => h with { FitProbability = fit.ChiSquareProbability }),
        ];
    }

    // Null when one of the readings alone tied something: then nothing checks it.
    private NetworkFit? Without(string[] ids, NetworkFit near)
    {
        var left = new Network(
            _network.Points,
            _network.Observations.Where(o => !ids.Contains(o.Id)),
            _network.Tools,
            _network.MirrorPairs
        );
        var fit = NetworkAdjustment.SolveNear(left, near).FitOrNull;
        return fit?.Redundancy == _fit.Redundancy - ids.Length ? fit : null;
    }

    private IEnumerable<Meaning> Meanings(Observation reading, Prediction prediction, Prediction.Held held)
    {
        var free = new Doubted(reading.Id, null, BlunderKind.FreeAmount, held.Difference, null);
        var sizes = BlunderPriors.FreeSizesMetres;
        foreach (var size in sizes)
        {
            yield return new Meaning(free, held, size * size, LogPrior(BlunderKind.FreeAmount, sizes.Count));
        }

        var alternatives = _alternatives.GetValueOrDefault(reading.Id, []);
        foreach (var group in alternatives.GroupBy(a => a.Kind))
        {
            foreach (var alternative in group)
            {
                if (prediction.Of(alternative.Believed) is { } meant)
                {
                    // Observed − believed: by how much the number moved, or, for other points, what the fit says of the difference.
                    var size = reading.ValueMetres - alternative.Believed.ValueMetres;
                    size = size is 0 ? held.Difference - meant.Difference : size;
                    var doubted = new Doubted(reading.Id, null, group.Key, size, alternative.Believed);
                    yield return new Meaning(doubted, meant, 0, LogPrior(group.Key, group.Count()) + Math.Log(alternative.Weight));
                }
            }
        }
    }

    private static double LogPrior(BlunderKind kind, int sharedBy) =>
        Math.Log(BlunderPriors.Reading * BlunderPriors.Share(kind) / sharedBy);

    // Of many meanings only a few can matter once the other reading is out too.
    private static List<Meaning> Plausible(Prediction prediction, IEnumerable<Meaning> meanings)
    {
        var scored = meanings
            .Select(m =>
            {
                var variance = prediction.Variance(m.Held) + m.FreeVariance;
                return (Meaning: m, Score: m.LogPrior - 0.5 * Math.Log(variance) - 0.5 * m.Held.Difference * m.Held.Difference / variance);
            })
            .ToList();
        var best = scored.Max(m => m.Score);
        return [.. scored.Where(m => m.Score > best - Negligible).Select(m => m.Meaning)];
    }

    private IEnumerable<Hypothesis> Swapped(
        Observation first,
        Observation second,
        Prediction prediction,
        Func<Meaning, Meaning, double> logEvidence
    )
    {
        if (first.GetType() != second.GetType())
        {
            yield break;
        }

        var (a, b) = (first with { ValueMetres = second.ValueMetres }, second with { ValueMetres = first.ValueMetres });
        if (prediction.Of(a) is { } x && prediction.Of(b) is { } y)
        {
            var rows = Math.Abs(_place[first.Id] - _place[second.Id]);
            var prior = Math.Log(BlunderPriors.RowsSwapped(rows, _network.Observations.Count));
            var one = new Doubted(first.Id, null, BlunderKind.RowsSwapped, first.ValueMetres - second.ValueMetres, a);
            var other = new Doubted(second.Id, null, BlunderKind.RowsSwapped, second.ValueMetres - first.ValueMetres, b);
            yield return new Hypothesis([one, other], prior + logEvidence(new Meaning(one, x, 0, 0), new Meaning(other, y, 0, 0)), null);
        }
    }
}
