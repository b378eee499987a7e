namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>The explanations as the answer lists them: the best one's parts, then those nearly as good.</summary>
internal static class DamageReport
{
    private const double NearlyAsGood = 1.0 / 20; // of the best belief

    public static IReadOnlyList<DamageEstimate> Of(IReadOnlyList<DamageExplanation> explanations, LengthWords words)
    {
        if (!IsClaimed(explanations))
        {
            return [];
        }

        var best = explanations[0];
        var rivals = SimplestExplanation.Rivals(explanations).Where(e => e.Parts.Count > 0 && e.Parts.Count <= best.Parts.Count).ToList();
        var second = SimplestExplanation.Rivals(explanations).Select(e => e.Probability).DefaultIfEmpty(0).Max();
        var told = new HashSet<string>(StringComparer.Ordinal);
        return
        [
            .. from explanation in rivals.Where(e => e.Probability >= NearlyAsGood * best.Probability).Prepend(best)
            let odds = explanation.Probability / (explanation == best ? second : best.Probability)
            from part in explanation.Parts
            where !IsLookAlike(part) && told.Add($"{NameOf(part)}:{(part.Form == DamageForm.Point ? part.From : "")}")
            select Estimate(part, odds, words),
        ];
    }

    /// <summary>Whether something, damage or not, must have happened for the readings to come out like this.</summary>
    public static bool IsClaimed(IReadOnlyList<DamageExplanation> explanations) =>
        explanations.Count > 0
        && explanations[0].Parts.Count > 0
        && explanations[0].Probability
            >= SimplestExplanation.OddsToClaim * explanations.Where(e => e.Parts.Count == 0).Sum(e => e.Probability);

    /// <summary>The displacements of the best explanation that move more than one place, when damage is claimed; empty otherwise.</summary>
    public static IReadOnlyList<double[]> MovesOf(IReadOnlyList<DamageExplanation> explanations) =>
        IsClaimed(explanations)
            ? [.. explanations[0].Parts.Where(p => p.Form != DamageForm.Point && !IsLookAlike(p)).SelectMany(p => p.Shape.Moves)]
            : [];

    /// <summary>Whether it explains without damage.</summary>
    public static bool IsLookAlike(DamagePart part) => part.Form is DamageForm.TapeScale or DamageForm.Lean;

    private static DamageEstimate Estimate(DamagePart part, double odds, LengthWords words) =>
        new(NameOf(part), part.AmountMetres, part.UMetres, part.From, odds, DamageWords.Sentence(part, words));

    /// <summary>The form's name in the answer.</summary>
    public static string NameOf(DamagePart part) =>
        part.IsPair ? "pair"
        : part.Form == DamageForm.TapeScale ? "tape-scale"
        : part.Form.ToString().ToLowerInvariant();
}
