using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Floor.Contradictions;
using Plumbmark.Inspection.Language;

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
        yield return Texts.Say("floor.contradiction.the-lengths-contradict-each-other");
        foreach (var contradiction in contradictions.Take(MostNamed))
        {
            yield return Of(contradiction, words);
        }

        yield return culprits.Count switch
        {
            0 => Texts.Say("floor.contradiction.more-than-one-of-them"),
            1 => Texts.Say("floor.contradiction.only-reading-takes-part-in", Name(culprits[0]), culprits[0].Id),
            _ => Texts.Say("floor.contradiction.one-of-them-is-wrong", Words.And([.. culprits.Select(Name)])),
        };
    }

    private static string Of(Contradiction contradiction, LengthWords words)
    {
        var (length, around) = (contradiction.Long, contradiction.Around);
        var sum = words.Of(around.Sum(a => a.ValueMetres));
        return around.Count == 1
            ? Texts.Say(
                "floor.contradiction.reads-reading-and-another-time",
                Name(length),
                words.Of(length.ValueMetres),
                length.Id,
                sum,
                around[0].Id
            )
            : Texts.Say(
                "floor.contradiction.reads-yet-together-are-only",
                Name(length),
                words.Of(length.ValueMetres),
                Words.And([.. around.Select(Name)]),
                sum
            );
    }

    /// <summary>A length by its ends.</summary>
    public static string Name(Observation.PlanDistance length) => Texts.Say("floor.contradiction.to", length.From, length.To);

    /// <summary>What to do about a length that may be the wrong one.</summary>
    public static string Again(Observation.PlanDistance length) =>
        Texts.Say("floor.contradiction.measure-again-as-it-stands", Name(length));
}
