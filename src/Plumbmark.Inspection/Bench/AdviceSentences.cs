using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The sentences of advice, all in one place.</summary>
internal sealed class AdviceSentences(BenchCase part)
{
    private const int MostNext = 5;

    private BenchText Text => part.Text;

    public IEnumerable<string> Out(PartVerdict verdict)
    {
        foreach (var (value, comparison) in verdict.Out.OrderBy(o => o.Comparison.ProbabilityWithin))
        {
            yield return Sentence(value, comparison);
        }

        if (verdict.Out.Count == 0 && verdict.Verdict == Verdict.Out)
        {
            yield return Texts.Say("bench.advice.its-dimensions-fit-none-of");
        }
    }

    public IEnumerable<string> WrongType(VariantOdds type, PartVerdict verdict)
    {
        var fitted = part.Variant!.Odds.First(o => o.IsFittedToThisCar == true).Variant.Name;
        var straight = type.Straight >= VariantAnswer.Recognised;
        yield return straight
            ? Texts.Say("bench.advice.it-is-not-bent-it", type.Variant.Name, fitted)
            : Texts.Say("bench.advice.it-is-the-bent-and", type.Variant.Name, fitted);
        yield return Texts.Say("bench.advice.a-serial-match-is-evidence");
        foreach (var sentence in straight ? [] : Out(verdict))
        {
            yield return sentence;
        }
    }

    public IEnumerable<string> Kept(PartVerdict verdict)
    {
        var dimensions = verdict.Dimensions;
        var judged = dimensions.Count(d => d.Comparisons.Any(c => c.Verdict == Verdict.True));
        yield return judged switch
        {
            1 => Texts.Say("bench.advice.the-one-dimension-with-a"),
            2 => Texts.Say("bench.advice.both-dimensions-with-a-limit"),
            _ => Texts.Say("bench.advice.all-dimensions-with-a-limit", judged),
        };
        if (part.Variant?.Type is { } type)
        {
            yield return Texts.Say("bench.advice.it-is-the", type.Variant.Name);
        }

        foreach (var pair in part.OpenPairs)
        {
            yield return pair.Sentence;
        }

        var shape = dimensions.Where(d => d.Value.IsPaired).SelectMany(d => d.Comparisons).Where(c => c.Verdict is not null).ToList();
        if (shape.Count > 0 && shape.All(c => c.Against == ComparedWith.Mirror))
        {
            yield return Texts.Say("bench.advice.its-lengths-and-heights-were");
        }

        if (dimensions.SelectMany(d => d.Comparisons).FirstOrDefault(c => c.PutDownTo is not null) is { } other)
        {
            yield return Texts.Say("bench.advice.what-differs-from-is-put", other.PutDownTo);
        }

        foreach (var past in Past(part.Part))
        {
            yield return past;
        }

        foreach (var dimension in dimensions.Where(d => d.Comparisons.All(c => c.Verdict is null)))
        {
            yield return Texts.Say("bench.advice.was-measured-but-no-limit", DimensionWords.Capital(dimension.Value.Dimension));
        }

        if (verdict.Cover.Missing.Count > 0)
        {
            yield return Texts.Say("bench.advice.every-figure-of-the-book", Listed(verdict.Cover.Missing.Select(g => g.What)));
        }
    }

    private static string Listed(IEnumerable<string> things)
    {
        List<string> all = [.. things];
        return all.Count == 1 ? all[0] : Texts.Say("bench.advice.and", string.Join(", ", all.Take(all.Count - 1)), all[^1]);
    }

    /// <summary>What was done to a part that measures true, and what no dimension shows of it.</summary>
    private static IEnumerable<string> Past(Part part)
    {
        if (part.Is(PartCondition.PressedBefore))
        {
            yield return Texts.Say("bench.advice.it-was-straightened-before-look");
        }

        if (part.Is(PartCondition.Heated))
        {
            yield return Texts.Say("bench.advice.it-was-heated-it-measures");
        }

        if (part.Is(PartCondition.Welded))
        {
            yield return Texts.Say("bench.advice.it-was-welded-where-the");
        }

        if (part.Is(PartCondition.ThreadDamaged))
        {
            yield return Texts.Say("bench.advice.a-thread-or-seat-is");
        }
    }

    public IEnumerable<string> Open(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions)
    {
        if (dimensions.Count == 0)
        {
            yield return part.Reduction.Wanting.Count == 0
                ? Texts.Say("bench.advice.nothing-has-been-measured-on")
                : Texts.Say("bench.advice.what-was-measured-is-not");
            yield break;
        }

        foreach (var (value, comparison) in verdict.EitherSide)
        {
            yield return Sentence(value, comparison) + Texts.Say("bench.advice.which-of-the-two-is");
        }

        foreach (var pair in part.OpenPairs)
        {
            yield return pair.Sentence;
        }

        foreach (var (value, comparison) in verdict.Open)
        {
            yield return Sentence(value, comparison);
        }

        if (dimensions.All(d => d.Comparisons.All(c => c.Limit is null)))
        {
            yield return Texts.Say("bench.advice.no-limit-is-known-for");
        }
        else if (verdict.Cover is { IsEnough: false, Told.Count: > 0, Missing.Count: > 0 } cover)
        {
            yield return Texts.Say(
                "bench.advice.only-measured-and-found-true",
                Listed(cover.Told.Select(DimensionWords.Name)),
                cover.Told.Count == 1 ? Texts.Say("bench.advice.was") : Texts.Say("bench.advice.were"),
                Listed(cover.Missing.Select(g => g.What))
            );
        }
        else if (verdict.Open.Count + verdict.EitherSide.Count == 0 && !part.IsTypeInDoubt)
        {
            yield return Texts.Say("bench.advice.what-was-measured-does-not");
        }
    }

    public IEnumerable<string> MeasureNext(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions) =>
        Next(verdict, dimensions).Distinct(StringComparer.Ordinal).Take(MostNext);

    public static string Worn(DimensionValue value) =>
        value.Nature switch
        {
            DimensionNature.Clearance => Texts.Say("bench.advice.it-is-worn-renew-pin"),
            DimensionNature.Grip => Texts.Say("bench.advice.the-bore-no-longer-grips"),
            DimensionNature.Roundness => Texts.Say("bench.advice.the-bore-is-worn-oval"),
            DimensionNature.Spring => Texts.Say("bench.advice.the-spring-is-tired-or"),
            _ => Texts.Say("bench.advice.it-is-worn-renew-it"),
        };

    private IEnumerable<string> Next(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions)
    {
        foreach (var pair in part.OpenPairs.Where(l => l.MeasureNext is not null))
        {
            yield return Texts.Say(
                "bench.advice.measure-it-tells-from",
                DimensionWords.Name(pair.MeasureNext!),
                pair.First.Name,
                pair.Second.Name
            );
        }

        foreach (var (value, _) in verdict.EitherSide)
        {
            yield return Texts.Say("bench.advice.find-the-books-figure-for", DimensionWords.Name(value.Dimension));
        }

        foreach (var (value, _) in verdict.Open.OrderByDescending(o => o.Comparison.U))
        {
            yield return Texts.Say("bench.advice.measure-again-twice-if-you", DimensionWords.Name(value.Dimension));
        }

        var asked = part.OpenPairs.Select(l => l.MeasureNext).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (
            var figure in part.BookVariant?.Figures.Where(f =>
                !asked.Contains(f.Dimension) && dimensions.All(d => d.Value.Dimension != f.Dimension)
            )
                ?? []
        )
        {
            yield return Texts.Say("bench.advice.measure-the-book-has-a", DimensionWords.Name(figure.Dimension));
        }

        foreach (var dimension in verdict.Cover.HeldAgainstNothing.Where(d => Judged(dimensions, d) == 0))
        {
            yield return Texts.Say("bench.advice.find-the-books-figure-for-or-measure-the-other", DimensionWords.Name(dimension));
        }

        foreach (
            var sentence in verdict.Cover.Missing.Where(g => !IsThere(g, dimensions)).Select(g => g.Sentence).Concat(OtherHints(dimensions))
        )
        {
            yield return sentence;
        }
    }

    private static int Judged(IReadOnlyList<DimensionAnswer> dimensions, string name) =>
        dimensions.First(d => d.Value.Dimension == name).Comparisons.Count(c => c.Limit is not null);

    private IEnumerable<string> OtherHints(IReadOnlyList<DimensionAnswer> dimensions)
    {
        foreach (var hint in PartGuide.For(part.Part.Kind).Where(g => !IsThere(g, dimensions)))
        {
            yield return hint.Sentence;
        }

        foreach (var bore in dimensions.Where(d => d.Value.Nature == DimensionNature.Roundness && d.Comparisons.All(c => c.Limit is null)))
        {
            yield return Texts.Say("bench.advice.tell-a-limit-for-the", DimensionWords.Name(bore.Value.Dimension));
        }
    }

    private bool IsThere(PartGuide guide, IReadOnlyList<DimensionAnswer> dimensions) =>
        dimensions.Any(d => guide.IsSettledBy(d.Value, ShapeCover.IsHeight(part, d)));

    /// <summary>One comparison as a sentence: how much, against what, against which limit.</summary>
    public string Sentence(DimensionValue value, Comparison comparison)
    {
        var off = Text.Signed(value.Quantity, comparison.Deviation, comparison.U);
        var size = Text.Value(value.Quantity, value.IsSizeAlone ? Math.Abs(comparison.Deviation) : comparison.Deviation, comparison.U);
        var what = comparison.Against switch
        {
            ComparedWith.Book => Texts.Say(
                "bench.advice.is-from-the-books-figure",
                DimensionWords.Capital(value.Dimension),
                off,
                comparison.Reference
            ),
            ComparedWith.Mirror => Texts.Say(
                "bench.advice.differs-by-from",
                DimensionWords.Capital(value.Dimension),
                off,
                comparison.Reference ?? Texts.Say("bench.advice.the-other-side")
            ),
            _ => Texts.Say("bench.advice.is", DimensionWords.Capital(value.Dimension), size),
        };
        var limit = comparison.Limit is { } l
            ? Texts.Say("bench.advice.limit", Text.Value(value.Quantity, l.Si, Math.Min(l.Si / 10, comparison.U)))
            : "";
        return $"{what} ({Text.PlusMinus(value.Quantity, comparison.U)}{limit}): {VerdictWord.Said(comparison.Verdict ?? Verdict.CannotTellYet)}.";
    }
}
