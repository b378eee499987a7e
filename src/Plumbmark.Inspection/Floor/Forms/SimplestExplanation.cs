namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>Which explanation is told: the simplest that no richer one beats clearly.</summary>
/// <remarks>
/// A second form beside a first is claimed on the same strength as a first beside nothing, nineteen to one: with dozens of forms and places to add, one
/// of them nearly always improves a fit a little.
/// </remarks>
internal static class SimplestExplanation
{
    /// <summary>Odds that a claim needs: the 95 to 5 of a verdict.</summary>
    public const double OddsToClaim = 19;

    /// <summary>The same explanations, the one to tell first and the rest by belief.</summary>
    public static IReadOnlyList<DamageExplanation> First(IReadOnlyList<DamageExplanation> explanations)
    {
        var chosen = explanations.FirstOrDefault(e => e.Parts.Count == 0) ?? explanations.MinBy(e => e.Parts.Count);
        foreach (var richer in explanations.GroupBy(e => e.Parts.Count).OrderBy(g => g.Key).Select(g => g.MaxBy(e => e.Probability)!))
        {
            var simpler = explanations.Where(e => e.Parts.Count < richer.Parts.Count).Select(e => e.Probability).DefaultIfEmpty(0).Max();
            chosen = richer.Probability >= OddsToClaim * simpler ? richer : chosen;
        }

        return chosen is null ? explanations : [chosen, .. explanations.Where(e => e != chosen)];
    }

    /// <summary>The explanations that do without some part of the first: an addition to it is no rival.</summary>
    public static IEnumerable<DamageExplanation> Rivals(IReadOnlyList<DamageExplanation> explanations) =>
        explanations.Skip(1).Where(e => !explanations[0].Parts.All(p => e.Parts.Any(o => IsSame(o, p))));

    private static bool IsSame(DamagePart a, DamagePart b) => a.Form == b.Form && (a.Form != DamageForm.Point || a.From == b.From);
}
