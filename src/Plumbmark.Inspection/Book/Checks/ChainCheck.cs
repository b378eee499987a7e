using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Do parts add up to their totals, along the car, across it, in height, and in every chain that the drawing closes?</summary>
/// <remarks>
/// Every round of figures must close within what rounding can leave. Rounds that do not, and share figures, are one finding: the slip that
/// closes all of them and breaks none that closes now explains it.
/// </remarks>
internal static class ChainCheck
{
    public static IEnumerable<BookFinding> Of(BookPage page, IReadOnlyList<PageFigure> figures)
    {
        IReadOnlyList<Loop> loops =
        [
            .. page.Chains.Select(c => Drawn(c, figures)).OfType<Loop>(),
            .. AxisGraph.Along(figures).Loops,
            .. AxisGraph.Across(figures, isHalved: false).Loops,
            .. AxisGraph.Upward(figures).Loops,
        ];
        loops = [.. loops.DistinctBy(l => string.Join('\n', l.Ids.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)))];
        return Groups([.. loops.Where(l => !l.Closes)]).Select(open => Finding(open, loops));
    }

    private static Loop? Drawn(BookChain chain, IReadOnlyList<PageFigure> figures)
    {
        PageFigure? Find(string id) => figures.FirstOrDefault(f => f.Id == id);
        var parts = chain.Parts.Select(Find).ToList();
        return Find(chain.Total) is { } total && parts.TrueForAll(p => p is not null)
            ? new Loop([(total, -1), .. parts.Select(p => (p!, 1))], Texts.Say("book.chain-check.in-the-drawings-chain"))
            : null;
    }

    private static BookFinding Finding(IReadOnlyList<Loop> open, IReadOnlyList<Loop> all)
    {
        var slips =
            from figure in open.SelectMany(l => l.Terms.Select(t => t.Figure)).DistinctBy(f => f.Id)
            let touched = all.Where(l => l.Ids.Contains(figure.Id)).ToList()
            where open.All(l => touched.Contains(l))
            from slip in figure.Slips(metres => touched.TrueForAll(l => l.ClosesWith(figure.Id, metres)))
            select slip;
        return BookFinding.Of(FindingKind.ChainDoesNotClose, open.SelectMany(l => l.Ids), string.Join(" ", open.Select(Sentence)), slips);
    }

    private static string Sentence(Loop loop)
    {
        var (closing, sign) = loop.Terms[0];
        var unit = closing.Value.Unit;
        var others = Ids([.. loop.Ids.Skip(1).Distinct(StringComparer.Ordinal)]);
        var makes = closing.Metres - (sign * loop.MisclosureMetres);
        return Texts.Say(
            "book.chain-check.is-printed-as-but-make",
            closing.Id,
            closing.Dimension.Subject.Words,
            closing.Value.AsTyped,
            others,
            PageFigure.Text(makes, unit),
            PageFigure.Text(Math.Abs(loop.MisclosureMetres), unit),
            loop.Axis
        );
    }

    private static string Ids(IReadOnlyList<string> ids) =>
        ids.Count == 1 ? ids[0] : Texts.Say("book.chain-check.and", string.Join(", ", ids.SkipLast(1)), ids[^1]);

    /// <summary>Open rounds that share a figure belong together.</summary>
    private static List<List<Loop>> Groups(IReadOnlyList<Loop> open)
    {
        var groups = new List<List<Loop>>();
        foreach (var loop in open)
        {
            var touching = groups.Where(g => g.Exists(l => l.Ids.Intersect(loop.Ids).Any())).ToList();
            groups.RemoveAll(touching.Contains);
            groups.Add([.. touching.SelectMany(g => g), loop]);
        }

        return groups;
    }
}
