using System.Globalization;
using System.Text;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Floor.Adjusting;

/// <summary>The solved network as plain text: millimetres, for somebody who wants to see the working.</summary>
public static class AdjustText
{
    /// <summary>Points, the global test, then every reading.</summary>
    public static string Of(AdjustAnswer answer)
    {
        var text = new StringBuilder();
        foreach (var remark in AdjustAnswerJson.Remarks(answer))
        {
            Line(text, $"{remark}");
        }

        foreach (var suspect in answer.Suspects)
        {
            Line(text, $"{suspect.Sentence}");
        }

        if (answer.Outcome.FitOrNull is not { } fit)
        {
            return text.ToString();
        }

        Line(
            text,
            $"{Texts.Say("floor.adjust.point"), -16}{Texts.Say("floor.adjust.x-mm"), 16}{Texts.Say("floor.adjust.y-mm"), 16}{Texts.Say("floor.adjust.z-mm"), 14}{"ux", 9}{"uy", 9}{"uz", 9}"
        );
        foreach (var p in fit.Points)
        {
            Line(
                text,
                $"{p.Id, -16}{Mm(p.XMetres, 3), 16}{Mm(p.YMetres, 3), 16}{Mm(p.ZMetres, 3), 14}{Mm(p.UxMetres, 3), 9}{Mm(p.UyMetres, 3), 9}{Mm(p.UzMetres, 3), 9}"
            );
        }

        var factor = fit.VarianceFactor is { } v
            ? Texts.Say("floor.adjust.variance-factor-chance-of-so", Texts.Number(v, "F3"), Texts.Number(fit.ChiSquareProbability, "F3"))
            : "";
        Line(text, $"{Texts.Say("floor.adjust.redundancy", fit.Redundancy, factor)}");
        Line(
            text,
            $"{Texts.Say("floor.adjust.reading"), -16}{Texts.Say("floor.adjust.observed-mm"), 16}{Texts.Say("floor.adjust.residual"), 12}{Texts.Say("floor.adjust.sigma"), 9}{"w", 8}{"r", 8}{Texts.Say("floor.adjust.detectable"), 12}"
        );
        foreach (var r in fit.Readings)
        {
            var w = r.Standardised is { } s ? $"{s:F2}" : "-";
            Line(
                text,
                $"{r.Id, -16}{Mm(r.ObservedMetres, 3), 16}{Mm(r.ResidualMetres, 3), 12}{Mm(r.SigmaMetres, 3), 9}{w, 8}{r.RedundancyNumber, 8:F3}{Mm(r.MinimalDetectableMetres, 2), 12}"
            );
        }

        return text.ToString();
    }

    private static void Line(StringBuilder text, FormattableString line) =>
        text.Append(FormattableString.Invariant(line).TrimEnd()).Append('\n');

    private static string Mm(double? metres, int digits) =>
        metres is { } m ? (m * 1000).ToString("F" + digits, CultureInfo.InvariantCulture) : "-";
}
