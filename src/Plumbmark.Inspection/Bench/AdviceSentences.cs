using Plumbmark.Inspection.Floor;

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
            yield return "Its dimensions fit none of the book's types as new: it is bent, or of a type the book does not have.";
        }
    }

    public IEnumerable<string> WrongType(VariantOdds type, PartVerdict verdict)
    {
        var fitted = part.Variant!.Odds.First(o => o.IsFittedToThisCar == true).Variant.Name;
        var straight = type.Straight >= VariantAnswer.Recognised;
        yield return straight
            ? $"It is not bent: it is the {type.Variant.Name}, and this car's serial number calls for the {fitted}."
            : $"It is the {type.Variant.Name}, bent, and this car's serial number calls for the {fitted}.";
        yield return "A serial match is evidence, not proof: look for its number, keep a photo, and keep the part for the car it belongs to.";
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
            1 => "The one dimension with a limit is within it.",
            2 => "Both dimensions with a limit are within theirs.",
            _ => $"All {judged} dimensions with a limit are within theirs.",
        };
        if (part.Variant?.Type is { } type)
        {
            yield return $"It is the {type.Variant.Name}.";
        }

        foreach (var pair in part.OpenPairs)
        {
            yield return pair.Sentence;
        }

        var shape = dimensions.Where(d => d.Value.IsPaired).SelectMany(d => d.Comparisons).Where(c => c.Verdict is not null).ToList();
        if (shape.Count > 0 && shape.All(c => c.Against == ComparedWith.Mirror))
        {
            yield return "Its lengths and heights were only compared with its partner's: damage that is alike on both sides cannot be seen that way.";
        }

        if (dimensions.SelectMany(d => d.Comparisons).FirstOrDefault(c => c.PutDownTo is not null) is { } other)
        {
            yield return $"What differs from {other.PutDownTo} is put down to {other.PutDownTo}, which is out by measures of its own.";
        }

        foreach (var past in Past(part.Part))
        {
            yield return past;
        }

        foreach (var dimension in dimensions.Where(d => d.Comparisons.All(c => c.Verdict is null)))
        {
            yield return $"{DimensionWords.Capital(dimension.Value.Dimension)} was measured but no limit is known for it.";
        }

        if (verdict.Cover.Missing.Count > 0)
        {
            yield return $"Every figure of the book for its type was measured; the book has none for {Listed(verdict.Cover.Missing.Select(g => g.What))}.";
        }
    }

    private static string Listed(IEnumerable<string> things)
    {
        List<string> all = [.. things];
        return all.Count == 1 ? all[0] : $"{string.Join(", ", all.Take(all.Count - 1))} and {all[^1]}";
    }

    /// <summary>What was done to a part that measures true, and what no dimension shows of it.</summary>
    private static IEnumerable<string> Past(Part part)
    {
        if (part.Is(PartCondition.PressedBefore))
        {
            yield return "It was straightened before: look it over every year, and renew it if it moves again.";
        }

        if (part.Is(PartCondition.Heated))
        {
            yield return "It was heated: it measures true, but what heat took of its strength no dimension shows. A competent person says whether it is used; a part never heated is better.";
        }

        if (part.Is(PartCondition.Welded))
        {
            yield return "It was welded where the maker did not weld: it measures true, but whether the weld holds no dimension shows. A competent person looks at it before it is used.";
        }

        if (part.Is(PartCondition.ThreadDamaged))
        {
            yield return "A thread or seat is damaged: put that right, or renew the part, before it is used.";
        }
    }

    public IEnumerable<string> Open(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions)
    {
        if (dimensions.Count == 0)
        {
            yield return part.Reduction.Wanting.Count == 0
                ? "Nothing has been measured on it yet."
                : "What was measured is not enough to work anything out yet.";
            yield break;
        }

        foreach (var (value, comparison) in verdict.EitherSide)
        {
            yield return Sentence(value, comparison) + " Which of the two is out, this comparison cannot say.";
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
            yield return "No limit is known for anything that was measured; numbers are shown, but no verdict.";
        }
        else if (verdict.Cover is { IsEnough: false, Told.Count: > 0, Missing.Count: > 0 } cover)
        {
            yield return $"Only {Listed(cover.Told.Select(DimensionWords.Name))} {(cover.Told.Count == 1 ? "was" : "were")} measured and found true; nothing tells yet {Listed(cover.Missing.Select(g => g.What))}.";
        }
        else if (verdict.Open.Count + verdict.EitherSide.Count == 0 && !part.IsTypeInDoubt)
        {
            yield return "What was measured does not tell its shape yet.";
        }
    }

    public IEnumerable<string> MeasureNext(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions) =>
        Next(verdict, dimensions).Distinct(StringComparer.Ordinal).Take(MostNext);

    public static string Worn(DimensionValue value) =>
        value.Nature switch
        {
            DimensionNature.Clearance => "It is worn: renew pin or bush.",
            DimensionNature.Grip => "The bore no longer grips its bush: renew the part, or have the bore made good.",
            DimensionNature.Roundness => "The bore is worn oval or tapered: renew the bush, or the part where there is none.",
            DimensionNature.Spring => "The spring is tired or of another sort: renew springs in pairs.",
            _ => "It is worn: renew it.",
        };

    private IEnumerable<string> Next(PartVerdict verdict, IReadOnlyList<DimensionAnswer> dimensions)
    {
        foreach (var pair in part.OpenPairs.Where(l => l.MeasureNext is not null))
        {
            yield return $"Measure {DimensionWords.Name(pair.MeasureNext!)}: it tells {pair.First.Name} from {pair.Second.Name}.";
        }

        foreach (var (value, _) in verdict.EitherSide)
        {
            yield return $"Find the book's figure for {DimensionWords.Name(value.Dimension)}, or measure a third part: only that says which side is out.";
        }

        foreach (var (value, _) in verdict.Open.OrderByDescending(o => o.Comparison.U))
        {
            yield return $"Measure {DimensionWords.Name(value.Dimension)} again, twice if you can, with the sharpest tool you have.";
        }

        var asked = part.OpenPairs.Select(l => l.MeasureNext).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (
            var figure in part.BookVariant?.Figures.Where(f =>
                !asked.Contains(f.Dimension) && dimensions.All(d => d.Value.Dimension != f.Dimension)
            )
                ?? []
        )
        {
            yield return $"Measure {DimensionWords.Name(figure.Dimension)}: the book has a figure for it.";
        }

        foreach (var dimension in verdict.Cover.HeldAgainstNothing.Where(d => Judged(dimensions, d) == 0))
        {
            yield return $"Find the book's figure for {DimensionWords.Name(dimension)}, or measure the other side in the same place: a number alone tells nothing.";
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
            yield return $"Tell a limit for the {DimensionWords.Name(bore.Value.Dimension)}, or the diameter of the pin or bush that goes in.";
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
            ComparedWith.Book =>
                $"{DimensionWords.Capital(value.Dimension)} is {off} from the book's figure for the {comparison.Reference}",
            ComparedWith.Mirror =>
                $"{DimensionWords.Capital(value.Dimension)} differs by {off} from {comparison.Reference ?? "the other side"}",
            _ => $"{DimensionWords.Capital(value.Dimension)} is {size}",
        };
        var limit = comparison.Limit is { } l ? $", limit {Text.Value(value.Quantity, l.Si, Math.Min(l.Si / 10, comparison.U))}" : "";
        return $"{what} ({Text.PlusMinus(value.Quantity, comparison.U)}{limit}): {VerdictWord.For(comparison.Verdict ?? Verdict.CannotTellYet)}.";
    }
}
