using System.Text;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>The answer as <c>plumbmark road</c> prints it for a person: the verdict first, then what makes it, then the figures.</summary>
public static class RoadText
{
    private const int MostShares = 4;

    /// <summary>The whole answer.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="display">How its numbers are shown.</param>
    public static string Of(RoadAnswer answer, RoadDisplay display)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(display);
        var text = new StringBuilder();
        text.AppendLine(answer.Headline);
        Section(text, Texts.Say("road.why"), answer.Why);
        Section(text, Texts.Say("road.as-frame-and-parts-would"), [.. answer.Figures.Select(f => Line(f, display))]);
        RoadTravelText.Add(answer, display, (title, lines) => Section(text, title, lines));
        Section(text, Texts.Say("road.read-at-the-wheels"), [.. answer.Wheels.Select(w => Line(w, display)), .. answer.WheelRemarks]);
        Section(text, Texts.Say("road.would-sharpen-it-most"), [.. answer.Unmeasured.Select(u => Line(u, display))]);
        Section(text, Texts.Say("road.linear-and-by-trial"), [.. answer.Trials.Select(t => Line(t, display))]);
        Section(text, Texts.Say("road.missing"), answer.Missing);
        Section(text, Texts.Say("road.taken-as-drawn-or-otherwise"), answer.Assumed);
        Section(text, Texts.Say("road.cautions"), answer.Cautions);
        return text.ToString().ReplaceLineEndings("\n");
    }

    /// <summary>What is asked of a figure, in words.</summary>
    public static string Asked(AskedFigure book, RoadDisplay display)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(display);
        var said = RoadSentences.Asked(book, book.Kind, display);
        return book.Value is { } value ? $"{display.Said(book.Kind, value.Si)}; {said}" : said;
    }

    /// <summary>What a figure comes from, in words, the largest first; empty when nothing is off its drawing by as much as is shown.</summary>
    public static string Shares(RoadFigure figure, RoadDisplay display)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(display);
        // What rounds to nothing is nobody's business, and four names are what a person can hold.
        var nothing = display.Size(figure.Kind, 0);
        var seen = figure.Contributions.Where(c => display.Size(figure.Kind, c.Amount) != nothing).ToList();
        var named = seen.Take(MostShares).Select(c => $"{RoadNames.Of(c.What, c.Side)} {display.Value(figure.Kind, c.Amount)}");
        return string.Join(", ", named) + (seen.Count > MostShares ? Texts.Say("road.and-smaller", seen.Count - MostShares) : "");
    }

    /// <summary>What a result of the wheel check is called.</summary>
    public static string NameOf(WheelResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return RoadSentences.NameOf(result);
    }

    private static void Section(StringBuilder text, string title, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        text.AppendLine().AppendLine($"{title}:");
        foreach (var line in lines)
        {
            text.AppendLine($"  {line}");
        }
    }

    private static string Line(RoadFigure f, RoadDisplay display)
    {
        var verdict = f.Verdict is { } v ? $"  [{VerdictWord.Said(v)}]" : "";
        var toe = f is { Kind: FigureKind.ToeIn, Side: null } && display.ToeAtRim(f.Value) is { } said ? $" ({said})" : "";
        return $"{RoadNames.Of(f.Kind, f.Side)}: {display.Said(f.Kind, f.Value)}{toe} {Sureness(f, display)}{verdict}";
    }

    private static string Line(WheelResult w, RoadDisplay display)
    {
        var verdict = w.Verdict is { } v ? $"  [{VerdictWord.Said(v)}]" : "";
        var remarks = w.Remarks.Count > 0 ? $" {string.Join(" ", w.Remarks)}" : "";
        return $"{RoadSentences.NameOf(w)}: {display.Said(w.Kind, w.Value)} ±{display.Size(w.Kind, 2 * w.U)}{verdict}{remarks}";
    }

    /// <summary>How sure a figure is and what the drawing gives; "as drawn" where nothing that it depends on is measured or open.</summary>
    public static string Sureness(RoadFigure figure, RoadDisplay display)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(display);
        return figure.IsAsDrawn
            ? Texts.Say("road.as-drawn")
            : Texts.Say("road.drawn", display.Size(figure.Kind, 2 * figure.U), display.Said(figure.Kind, figure.Drawn));
    }

    /// <summary>What is worth measuring, in one line.</summary>
    public static string Line(UnmeasuredShare u, RoadDisplay display)
    {
        return Texts.Say(
            "road.measure-the-not-measured-it",
            RoadNames.Of(u.What, u.Side),
            RoadNames.Of(u.Figure),
            display.Size(u.Figure, 2 * u.U)
        );
    }

    /// <summary>How the two uncertainties of a figure compare, in one line.</summary>
    public static string Line(TrialCheck t, RoadDisplay display) =>
        Texts.Say(
            "road.linear-to-tried-to",
            RoadNames.Of(t.Kind, t.Side),
            t.Agrees ? Texts.Say("road.agree") : Texts.Say("road.do-not-agree-go-by"),
            display.Said(t.Kind, t.LinearLow),
            display.Said(t.Kind, t.LinearHigh),
            display.Said(t.Kind, t.TriedLow),
            display.Said(t.Kind, t.TriedHigh)
        );
}
