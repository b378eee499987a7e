using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Three lengths between three points: the longest is never longer than the other two together.</summary>
/// <remarks>Lengths that the page does not call plan or direct are taken with the plan lengths.</remarks>
internal static class TriangleCheck
{
    public static IEnumerable<BookFinding> Of(IReadOnlyList<PageFigure> figures) =>
        Impossible(figures, isDirect: false)
            .Concat(Impossible(figures, isDirect: true))
            .DistinctBy(f => string.Join('\n', f.Dimensions.Order(StringComparer.Ordinal)));

    private static IEnumerable<BookFinding> Impossible(IReadOnlyList<PageFigure> figures, bool isDirect)
    {
        var sides = Sides(figures, isDirect);
        var points = sides.Keys.SelectMany(k => new[] { k.A, k.B }).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        return from i in Enumerable.Range(0, points.Count)
            from j in Enumerable.Range(i + 1, points.Count - i - 1)
            where sides.ContainsKey((points[i], points[j]))
            from k in Enumerable.Range(j + 1, points.Count - j - 1)
            where sides.ContainsKey((points[j], points[k])) && sides.ContainsKey((points[i], points[k]))
            let three = new[] { sides[(points[i], points[j])], sides[(points[j], points[k])], sides[(points[i], points[k])] }
            let ordered = three.OrderByDescending(f => f.Metres).ToList()
            where Excess(ordered, ordered[0].Metres, ordered[0].Id) > 0
            select Finding(ordered, [points[i], points[j], points[k]]);
    }

    /// <summary>By how much the longest side is too long once one figure has another value, rounding allowed for.</summary>
    private static double Excess(IReadOnlyList<PageFigure> three, double metres, string id)
    {
        var sides = three.Select(f => f.Id == id ? metres : f.Metres).ToList();
        return (2 * sides.Max()) - sides.Sum() - three.Sum(f => f.RoundingMetres) - 1e-9;
    }

    private static BookFinding Finding(IReadOnlyList<PageFigure> three, IReadOnlyList<string> points) =>
        BookFinding.Of(
            FindingKind.NoTriangle,
            three.Select(f => f.Id),
            Texts.Say(
                "book.triangle-check.no-triangle-has-these-sides",
                string.Join(", ", points),
                three[0].Id,
                three[0].Value.AsTyped,
                three[1].Id,
                three[1].Value.AsTyped,
                three[2].Id,
                three[2].Value.AsTyped,
                PageFigure.Text(three[1].Metres + three[2].Metres, three[0].Value.Unit)
            ),
            three.SelectMany(f => f.Slips(m => m > 0 && Excess(three, m, f.Id) <= 0))
        );

    private static Dictionary<(string A, string B), PageFigure> Sides(IReadOnlyList<PageFigure> figures, bool isDirect)
    {
        var sides = new Dictionary<(string, string), PageFigure>();
        foreach (var figure in figures)
        {
            foreach (
                var b in figure
                    .Dimension.Subjects.Select(s => s.Ordered)
                    .OfType<BookSubject.Between>()
                    .Where(b => IsMeant(b.Sense, isDirect))
            )
            {
                sides.TryAdd((b.From, b.To), figure);
            }
        }

        return sides;
    }

    private static bool IsMeant(LengthSense sense, bool isDirect) =>
        isDirect ? sense == LengthSense.Direct : sense is LengthSense.Plan or LengthSense.Unsaid;
}
