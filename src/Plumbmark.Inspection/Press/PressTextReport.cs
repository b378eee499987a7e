using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Press;

/// <summary>The answer as plain text for a person at a terminal.</summary>
public static class PressTextReport
{
    /// <summary>Job by job: what to do now, where it is bent, how to set it up, what to expect, what each bite told; the cautions last.</summary>
    public static string Of(CarFile car, IReadOnlyList<PressReport> reports)
    {
        var words = new PressWords(car.Units);
        var text = new StringBuilder(reports.Count == 0 ? Texts.Say("press.text-report.no-part-is-in-the") : "");
        foreach (var report in reports)
        {
            text.Append($"{report.Job.Part.Name}\n  {words.Headline(report.State)}\n");
            Lines(text, null, words.Sentences(report));
            Lines(
                text,
                Texts.Say("press.text-report.where-it-is-bent"),
                [.. report.Findings.Lines.Select(words.Line), .. words.More(report.Findings)]
            );
            if (report.Plan is { } plan && report.State is not PressState.Refused)
            {
                Lines(text, Texts.Say("press.text-report.set-it-up"), words.SetUp(plan.Layout));
                Lines(text, Texts.Say("press.text-report.expect"), words.Expect(plan));
            }

            Bites(text, report.Log, words);
            text.Append('\n');
        }

        Lines(text, Texts.Say("press.text-report.always"), GateWords.Cautions);
        return text.ToString();
    }

    private static void Bites(StringBuilder text, PressLog? log, PressWords words)
    {
        if (log is null || log.Bites.Count == 0)
        {
            return;
        }

        text.Append(Texts.Say("press.text-report.bites"));
        foreach (var bite in log.Bites)
        {
            text.Append(
                $"    {bite.Record.Id, -6} {Texts.Say("press.text-report.bite", $"{bite.Record.Travel.AsTyped, -8}", words.Told(bite), words.Text(bite.LeftMetres))}\n"
            );
            Lines(text, null, [.. bite.Stops.Select(PressWords.Stop)]);
        }

        text.Append(
            Texts.Say(
                "press.text-report.straight",
                log.Straightness is { } verdict ? VerdictWord.Said(verdict) : Texts.Say("press.text-report.no-limit-known")
            )
        );
    }

    private static void Lines(StringBuilder text, string? heading, IReadOnlyList<string> lines)
    {
        if (heading is not null && lines.Count > 0)
        {
            text.Append($"  {heading}\n");
        }

        foreach (var line in lines)
        {
            text.Append($"    {line}\n");
        }
    }
}
