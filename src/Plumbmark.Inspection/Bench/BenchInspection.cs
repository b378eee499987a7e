using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>Is each part straight, which type is it, is it worth keeping? The one way from a car file to a <see cref="BenchAnswer"/>.</summary>
public static class BenchInspection
{
    /// <summary>What the measures that stand say about every part. Never fails on a readable file: too little is an answer.</summary>
    /// <param name="car">The car.</param>
    /// <param name="book">Variants that the Book knows beside those of the car file; null for those of its own book pages.</param>
    /// <param name="priors">What is believed of a part before it is measured.</param>
    public static BenchAnswer Of(CarFile car, IReadOnlyList<PartVariant>? book = null, VariantPriors? priors = null)
    {
        IReadOnlyList<PartVariant> variants =
        [
            .. car.Parts.Variants,
            .. (book ?? BookVariants.Of(car)).Where(b => car.Parts.Variants.All(v => v.Id != b.Id)),
        ];
        var text = new BenchText(car.Units);
        var cases = car.Parts.Items.ToDictionary(
            p => p.Id,
            p =>
            {
                var reduction = Reduction.Of(p, car.Tools);
                return new BenchCase(
                    p,
                    reduction,
                    VariantIdentification.Of(p, reduction.Dimensions, variants, car.Car.Serial, priors),
                    null,
                    text
                );
            },
            StringComparer.Ordinal
        );
        IReadOnlyList<PartAnswer> parts = [.. car.Parts.Items.Select(p => Answer(cases[p.Id] with { Partner = Partner(p, cases) }))];
        return new BenchAnswer(VerdictOf(parts), Headline(parts), parts);
    }

    /// <summary>Every type that is known for a car: its owner's own first, then those of the book that the owner has not described under the same name.</summary>
    public static IReadOnlyList<PartVariant> VariantsOf(CarFile car, IReadOnlyList<PartVariant>? book = null)
    {
        var own = car.Parts.Variants;
        bool IsOwn(PartVariant b) =>
            own.Any(v => v.Id == b.Id || (v.Kind == b.Kind && string.Equals(v.Name, b.Name, StringComparison.OrdinalIgnoreCase)));
        return [.. own, .. (book ?? BookVariants.Of(car)).Where(b => !IsOwn(b))];
    }

    private static BenchCase? Partner(Part part, Dictionary<string, BenchCase> cases) =>
        part.Mirror is { } mirror
            ? cases.GetValueOrDefault(mirror)
            // A partner that names this part is one even where this part does not name it back.
            : cases.Values.FirstOrDefault(c => c.Part.Mirror == part.Id);

    private static PartAnswer Answer(BenchCase part)
    {
        var verdict = PartVerdict.Of(part);
        var dimensions = verdict.Dimensions;
        var right = part.IsTypeInDoubt ? null : IsRight(part.Variant);
        var advice = Advice.Of(part, verdict, dimensions, right);
        return new PartAnswer(
            part.Part,
            verdict.Verdict,
            advice.Disposition,
            advice.Reasons,
            dimensions,
            part.Variant,
            right,
            advice.MeasureNext,
            part.Reduction.Wanting,
            Reminders.For(part.Part, advice.Disposition)
        );
    }

    /// <summary>False only when the type is recognised and this car had another.</summary>
    private static bool? IsRight(VariantAnswer? variant) =>
        variant?.Type is not { } type ? null
        : type.IsFittedToThisCar == false && !variant.Odds.Any(o => o.IsFittedToThisCar == true) ? null
        : type.IsFittedToThisCar;

    private static Verdict VerdictOf(IReadOnlyList<PartAnswer> parts) =>
        parts.Any(p => p.Verdict == Verdict.Out || p.Disposition is Disposition.Replace or Disposition.Straighten) ? Verdict.Out
        : parts.Count > 0 && parts.All(p => p.Disposition == Disposition.Keep) ? Verdict.True
        : Verdict.CannotTellYet;

    private static string Headline(IReadOnlyList<PartAnswer> parts)
    {
        if (parts.Count == 0)
        {
            return Texts.Say("bench.inspection.no-part-is-on-the");
        }

        var counts =
            from what in new[] { Disposition.Replace, Disposition.Straighten, Disposition.MeasureAgain, Disposition.Keep }
            let count = parts.Count(p => p.Disposition == what)
            where count > 0
            select $"{DispositionWord.Said(what)} {count}";
        return $"{(parts.Count == 1 ? Texts.Say("bench.inspection.one-part") : Texts.Say("bench.inspection.parts", parts.Count))}: {string.Join(", ", counts)}.";
    }
}
