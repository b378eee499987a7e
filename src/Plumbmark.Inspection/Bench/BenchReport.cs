using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

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
                $"\n{PartWords.Title(part.Part)}: {DispositionWord.For(part.Disposition)} (measured: {VerdictWord.For(part.Verdict)})\n"
            );
            Lines(text, part.Reasons);
            Variants(text, part.Variant);
            foreach (var dimension in part.Dimensions)
            {
                Numbers(text, words, dimension);
            }

            Lines(text, part.Wanting);
            Heading(text, "Measure next", part.MeasureNext);
            Heading(text, "Remember", part.Reminders);
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
        text.Append($"  Which type: {string.Join(", ", odds)}; none of these, or bent {DimensionWords.Chance(variant.NoneOrBent)}");
        text.Append(variant.DecidedBy is { } dimension ? $"; decided by {DimensionWords.Name(dimension)}.\n" : ".\n");
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
                ComparedWith.Book => $"book {words.Signed(value.Quantity, comparison.Deviation, comparison.U)}",
                ComparedWith.Mirror => $"other side {words.Signed(value.Quantity, comparison.Deviation, comparison.U)}",
                _ when value.ShouldBeNothing => "should be nothing",
                _ => "against its limit",
            };
            var limit = comparison.Limit is { } l
                ? $"limit {words.Value(value.Quantity, l.Si, Math.Min(l.Si / 10, comparison.U))} ({LimitsJson.Sources.WordFor(l.Source)})"
                : "no limit known";
            text.Append(
                $"  {against}, {limit}{(comparison.Verdict is { } verdict ? $": {VerdictWord.For(verdict)}" : "")}{(comparison.PutDownTo is { } other ? $", put down to {other}" : "")}"
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
