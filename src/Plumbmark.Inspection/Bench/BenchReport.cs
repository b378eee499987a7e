using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>The answer as plain text for a person at a terminal.</summary>
public static class BenchReport
{
    /// <summary>Part by part: what to do, why, the numbers, what to measure next, what to remember.</summary>
    public static string Of(CarFile car, BenchAnswer answer)
    {
        var words = new BenchText(car.Units);
        var text = new StringBuilder($"{car.Car.Name}\n\n{answer.Headline}\n");
        foreach (var part in answer.Parts)
        {
            text.Append(
                Texts.Say(
                    "bench.report.measured",
                    PartWords.Title(part.Part),
                    DispositionWord.Said(part.Disposition),
                    VerdictWord.Said(part.Verdict)
                )
            );
            Lines(text, part.Reasons);
            Variants(text, part.Variant);
            foreach (var dimension in part.Dimensions)
            {
                Numbers(text, words, dimension);
            }

            Lines(text, part.Wanting);
            Heading(text, Texts.Say("bench.report.measure-next"), part.MeasureNext);
            Heading(text, Texts.Say("bench.report.remember"), part.Reminders);
        }

        return text.ToString();
    }

    private static void Variants(StringBuilder text, VariantAnswer? variant)
    {
        if (variant is null || variant.Compared == 0)
        {
            return;
        }

        var odds = variant.Odds.Select(o => $"{o.Variant.Name} {DimensionWords.Chance(o.Straight)}");
        text.Append(Texts.Say("bench.report.which-type-none-of-these", string.Join(", ", odds), DimensionWords.Chance(variant.NoneOrBent)));
        text.Append(variant.DecidedBy is { } dimension ? Texts.Say("bench.report.decided-by", DimensionWords.Name(dimension)) : ".\n");
    }

    private static void Numbers(StringBuilder text, BenchText words, DimensionAnswer dimension)
    {
        var value = dimension.Value;
        text.Append(
            $"  {DimensionWords.Name(value.Dimension), -26} {words.Value(value.Quantity, value.ShownSi, value.U), 12} {words.PlusMinus(value.Quantity, value.U), -11}"
        );
        foreach (var comparison in dimension.Comparisons)
        {
            var against = comparison.Against switch
            {
                ComparedWith.Book => Texts.Say("bench.report.book", words.Signed(value.Quantity, comparison.Deviation, comparison.U)),
                ComparedWith.Mirror => Texts.Say(
                    "bench.report.other-side",
                    words.Signed(value.Quantity, comparison.Deviation, comparison.U)
                ),
                _ when value.ShouldBeNothing => Texts.Say("bench.report.should-be-nothing"),
                _ => Texts.Say("bench.report.against-its-limit"),
            };
            var limit = comparison.Limit is { } l
                ? Texts.Say(
                    "bench.report.limit",
                    words.Value(value.Quantity, l.Si, Math.Min(l.Si / 10, comparison.U)),
                    LimitsJson.Sources.WordFor(l.Source)
                )
                : Texts.Say("bench.report.no-limit-known");
            text.Append(
                $"  {against}, {limit}{(comparison.Verdict is { } verdict ? $": {VerdictWord.Said(verdict)}" : "")}{(comparison.PutDownTo is { } other ? Texts.Say("bench.report.put-down-to", other) : "")}"
            );
        }

        text.Append('\n');
        if (value.Remark is not null)
        {
            text.Append($"    {value.Remark}\n");
        }
    }

    private static void Heading(StringBuilder text, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count > 0)
        {
            text.Append($"  {heading}\n");
            Lines(text, lines);
        }
    }

    private static void Lines(StringBuilder text, IReadOnlyList<string> lines)
    {
        foreach (var line in lines)
        {
            text.Append($"  - {line}\n");
        }
    }
}
