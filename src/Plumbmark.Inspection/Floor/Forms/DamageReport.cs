namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>The explanations as the answer lists them: the best one's parts, then those nearly as good.</summary>
internal static class DamageReport
{
    private const double NearlyAsGood = 1.0 / 20; // of the best belief

    public static IReadOnlyList<DamageEstimate> Of(IReadOnlyList<DamageExplanation> explanations, LengthWords words)
    {
        if (explanations.Count == 0 || explanations[0].Parts.Count == 0)
        {
            return [];
        }

        var best = explanations[0];
        var second = explanations.Count > 1 ? explanations[1].Probability : 0;
        var list = new List<DamageEstimate>();
        foreach (var explanation in explanations.TakeWhile(e => e.Probability >= NearlyAsGood * best.Probability))
        {
            var odds = explanation.Probability / (explanation == best ? second : best.Probability);
            list.AddRange(explanation.Parts.Where(p => !IsLookAlike(p)).Select(p => Estimate(p, odds, words)));
        }

        return list;
    }

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
