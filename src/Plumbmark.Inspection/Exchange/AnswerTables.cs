using Plumbmark.Inspection.Floor;

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
            .. answer.Overall.Floating.Select(f => ("not tied", (string?)null, f.Sentence)),
            .. answer.Suspects.Select(s => ("doubted", s.Reading ?? s.Point, s.Sentence)),
            .. answer.Damage.Select(d => ("damage", (string?)d.Form, d.Sentence)),
            .. answer.BlindSpots.Select(b => ("blind spot", b.Point ?? b.Form, b.Sentence)),
            .. answer.Next.Select(n => ("measure next", (string?)n.Kind, n.Sentence)),
            ("caution", null, "Compares measurements. Not a certificate of roadworthiness, structure or safety."),
        ];
        var cells = rows.Select(r => (IReadOnlyList<PlainCell>)[PlainCell.Of(r.About), PlainCell.Of(r.What), PlainCell.Of(r.Sentence)]);
        return new PlainTable("Answer", ["about", "what", "sentence"], [.. cells]);
    }
}
