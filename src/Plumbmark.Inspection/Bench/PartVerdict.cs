using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Bench;

/// <summary>The verdict on one part from all its comparisons.</summary>
/// <remarks>
/// Out: some comparison is out after allowing for how many there were (Holm), or the part is none of the book's types or bent with 0.95. True: every comparison with a
/// limit is true, together they tell its shape (<see cref="ShapeCover"/>; for a bush, a spring or a pin, its wear), and its type is not in doubt. Otherwise can't tell yet.
/// A difference between left and right alone never says which of the two is bent: see <see cref="SideBlame"/>.
/// </remarks>
/// <param name="Verdict">The verdict.</param>
/// <param name="Dimensions">The dimensions, with what is put down to the partner marked.</param>
/// <param name="Out">What is out, beyond doubt.</param>
/// <param name="Open">What is not settled.</param>
/// <param name="EitherSide">Differences between the sides that are out, without a word on which side it is.</param>
/// <param name="Cover">How much of its shape was measured.</param>
internal sealed record PartVerdict(
    Verdict Verdict,
    IReadOnlyList<DimensionAnswer> Dimensions,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> Out,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> Open,
    IReadOnlyList<(DimensionValue Value, Comparison Comparison)> EitherSide,
    ShapeCover Cover
)
{
    private const double OutProbability = 0.05;

    public static PartVerdict Of(BenchCase part)
    {
        var dimensions = SideBlame.Mark(part, PartComparisons.Of(part));
        var judged = dimensions
            .SelectMany(d => d.Comparisons.Where(c => c.Limit is not null && c.PutDownTo is null).Select(c => (d.Value, Comparison: c)))
            .ToList();
        var adjusted = HolmStepDown.Adjusted([.. judged.Select(j => j.Comparison.NotBeyond!.Value)]);
        List<(DimensionValue, Comparison)> outs = [],
            open = [],
            either = [];
        for (var i = 0; i < judged.Count; i++)
        {
            var (_, comparison) = judged[i];
            if (adjusted[i] <= OutProbability)
            {
                var list =
                    comparison.Against == ComparedWith.Mirror && !SideBlame.IsThisOne(part, dimensions, judged[i].Value.Dimension) ? either
                    : comparison.Against == ComparedWith.Book && part.IsTypeInDoubt ? open
                    : outs;
                list.Add(judged[i]);
            }
            else if (comparison.Verdict != Verdict.True)
            {
                open.Add(judged[i]);
            }
        }

        var bent = part.Variant is { Compared: > 0 } variant && variant.NoneOrBent >= VariantAnswer.Recognised;
        var cover = ShapeCover.Of(part, dimensions);
        var verdict =
            outs.Count > 0 || bent ? Verdict.Out
            : open.Count == 0 && either.Count == 0 && cover.IsEnough && !part.IsTypeInDoubt ? Verdict.True
            : Verdict.CannotTellYet;
        return new PartVerdict(verdict, dimensions, outs, open, either, cover);
    }
}
