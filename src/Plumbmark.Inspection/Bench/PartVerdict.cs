using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>The verdict on one part from all its comparisons.</summary>
/// <remarks>
/// Out: some comparison is out after allowing for how many there were (Holm), or the part is none of the book's types or bent with 0.95. True: every comparison with a
/// limit is true, there is one that tells its shape (or, for a bush, a spring or a pin, its wear), and its type is not in doubt. Otherwise can't tell yet.
/// A difference between left and right alone never says which of the two is bent.
/// </remarks>
/// <param name="Verdict">The verdict.</param>
/// <param name="Out">What is out, beyond doubt.</param>
/// <param name="Open">What is not settled.</param>
/// <param name="EitherSide">Differences between the sides that are out, without a word on which side it is.</param>
internal sealed record PartVerdict(
    Verdict Verdict,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> Out,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> Open,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> EitherSide
)
{
    private const double OutProbability = 0.05;

    public static PartVerdict Of(BenchCase part, IReadOnlyList<DimensionAnswer> dimensions)
    {
        var judged = dimensions
            .SelectMany(d => d.Comparisons.Where(c => c.Limit is not null).Select(c => (d.Value, Comparison: c)))
            .ToList();
        var adjusted = HolmStepDown.Adjusted([.. judged.Select(j => j.Comparison.ProbabilityWithin!.Value)]);
        List<(DimensionValue, Comparison)> outs = [],
            open = [],
            either = [];
        for (var i = 0; i < judged.Count; i++)
        {
            var (value, comparison) = judged[i];
            var isOut = adjusted[i] <= OutProbability;
            if (!isOut && comparison.Verdict != Verdict.True)
            {
                open.Add((value, comparison));
            }
            else if (isOut && comparison.Against == ComparedWith.Mirror)
            {
                SortSideDifference(part, dimensions, (value, comparison), outs, either);
            }
            else if (isOut && comparison.Against == ComparedWith.Book && IsTypeInDoubt(part))
            {
                open.Add((value, comparison));
            }
            else if (isOut)
            {
                outs.Add((value, comparison));
            }
        }

        var bent = part.Variant is { Compared: > 0 } variant && variant.NoneOrBent >= VariantAnswer.Recognised;
        var shape = judged.Any(j => TellsSomething(part.Part.Kind, j.Value) && j.Comparison.Verdict == Verdict.True);
        var verdict =
            outs.Count > 0 || bent ? Verdict.Out
            : open.Count == 0 && either.Count == 0 && shape && !IsTypeInDoubt(part) ? Verdict.True
            : Verdict.CannotTellYet;
        return new PartVerdict(verdict, outs, open, either);
    }

    /// <summary>The book has more than one type, or one that does not fit, and the measures do not say which it is.</summary>
    private static bool IsTypeInDoubt(BenchCase part) =>
        part.Variant is { Compared: > 0 } variant && variant.Type is null && variant.NoneOrBent < VariantAnswer.Recognised;

    // If the book says that this part's dimension is right, the partner's is wrong; if it says so of the partner's, this one is.
    private static void SortSideDifference(
        BenchCase part,
        IReadOnlyList<DimensionAnswer> dimensions,
        (DimensionValue Value, Comparison Comparison) side,
        List<(DimensionValue, Comparison)> outs,
        List<(DimensionValue, Comparison)> either
    )
    {
        if (ByBook(dimensions, side.Value.Dimension) is { } own)
        {
            if (own == Verdict.Out)
            {
                outs.Add(side);
            }
            else if (own == Verdict.CannotTellYet)
            {
                either.Add(side);
            }

            return;
        }

        var partner = part.Partner is { } other ? ByBook(PartComparisons.Of(other with { Partner = null }), side.Value.Dimension) : null;
        (partner == Verdict.True ? outs : either).Add(side);
    }

    private static Verdict? ByBook(IReadOnlyList<DimensionAnswer> dimensions, string dimension) =>
        dimensions
            .FirstOrDefault(d => d.Value.Dimension == dimension)
            ?.Comparisons.FirstOrDefault(c => c.Against == ComparedWith.Book)
            ?.Verdict;

    private static bool TellsSomething(PartKind kind, DimensionValue value) =>
        kind is PartKind.Bush or PartKind.FulcrumPin or PartKind.Trunnion or PartKind.CoilSpring || value.IsBendable;
}
