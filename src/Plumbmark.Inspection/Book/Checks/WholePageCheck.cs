using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book.Nominals;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Do all lengths, widths, stations and heights of the page describe one frame? If not, which figure do the others contradict?</summary>
/// <remarks>
/// The figures are fitted like readings. Where rounding cannot explain the fit (global test, α = 0.001), each of the most doubtful figures is left
/// out in turn; one without which the rest agree is a suspect, and what the rest give for it is compared with the usual slips. With one
/// figure too many a misprint is proved but not located: then all its suspects are named.
/// </remarks>
internal static class WholePageCheck
{
    private const double Alpha = 0.001;
    private const int MostTried = 8;

    public static IEnumerable<BookFinding> Of(IReadOnlyList<PageFigure> all, IReadOnlyList<BookFinding> simple)
    {
        // A figure that a simpler check has found out is told there; here it would only hide the next one.
        var found = simple
            .Where(f => f.Slips.Count > 0 && f.Slips.All(s => s.Dimension == f.Slips[0].Dimension))
            .Select(f => f.Slips[0].Dimension)
            .ToHashSet(StringComparer.Ordinal);
        IReadOnlyList<PageFigure> figures = [.. all.Where(f => !found.Contains(f.Id))];
        var network = BookNetwork.ForChecking(figures);
        if (network.Network.Observations.Count == 0 || NetworkAdjustment.Solve(network.Network).FitOrNull is not { } fit || Agrees(fit))
        {
            yield break;
        }

        var doubtful = fit
            .Readings.Where(r => network.FigureOf(r.Id) is not null && r.Standardised is not null)
            .OrderByDescending(r => Math.Abs(r.Standardised!.Value))
            .Select(r => network.FigureOf(r.Id)!)
            .Distinct(StringComparer.Ordinal)
            .Take(MostTried);
        var suspects = doubtful
            .Concat(simple.Where(f => f.Kind == FindingKind.ChainDoesNotClose).SelectMany(f => f.Dimensions))
            .Distinct(StringComparer.Ordinal)
            .Where(id => figures.Any(f => f.Id == id))
            .Select(id => Without(figures, id))
            .OfType<(PageFigure Figure, double Metres, double? OtherSenseMetres)>()
            .ToList();
        yield return suspects.Count > 0 ? Located(suspects) : NotLocated(fit);
    }

    private static BookFinding Located(IReadOnlyList<(PageFigure Figure, double Metres, double? OtherSenseMetres)> suspects)
    {
        var slips = suspects.SelectMany(s =>
            s.Figure.Slips(m => Math.Abs(m - s.Metres) <= s.Figure.RoundingMetres + AllowedMetres).Concat(Exchanged(s))
        );
        var ids = string.Join(" or ", suspects.Select(s => s.Figure.Id));
        var what = suspects.Select(s =>
            Texts.Say(
                "book.whole-page-check.is-printed-as-the-others",
                s.Figure.Id,
                s.Figure.Dimension.Subject.Words,
                s.Figure.Value.AsTyped,
                PageFigure.Text(s.Metres, s.Figure.Value.Unit)
            )
        );
        return BookFinding.Of(
            FindingKind.DoesNotFit,
            suspects.Select(s => s.Figure.Id),
            Texts.Say("book.whole-page-check.the-figures-of-this-page", ids, string.Join("; ", what)),
            slips
        );
    }

    private static BookFinding NotLocated(NetworkFit fit) =>
        BookFinding.Of(FindingKind.DoesNotFit, [], Texts.Say("book.whole-page-check.the-lengths-stations-and-heights", fit.Readings.Count));

    // What a slip gives and what the others give agree within the drawing's own fineness: twice a fifth of a millimetre.
    private const double AllowedMetres = 0.4e-3;

    private static IEnumerable<LikelySlip> Exchanged((PageFigure Figure, double Metres, double? OtherSenseMetres) suspect) =>
        suspect is { Figure.IsPrinted: true, OtherSenseMetres: { } other }
        && Math.Abs(other - suspect.Figure.Metres) <= suspect.Figure.RoundingMetres + AllowedMetres
            ? [new LikelySlip(suspect.Figure.Id, suspect.Figure.Value, Rounded(suspect), SlipKind.PlanForDirect)]
            : [];

    private static Length Rounded((PageFigure Figure, double Metres, double? OtherSenseMetres) suspect) =>
        LengthDisplay
            .For(
                suspect.Figure.Value.Unit,
                suspect.Figure.Value.Unit == LengthUnit.Inch ? Length.FromFraction(0, 1, 64, LengthUnit.Inch) : Length.FromMillimetres(0.1m)
            )
            .Rounded(suspect.Metres);

    private static bool Agrees(NetworkFit fit) => fit.ChiSquareProbability is not { } p || p >= Alpha;

    /// <summary>What the others give for a figure; null when they disagree without it as well, or do not reach it.</summary>
    private static (PageFigure Figure, double Metres, double? OtherSenseMetres)? Without(IReadOnlyList<PageFigure> figures, string id)
    {
        var figure = figures.First(f => f.Id == id);
        var rest = BookNetwork.Of([.. figures.Where(f => f.Id != id)], _ => null);
        return
            rest.Network.Observations.Count > 0
            && NetworkAdjustment.Solve(rest.Network).FitOrNull is { } fit
            && Agrees(fit)
            && Given(fit, figure.Dimension.Subject) is { } metres
            ? (figure, metres, OtherSense(figure.Dimension.Subject) is { } other ? Given(fit, other) : null)
            : null;
    }

    private static BookSubject.Between? OtherSense(BookSubject subject) =>
        subject is BookSubject.Between { Sense: LengthSense.Plan or LengthSense.Direct or LengthSense.Unsaid } b
            ? b with
            {
                Sense = b.Sense == LengthSense.Direct ? LengthSense.Plan : LengthSense.Direct,
            }
            : null;

    private static double? Given(NetworkFit fit, BookSubject subject)
    {
        PointEstimate? Find(string id) => fit.Points.FirstOrDefault(p => p.Id == id);
        return subject switch
        {
            BookSubject.Between b when Find(b.From) is { } from && Find(b.To) is { } to => Between(from, to, b.Sense),
            BookSubject.At a when Find(a.Point) is { } point => a.Ordinate switch
            {
                Ordinate.Station => -point.XMetres,
                Ordinate.Side => point.YMetres is { } y ? Math.Abs(y) : null,
                _ => point.ZMetres,
            },
            _ => null,
        };
    }

    private static double? Between(PointEstimate from, PointEstimate to, LengthSense sense)
    {
        var (dx, dy, dz) = (to.XMetres - from.XMetres, to.YMetres - from.YMetres, to.ZMetres - from.ZMetres);
        return sense switch
        {
            LengthSense.Along => -dx,
            LengthSense.Across => -dy,
            LengthSense.Rise => dz,
            LengthSense.Direct => dx is { } x && dy is { } y && dz is { } z ? Math.Sqrt((x * x) + (y * y) + (z * z)) : null,
            _ => dx is { } x && dy is { } y ? double.Hypot(x, y) : null,
        };
    }
}
