using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Do lengths in plan and point to point go together with the heights, and does the page say which is which where it matters?</summary>
internal static class SenseCheck
{
    // Less than this nobody sees with a tape: a thirty-second of an inch.
    private const double MattersMetres = 0.0254 / 32;

    public static IEnumerable<BookFinding> Of(IReadOnlyList<PageFigure> figures)
    {
        var heights = Heights(figures);
        var lengths = (
            from figure in figures
            from b in figure.Dimension.Subjects.Select(s => s.Ordered).OfType<BookSubject.Between>()
            where b.Sense is LengthSense.Plan or LengthSense.Direct or LengthSense.Unsaid
            select (Figure: figure, Ends: (b.From, b.To), b.Sense)
        ).ToList();
        return Together(lengths, heights)
            .Concat(Unsaid(lengths, heights))
            .DistinctBy(f => string.Join('\n', f.Dimensions.Order(StringComparer.Ordinal)));
    }

    private static IEnumerable<BookFinding> Together(
        IReadOnlyList<(PageFigure Figure, (string From, string To) Ends, LengthSense Sense)> lengths,
        Dictionary<string, double> heights
    ) =>
        from plan in lengths
        where plan.Sense == LengthSense.Plan
        from direct in lengths
        where direct.Sense == LengthSense.Direct && direct.Ends == plan.Ends
        let rise = Rise(plan.Ends, heights)
        let allowed = plan.Figure.RoundingMetres + direct.Figure.RoundingMetres + 1e-9
        let expected = rise is { } dz ? double.Hypot(plan.Figure.Metres, dz) : (double?)null
        where expected is { } e ? Math.Abs(direct.Figure.Metres - e) > allowed : plan.Figure.Metres - direct.Figure.Metres > allowed
        select BookFinding.Of(
            FindingKind.PlanAgainstDirect,
            [plan.Figure.Id, direct.Figure.Id],
            Texts.Say(
                "book.sense-check.gives-to-in-plan-as",
                plan.Figure.Id,
                plan.Ends.From,
                plan.Ends.To,
                plan.Figure.Value.AsTyped,
                direct.Figure.Id,
                direct.Figure.Value.AsTyped
            )
                + (
                    expected is { } right
                        ? Texts.Say("book.sense-check.with-the-heights-of-the", PageFigure.Text(right, plan.Figure.Value.Unit))
                        : Texts.Say("book.sense-check.point-to-point-is-never")
                ),
            expected is { } want ? direct.Figure.Slips(m => Math.Abs(m - want) <= allowed) : null
        );

    private static IEnumerable<BookFinding> Unsaid(
        IReadOnlyList<(PageFigure Figure, (string From, string To) Ends, LengthSense Sense)> lengths,
        Dictionary<string, double> heights
    ) =>
        from length in lengths
        where length.Sense == LengthSense.Unsaid && length.Figure.Metres > 0
        let rise = Rise(length.Ends, heights)
        where rise is not null
        let difference = double.Hypot(length.Figure.Metres, rise.Value) - length.Figure.Metres
        where difference > MattersMetres
        select BookFinding.Of(
            FindingKind.SenseUnsaid,
            [length.Figure.Id],
            Texts.Say(
                "book.sense-check.to-is-not-said-to",
                length.Figure.Id,
                length.Ends.From,
                length.Ends.To,
                PageFigure.Text(difference, length.Figure.Value.Unit)
            )
        );

    private static double? Rise((string From, string To) ends, Dictionary<string, double> heights) =>
        heights.TryGetValue(ends.From, out var a) && heights.TryGetValue(ends.To, out var b) ? b - a : null;

    private static Dictionary<string, double> Heights(IReadOnlyList<PageFigure> figures) =>
        AxisGraph.Upward(figures).FromDatum.ToDictionary(p => p.Place, p => p.Metres, StringComparer.Ordinal);
}
