using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Exchange;

/// <summary>The answer about the frame as sentences in a table: verdict, reasons, doubted readings, what the readings cannot see, what to measure next.</summary>
public static class AnswerTables
{
    /// <summary>The answer, a sentence a row.</summary>
    public static PlainTable Of(FloorAnswer answer)
    {
        IEnumerable<(string About, string? What, string Sentence)> rows =
        [
            ("verdict", VerdictWord.For(answer.Overall.Verdict), answer.Overall.Headline),
            .. answer.Overall.Why.Select(w => ("why", (string?)null, w)),
            .. answer.Overall.Floating.Select(f => (Texts.Say("exchange.answer-tables.not-tied"), (string?)null, f.Sentence)),
            .. answer.Suspects.Select(s => ("doubted", s.Reading ?? s.Point, s.Sentence)),
            .. answer.Damage.Select(d => ("damage", (string?)d.Form, d.Sentence)),
            .. answer.BlindSpots.Select(b => (Texts.Say("exchange.answer-tables.blind-spot"), b.Point ?? b.Form, b.Sentence)),
            .. answer.Next.Select(n => (Texts.Say("exchange.answer-tables.measure-next"), (string?)n.Kind, n.Sentence)),
            ("caution", null, Texts.Say("exchange.answer-tables.compares-measurements-not-a-certificate")),
        ];
        var cells = rows.Select(r => (IReadOnlyList<PlainCell>)[PlainCell.Of(r.About), PlainCell.Of(r.What), PlainCell.Of(r.Sentence)]);
        return new PlainTable("Answer", ["about", "what", "sentence"], [.. cells]);
    }
}
