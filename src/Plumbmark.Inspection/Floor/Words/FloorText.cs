using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Levelling;

namespace Plumbmark.Inspection.Floor;

/// <summary>The answer as plain text for a person at a terminal.</summary>
public static class FloorText
{
    private const string Caution =
        "Comparison aid. Not a roadworthiness, structural or safety certificate. The maker's manual and competent inspection take precedence.";

    /// <summary>The whole answer: verdict first, then why, then the numbers.</summary>
    public static string Of(CarFile car, FloorAnswer answer)
    {
        var words = LengthWords.For(car);
        var text = new StringBuilder();
        text.Append($"{car.Car.Name}\n\n{answer.Overall.Headline}\n");
        Lines(text, "Why", answer.Overall.Why);
        Lines(text, "Doubted readings", answer.Suspects.Select(s => s.Sentence).Except(answer.Overall.Why, StringComparer.Ordinal));
        Lines(text, "Before you believe it", answer.LookAlikes.Select(a => a.Sentence));
        Lines(text, "What it looks like", answer.Damage.Select(d => d.Sentence));
        Lines(text, "Side against side", answer.Comparisons.Select(c => c.Sentence));
        if (LevellingGuide.For(car) is { } levelling)
        {
            Lines(text, "Levelling", levelling.Sentences.Concat(levelling.Warnings));
        }

        Lines(text, "Measure next", answer.Next.Select(n => n.Sentence));
        if (answer.Checks.Count > 0)
        {
            text.Append("\nChecks\n");
            foreach (var check in answer.Checks)
            {
                var limit = check.LimitMetres is { } t ? $"limit {words.Limit(t)}" : "no limit known";
                var verdict = check.Verdict is { } v ? VerdictWord.For(v) : "";
                text.Append(
                    $"  {check.Id, -24} {words.Of(check.ValueMetres), 12}  sure to {words.SureTo(check.UMetres), -10}  {limit, -20} {verdict}".TrimEnd()
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
