using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Floor.Contradictions;

namespace Plumbmark.Inspection.Floor;

/// <summary>Lengths that fit no figure, in trade words.</summary>
internal static class ContradictionWords
{
    private const int MostNamed = 3; // contradictions; the rest of them tell the same

    /// <summary>What contradicts what, and what to measure again first.</summary>
    public static IEnumerable<string> Of(
        IReadOnlyList<Contradiction> contradictions,
        IReadOnlyList<Observation.PlanDistance> culprits,
        LengthWords words
    )
    {
        yield return "The lengths contradict each other so far that no figure fits them.";
        foreach (var contradiction in contradictions.Take(MostNamed))
        {
            yield return Of(contradiction, words);
        }

        yield return culprits.Count switch
        {
            0 => "More than one of them must be wrong: measure these again first.",
            1 => $"Only {Name(culprits[0])} (reading {culprits[0].Id}) takes part in all of it: measure it again.",
            _ => $"One of them is wrong, and nothing says which: measure {Words.And([.. culprits.Select(Name)])} again.",
        };
    }

    private static string Of(Contradiction contradiction, LengthWords words)
    {
        var (length, around) = (contradiction.Long, contradiction.Around);
        var sum = words.Of(around.Sum(a => a.ValueMetres));
        return around.Count == 1
            ? $"{Name(length)} reads {words.Of(length.ValueMetres)} (reading {length.Id}), and {sum} another time (reading {around[0].Id})."
            : $"{Name(length)} reads {words.Of(length.ValueMetres)}, yet {Words.And([.. around.Select(Name)])} together are only {sum}; no straight length is longer than the way round.";
    }

    /// <summary>A length by its ends.</summary>
    public static string Name(Observation.PlanDistance length) => $"{length.From} to {length.To}";

    /// <summary>What to do about a length that may be the wrong one.</summary>
    public static string Again(Observation.PlanDistance length) =>
        $"Measure {Name(length)} again: as it stands it fits no figure with the others.";
}
