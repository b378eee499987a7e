namespace Plumbmark.Engine.Uncertainty;

/// <summary>Propagates distributions through any calculation by trying it often. Linear propagation is faster; this one checks it.</summary>
/// <remarks>JCGM 101:2008, clause 7, with a fixed number of trials and an explicit seed: the same call gives the same digits.</remarks>
public static class MonteCarlo
{
    /// <summary>Enough for a 95 % interval to one or two significant digits (JCGM 101:2008, 7.2.1 advises a million for two).</summary>
    public const int UsualTrials = 100_000;

    /// <summary>One trial of several results: draws its inputs from the stream and fills in what follows, each in its own unit; NaN where nothing does.</summary>
    public delegate void Trial(RandomStream draw, Span<double> results);

    /// <summary>Propagates to one result.</summary>
    /// <param name="trial">Draws its inputs from the stream and returns what follows; NaN where nothing does.</param>
    /// <param name="trials">M, at least 2.</param>
    /// <param name="seed">Names the random numbers.</param>
    public static MonteCarloOutcome Propagate(Func<RandomStream, double> trial, int trials, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return Propagate((draw, results) => results[0] = trial(draw), results: 1, trials, seed)[0];
    }

    /// <summary>Propagates to several results of the same trials.</summary>
    /// <param name="trial">One trial.</param>
    /// <param name="results">How many results a trial has.</param>
    /// <param name="trials">M, at least 2.</param>
    /// <param name="seed">Names the random numbers.</param>
    public static IReadOnlyList<MonteCarloOutcome> Propagate(Trial trial, int results, int trials, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentOutOfRangeException.ThrowIfLessThan(results, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 2);
        var draw = new RandomStream(seed);
        var values = Enumerable.Range(0, results).Select(_ => new double[trials]).ToArray();
        var row = new double[results];
        for (var m = 0; m < trials; m++)
        {
            row.AsSpan().Fill(double.NaN);
            trial(draw, row);
            for (var i = 0; i < results; i++)
            {
                values[i][m] = row[i];
            }
        }

        return [.. values.Select(OutcomeOf)];
    }

    private static MonteCarloOutcome OutcomeOf(double[] values)
    {
        var undefined = values.Count(y => !double.IsFinite(y));
        return undefined > 0
            ? new MonteCarloOutcome.Undefined(undefined, values.Length)
            : new MonteCarloOutcome.Propagated(new OutputDistribution(values));
    }
}
