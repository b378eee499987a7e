using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Forms;

/// <summary>
/// Where the readings say that one of a pair is bent and not which, the two explanations become one that says so: symmetry alone can name a
/// bent pair, never which of its two points moved.
/// </summary>
internal static class PairsNotToldApart
{
    // Fewer than twenty to one is no reason to point at one side: the strength asked of a verdict, 95 to 5.
    private const double OddsToTellSides = 19;

    public static IReadOnlyList<DamageExplanation> Merge(MeasuredFrame frame, IReadOnlyList<DamageExplanation> explanations)
    {
        var merged = new List<DamageExplanation>();
        var used = new HashSet<DamageExplanation>(ReferenceEqualityComparer.Instance);
        foreach (var explanation in explanations)
        {
            if (!used.Add(explanation))
            {
                continue;
            }

            var current = explanation;
            for (var i = 0; i < explanation.Parts.Count; i++)
            {
                if (PairOf(frame, current.Parts[i]) is not { } pair)
                {
                    continue;
                }

                // Rivals: everything alike but for the side of this part.
                var rivals = explanations
                    .Where(e => !used.Contains(e) && e.Parts.Count == current.Parts.Count && AreAlikeButForSide(e, explanation, i, pair))
                    .ToList();
                var belief = rivals.Sum(r => r.Probability);
                if (belief * OddsToTellSides <= explanation.Probability)
                {
                    continue;
                }

                rivals.ForEach(r => used.Add(r));
                var parts = current.Parts.ToArray();
                parts[i] = parts[i] with
                {
                    From = pair.Name,
                    IsPair = true,
                    Pair = (frame.Points[pair.Left].Id, frame.Points[pair.Right].Id),
                };
                current = new DamageExplanation(parts, current.Probability + belief);
            }

            merged.Add(current);
        }

        return [.. merged.OrderByDescending(e => e.Probability)];
    }

    private static FramePair? PairOf(MeasuredFrame frame, DamagePart part) =>
        part.Form == DamageForm.Point ? frame.Pairs.FirstOrDefault(p => p.Left == part.Subject || p.Right == part.Subject) : null;

    private static bool AreAlikeButForSide(DamageExplanation rival, DamageExplanation of, int part, FramePair pair)
    {
        var rest = of.Parts.Where((_, i) => i != part).Select(p => (p.Form, p.Subject)).ToHashSet();
        var partner = of.Parts[part].Subject == pair.Left ? pair.Right : pair.Left;
        return rival.Parts.Any(p => p.Form == DamageForm.Point && p.Subject == partner)
            && rival.Parts.Where(p => !(p.Form == DamageForm.Point && p.Subject == partner)).All(p => rest.Contains((p.Form, p.Subject)));
    }
}
