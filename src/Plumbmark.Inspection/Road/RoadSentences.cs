using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>The Road's answer in words: the verdict in one sentence, and the reasons.</summary>
internal static class RoadSentences
{
    private const int ReasonsKept = 8;
    private const double SayFromShare = 0.2;

    /// <summary>The headline and the reasons, most important first.</summary>
    public static (string Headline, IReadOnlyList<string> Why) Of(
        Verdict verdict,
        IReadOnlyList<RoadFigure> figures,
        IReadOnlyList<WheelResult> wheels,
        IReadOnlyList<SideSettings> settings,
        RoadModel model,
        RoadDisplay display
    )
    {
        var outFigures = figures.Where(f => f.Verdict == Verdict.Out).OrderBy(f => f.ProbabilityWithin).Select(f => Reason(f, display));
        var outWheels = wheels.Where(w => w.Verdict == Verdict.Out).OrderBy(w => w.ProbabilityWithin).Select(w => Reason(w, display));
        var open = figures.Where(f => f.Verdict == Verdict.CannotTellYet).OrderBy(f => f.ProbabilityWithin).Select(f => Reason(f, display));
        var openWheels = wheels
            .Where(w => w.Verdict == Verdict.CannotTellYet)
            .OrderBy(w => w.ProbabilityWithin)
            .Select(w => Reason(w, display));
        List<string> why =
        [
            .. figures.Where(f => f.IsDrawingBeyondBook).Select(f => DrawnBeyond(f, display)).Distinct(),
            .. outFigures,
            .. outWheels,
            .. settings.SelectMany(s => s.Sentences),
            .. open,
            .. openWheels,
            .. model.Remarks.Missing,
        ];
        why = [.. why.Distinct()];
        return (Headline(verdict, figures, wheels, settings, model), [.. why.Take(ReasonsKept)]);
    }

    private static string Headline(
        Verdict verdict,
        IReadOnlyList<RoadFigure> figures,
        IReadOnlyList<WheelResult> wheels,
        IReadOnlyList<SideSettings> settings,
        RoadModel model
    )
    {
        var asked = figures.Count(f => f.Verdict is not null) + wheels.Count(w => w.Verdict is not null);
        return verdict switch
        {
            Verdict.Out => OutHeadline(figures, wheels, settings),
            Verdict.True => Texts.Say("road.true-all-angles-and-lengths", asked),
            _ when asked == 0 && figures.Count == 0 && wheels.Count == 0 => Texts.Say("road.cant-tell-yet-the-suspension"),
            _ when figures.Any(f => f.IsDrawingBeyondBook) => Texts.Say("road.cant-tell-yet-the-drawing"),
            _ when asked == 0 => Texts.Say("road.cant-tell-yet-no-limits"),
            _ when model.Remarks.Missing.Count > 0 => Texts.Say("road.cant-tell-yet-something-is"),
            _ => Texts.Say("road.cant-tell-yet-what-is"),
        };
    }

    private static string OutHeadline(
        IReadOnlyList<RoadFigure> figures,
        IReadOnlyList<WheelResult> wheels,
        IReadOnlyList<SideSettings> settings
    )
    {
        var names = figures
            .Where(f => f.Verdict == Verdict.Out)
            .OrderBy(f => f.ProbabilityWithin)
            .Select(f => RoadNames.Of(f.Kind, f.Side))
            .Concat(wheels.Where(w => w.Verdict == Verdict.Out).OrderBy(w => w.ProbabilityWithin).Select(NameOf))
            .Distinct()
            .ToList();
        var what =
            names.Count <= 3 ? string.Join(", ", names) : Texts.Say("road.and-more", string.Join(", ", names.Take(3)), names.Count - 3);
        // Only camber, castor and toe can be set, and what is left less right of them.
        var fixedOnes = figures
            .Where(f => f.Verdict == Verdict.Out && !IsSettable(f.Kind))
            .Select(f => RoadNames.Of(f.Kind))
            .Distinct()
            .ToList();
        var nothing = fixedOnes.Count > 0 ? Texts.Say("road.nothing-here-adjusts", string.Join(" or ", fixedOnes)) : "";
        // The settings are worked out from frame and parts: they say nothing of what only the wheels read.
        var isInFrameOrParts = figures.Any(f => f.Verdict == Verdict.Out);
        var cure =
            !isInFrameOrParts ? ""
            : settings.Any(s => s.IsRestored == false) ? Texts.Say("road.the-adjusters-cannot-cure-it")
            : fixedOnes.Count > 0 ? ""
            : settings.Any(s => s.IsFaultAbsorbed) ? Texts.Say("road.the-adjusters-could-hide-it")
            : settings.Count > 0 && settings.All(s => s.IsRestored == true) ? Texts.Say("road.the-adjusters-can-take-it")
            : "";
        return Texts.Say("road.out", what, cure, nothing);
    }

    private static bool IsSettable(FigureKind kind) =>
        kind is FigureKind.Camber or FigureKind.Castor or FigureKind.ToeIn or FigureKind.CamberSplit or FigureKind.CastorSplit;

    /// <summary>A figure in one sentence: where it is, what is asked, what makes it.</summary>
    public static string Reason(RoadFigure figure, RoadDisplay display)
    {
        var give = Texts.Say(
            "road.would-be",
            Capital(RoadNames.Of(figure.Kind, figure.Side)),
            display.Said(figure.Kind, figure.Value),
            GiveOrTake(figure, display)
        );
        return $"{give}; {Asked(figure.Book, figure.Kind, display)}.{AmongAll(JudgedTogether.LooksOut(figure))}{From(figure, display)}";
    }

    /// <summary>That a drawing is beyond its own book: more likely a slip in entering it than a car.</summary>
    public static string DrawnBeyond(RoadFigure figure, RoadDisplay display) =>
        Texts.Say(
            "road.the-drawing-itself-gives-and",
            RoadNames.Of(figure.Kind),
            display.Said(figure.Kind, figure.Drawn),
            Asked(figure.Book, figure.Kind, display)
        );

    /// <summary>A result of the wheel check in one sentence.</summary>
    public static string Reason(WheelResult result, RoadDisplay display)
    {
        var give = Texts.Say(
            "road.reads-give-or-take",
            Capital(NameOf(result)),
            display.Said(result.Kind, result.Value),
            display.Size(result.Kind, 2 * result.U)
        );
        return $"{give}; {Asked(result.Book, result.Kind, display)}.{AmongAll(JudgedTogether.LooksOut(result))}";
    }

    private static string GiveOrTake(RoadFigure figure, RoadDisplay display) =>
        figure.IsAsDrawn ? Texts.Say("road.as-drawn") : Texts.Say("road.give-or-take", display.Size(figure.Kind, 2 * figure.U));

    private static string AmongAll(bool looksOut) => looksOut ? Texts.Say("road.by-itself-it-would-be") : "";

    /// <summary>What a result of the wheel check is called.</summary>
    public static string NameOf(WheelResult result) =>
        (result.Wheel, result.Side, result.Axle) switch
        {
            ({ } wheel, _, _) => $"{RoadNames.Of(wheel)} {RoadNames.Of(result.Kind).Replace("rear ", "", StringComparison.Ordinal)}",
            (_, { } side, _) => RoadNames.Of(result.Kind, side),
            (_, _, { } axle) when result.Kind == FigureKind.RideHeightSplit =>
                $"{(axle == Axle.Front ? "front" : "rear")} {RoadNames.Of(result.Kind)}",
            _ => RoadNames.Of(result.Kind),
        };

    /// <summary>What is asked of a figure, in words.</summary>
    public static string Asked(AskedFigure? book, FigureKind kind, RoadDisplay display)
    {
        var whose = book?.Source switch
        {
            Car.LimitSource.Factory => Texts.Say("road.the-book-allows"),
            Car.LimitSource.Practice => Texts.Say("road.practice-allows"),
            _ => Texts.Say("road.you-allow"),
        };
        return (book?.LeastSi, book?.MostSi) switch
        {
            ({ } least, { } most) => Texts.Say("road.to", whose, display.Said(kind, least), display.Said(kind, most)),
            ({ } least, null) => Texts.Say("road.or-more", whose, display.Said(kind, least)),
            (null, { } most) => Texts.Say("road.or-less", whose, display.Said(kind, most)),
            _ => Texts.Say("road.nothing-is-asked-of-it"),
        };
    }

    private static string From(RoadFigure figure, RoadDisplay display)
    {
        var whole = Math.Abs(figure.Value - figure.Drawn);
        var main = figure
            .Contributions.Where(c => Math.Abs(c.Amount) >= SayFromShare * whole)
            .Take(3)
            .Select(c => $"{RoadNames.Of(c.What, c.Side)} {display.Value(figure.Kind, c.Amount)}")
            .ToList();
        return main.Count == 0 ? "" : Texts.Say("road.from", string.Join(", ", main));
    }

    /// <summary>The text with a capital in front.</summary>
    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
