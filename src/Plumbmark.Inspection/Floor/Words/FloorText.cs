using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Levelling;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor;

/// <summary>The answer as plain text for a person at a terminal.</summary>
public static class FloorText
{
    private static string Caution => Texts.Say("floor.comparison-aid-not-a-roadworthiness");

    /// <summary>The whole answer: verdict first, then why, then the numbers.</summary>
    public static string Of(CarFile car, FloorAnswer answer)
    {
        var words = LengthWords.For(car);
        var text = new StringBuilder();
        text.Append($"{car.Car.Name}\n\n{answer.Overall.Headline}\n");
        Lines(text, Texts.Say("floor.why"), answer.Overall.Why);
        Lines(
            text,
            Texts.Say("floor.doubted-readings"),
            answer.Suspects.Select(s => s.Sentence).Except(answer.Overall.Why, StringComparer.Ordinal)
        );
        Lines(text, Texts.Say("floor.before-you-believe-it"), answer.LookAlikes.Select(a => a.Sentence));
        Lines(text, Texts.Say("floor.what-it-looks-like"), answer.Damage.Select(d => d.Sentence));
        Lines(text, Texts.Say("floor.side-against-side"), answer.Comparisons.Select(c => c.Sentence));
        if (LevellingGuide.For(car) is { } levelling)
        {
            Lines(text, Texts.Say("floor.levelling"), levelling.Sentences.Concat(levelling.Warnings));
        }

        Lines(text, Texts.Say("floor.measure-next"), answer.Next.Select(n => n.Sentence));
        if (answer.Checks.Count > 0)
        {
            text.Append(Texts.Say("floor.checks"));
            foreach (var check in answer.Checks)
            {
                var limit = check.LimitMetres is { } t ? Texts.Say("floor.limit", words.Limit(t)) : Texts.Say("floor.no-limit-known");
                var verdict = check.Verdict is { } v ? VerdictWord.Said(v) : "";
                text.Append(
                    $"  {check.Id, -24} {words.Of(check.ValueMetres), 12}  {Texts.Say("floor.length.sure-to", words.SureTo(check.UMetres)), -18}  {limit, -20} {verdict}".TrimEnd()
                );
                text.Append('\n');
            }
        }

        text.Append($"\n{Caution}\n");
        return text.ToString();
    }

    private static void Lines(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
        {
            return;
        }

        text.Append($"\n{heading}\n");
        foreach (var line in all)
        {
            text.Append($"  - {line}\n");
        }
    }
}
