using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Nominals;

/// <summary>Coordinates of the frame's points from what the book prints: chains, offsets from a datum, widths, heights and lengths together.</summary>
/// <param name="Points">What could be worked out, in the order of the figures.</param>
/// <param name="Missing">Points of the frame that the book leaves without any coordinate.</param>
/// <param name="Remarks">What the person should know before using them.</param>
public sealed record NominalsFromBook(IReadOnlyList<BookNominal> Points, IReadOnlyList<string> Missing, IReadOnlyList<string> Remarks)
{
    // Drawings of the time give no more; what is worked out is not shown finer.
    private static readonly Length s_inchStep = Length.FromInches(0.01m);
    private static readonly Length s_millimetreStep = Length.FromMillimetres(0.1m);

    /// <summary>The coordinates that the figures which apply to a car give. Doubted figures are left out.</summary>
    public static NominalsFromBook Of(CarFile car)
    {
        var used = BookForCar.Of(car).Frame;
        var figures = used.Select(u => new PageFigure(u.Dimension, ((Bench.Amount.OfLength)u.Dimension.Used!).Value)).ToList();
        var network = BookNetwork.Of(Named(figures), id => car.Frame.Point(id)?.Sketch);
        if (network.Network.Observations.Count == 0)
        {
            return new NominalsFromBook([], LeftOut(car, []), [Texts.Say("book.nominals-from-book.the-book-gives-no-figure")]);
        }

        var outcome = NetworkAdjustment.Solve(network.Network);
        if (outcome.FitOrNull is not { } fit)
        {
            return new NominalsFromBook([], LeftOut(car, []), [Texts.Say("book.nominals-from-book.the-books-figures-do-not")]);
        }

        var hasSketch = car.Frame.Points.Any(p => p.Sketch?.X is not null);
        var points = fit
            .Points.Select(p => Nominal(p, network, used, car.Units, hasSketch))
            .Where(n => n.Place is not { X: null, Y: null, Z: null })
            .ToList();
        return new NominalsFromBook(points, LeftOut(car, points), [.. RemarksOn(network, fit, hasSketch)]);
    }

    /// <summary>The frame's points with what the book gives in place of what stood there; points the car does not have are left out.</summary>
    public IEnumerable<FramePoint> Fill(Frame frame) =>
        from nominal in Points
        let point = frame.Point(nominal.Point)
        where point is not null
        select point with
        {
            Nominal = nominal.Place,
            NominalSource = nominal.Source,
            NominalDoubt = null,
        };

    // Two pages may use one letter for two figures; in the network each needs a name of its own.
    private static IReadOnlyList<PageFigure> Named(IReadOnlyList<PageFigure> figures) =>
        [.. figures.Select((f, i) => f with { Dimension = f.Dimension with { Id = $"{i}" } })];

    private static BookNominal Nominal(
        PointEstimate point,
        BookNetwork network,
        IReadOnlyList<FigureOnPage> used,
        LengthUnit units,
        bool hasSketch
    )
    {
        var x = network.HasAlong || hasSketch ? point.XMetres : null;
        var z = network.HasHeights ? point.ZMetres : null;
        var place = new Place(Rounded(x, units), Rounded(point.YMetres, units), Rounded(z, units));
        double?[] sigmas = [x is null ? null : point.UxMetres, point.UyMetres, z is null ? null : point.UzMetres];
        return new BookNominal(point.Id, place, Source(point.Id, used), sigmas.Max());
    }

    private static string Source(string point, IReadOnlyList<FigureOnPage> used)
    {
        var pages = used.Where(u => u.Dimension.Subjects.SelectMany(s => s.Points).Contains(point))
            .GroupBy(u => (u.Page.Source with { Figure = null }).ToString(), StringComparer.Ordinal)
            .Select(g =>
                $"{g.Key}: {string.Join(", ", g.Select(u => u.Dimension.Source.Figure ?? u.Dimension.Id).Distinct(StringComparer.Ordinal))}"
            );
        return string.Join("; ", pages);
    }

    private static Length? Rounded(double? metres, LengthUnit units)
    {
        if (metres is not { } value || !double.IsFinite(value))
        {
            return null;
        }

        var rounded = new LengthDisplay(units == LengthUnit.Inch ? s_inchStep : s_millimetreStep).Rounded(value);
        // Written as a plain decimal, so that the car file shows a number.
        return Length.FromNumber((decimal)(units == LengthUnit.Inch ? rounded.Inches : rounded.Millimetres), units);
    }

    private static IReadOnlyList<string> LeftOut(CarFile car, IReadOnlyList<BookNominal> points) =>
        [.. car.Frame.Points.Select(p => p.Id).Where(id => points.All(n => n.Point != id))];

    private static IEnumerable<string> RemarksOn(BookNetwork network, NetworkFit fit, bool hasSketch)
    {
        if (!network.HasStations)
        {
            yield return network.HasAlong ? Texts.Say("book.nominals-from-book.no-station-is-counted-from")
            : hasSketch ? Texts.Say("book.nominals-from-book.nothing-is-given-along-the")
            : Texts.Say("book.nominals-from-book.nothing-is-given-along-the-car-and-there-is");
        }

        if (!network.HasHeights)
        {
            yield return Texts.Say("book.nominals-from-book.no-height-is-given-above");
        }

        if (fit.ChiSquareProbability is < 0.001)
        {
            yield return Texts.Say("book.nominals-from-book.the-figures-contradict-each-other");
        }
    }
}
