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
    private readonly Network _network;
    private readonly IReadOnlyDictionary<string, List<Alternative>> _alternatives;
    private readonly Dictionary<string, int> _place;

    public ReadingTrials(NetworkFit fit, IReadOnlyDictionary<string, List<Alternative>> alternatives)
    {
        (_fit, _network, _alternatives) = (fit, fit.State.Network.Source, alternatives);
        _place = _network.Observations.Select((o, i) => (o.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
    }

    /// <summary>A way in which a reading may have been meant: how it differs then, and its prior.</summary>
    private sealed record Meaning(Doubted Doubted, Prediction.Held Held, double FreeVariance, double LogPrior);

    /// <summary>Hypotheses that one reading is wrong, with the fit that leaves it out; null when nothing checks the reading.</summary>
    public (NetworkFit Fit, List<Hypothesis> Hypotheses)? One(Observation reading)
    {
        if (NetworkAdjustment.SolveNear(_network.Without(reading.Id), _fit) is not NetworkOutcome.Adjusted { Fit: var fit })
        {
            return null;
        }

        var prediction = new Prediction(fit);
        if (prediction.Of(reading) is not { } held)
        {
            return null;
        }

        var gain = _fit.WeightedSquares - fit.WeightedSquares;
        var s = prediction.Variance(held);
        var hypotheses = Meanings(reading, prediction, held)
            .GroupBy(m => m.Doubted)
            .Select(g => new Hypothesis(
                [g.Key],
                Evidence.Sum(
                    g.Select(m => m.LogPrior + Evidence.Of(gain, s, m.Held.Difference, prediction.Variance(m.Held), m.FreeVariance))
                ),
                fit.ChiSquareProbability
            ))
            .ToList();
        return (fit, hypotheses);
    }

    /// <summary>Hypotheses that both readings are wrong.</summary>
    public List<Hypothesis> Two(Observation first, Observation second)
    {
        var left = _network.Without(first.Id).Without(second.Id);
        if (NetworkAdjustment.SolveNear(left, _fit) is not NetworkOutcome.Adjusted { Fit: var fit })
        {
            return [];
        }

        var prediction = new Prediction(fit);
        if (prediction.Of(first) is not { } a || prediction.Of(second) is not { } b)
        {
            return [];
        }

        var gain = _fit.WeightedSquares - fit.WeightedSquares;
        var s = (prediction.Variance(a), prediction.Covariance(a, b), prediction.Variance(b));
        double LogEvidence(Meaning x, Meaning y) =>
            Evidence.Of(
                gain,
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
                    yield return new Meaning(doubted, meant, 0, LogPrior(group.Key, group.Count()));
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
