using System.Diagnostics;

namespace Plumbmark.Testing.Fuzzing;

/// <summary>Tries a parser with a great many inputs.</summary>
public static class FuzzRun
{
    private const double LongestMilliseconds = 1000;

    /// <summary>What came of it.</summary>
    /// <param name="Subject">What was tried.</param>
    /// <param name="Inputs">Inputs tried.</param>
    /// <param name="Accepted">Inputs that were still good.</param>
    /// <param name="SlowestMilliseconds">The longest that one took.</param>
    /// <param name="Findings">One for each kind of failure, with the first input that showed it.</param>
    public sealed record Outcome(
        string Subject,
        long Inputs,
        long Accepted,
        double SlowestMilliseconds,
        IReadOnlyDictionary<string, byte[]> Findings
    );

    /// <summary>Tries that many inputs; the same seed makes the same inputs.</summary>
    public static Outcome Run(FuzzSubject subject, long inputs, int seed)
    {
        var mutator = new Mutator(subject.Good, subject.Words);
        var random = new Random(seed);
        var (accepted, slowest) = (0L, 0.0);
        var findings = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var good in subject.Good)
        {
            if (One(subject, good, ref slowest) is { } broken)
            {
                findings.TryAdd($"good example: {broken.Wrong}", good);
            }
        }

        for (var i = 0L; i < inputs; i++)
        {
            var input = mutator.Next(random);
            var before = slowest;
            if (One(subject, input, ref slowest) is { } broken)
            {
                findings.TryAdd(broken.Wrong, input);
            }
            else
            {
                accepted += s_wasAccepted ? 1 : 0;
            }

            // A pause of the machine is not the parser's: only what is slow again counts.
            if (slowest > LongestMilliseconds && slowest > before)
            {
                var again = 0.0;
                One(subject, input, ref again);
                slowest = Math.Max(before, again);
                if (again > LongestMilliseconds)
                {
                    findings.TryAdd("slower than a second", input);
                }
            }
        }

        return new Outcome(subject.Name, inputs, accepted, slowest, findings);
    }

    [ThreadStatic]
    private static bool s_wasAccepted;

    private static (string Wrong, bool Accepted)? One(FuzzSubject subject, byte[] input, ref double slowest)
    {
        var began = Stopwatch.GetTimestamp();
        try
        {
            var (accepted, wrong) = subject.Try(input);
            s_wasAccepted = accepted;
            return wrong is null ? null : (wrong, accepted);
        }
        catch (Exception e)
        {
            var where = e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Plumbmark", StringComparison.Ordinal))?.Trim();
            return ($"{e.GetType().Name} {where}", false);
        }
        finally
        {
            slowest = Math.Max(slowest, Stopwatch.GetElapsedTime(began).TotalMilliseconds);
        }
    }
}
