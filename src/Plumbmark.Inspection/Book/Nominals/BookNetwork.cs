using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book.Checks;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Book.Nominals;

/// <summary>The figures of a page as readings of one network: the book measured the drawing, and rounded.</summary>
/// <remarks>
/// Stations, chains along and across the car are put on the axes first and enter as known coordinates; lengths, heights and rises enter as they
/// are. The drawing is taken as symmetrical: a width across a pair lies half to each side of the centre line. Lengths of unsaid sense enter as plan.
/// </remarks>
internal sealed class BookNetwork
{
    // Rounding is a rectangle of this half width (JCGM 100:2008, 4.3.7: divide by √3); the least is a fifth of a millimetre, because drawings of
    // the time were not finer. Own convention, no published source.
    private const double LeastSigmaMetres = 0.2e-3;
    private static readonly double s_rectangle = Math.Sqrt(3);

    private readonly Dictionary<string, string> _figureOf = new(StringComparer.Ordinal);
    private readonly List<Observation> _observations = [];
    private readonly Dictionary<string, (double? X, double? Y)> _places = new(StringComparer.Ordinal);

    private BookNetwork(IReadOnlyList<PageFigure> figures, Func<string, Place?> sketchOf, bool isForChecking)
    {
        var alongs = AxisGraph.AlongInPairs(figures);
        HasStations = alongs.FromDatum.Any();
        // Without a datum the largest chain is counted from its foremost place.
        var adrift = HasStations ? null : alongs.Adrift.FirstOrDefault();
        var front = adrift?.Min(p => p.Metres) ?? 0;
        foreach (var (place, metres, by) in HasStations ? alongs.FromDatum : adrift ?? [])
        {
            Know(place, Axis.X, -(metres - front), by);
        }

        HasAlong = _observations.Count > 0;
        foreach (var (place, metres, by) in AxisGraph.Across([.. figures.Select(AsAcross)], isHalved: true).FromDatum)
        {
            Know(place, Axis.Y, metres, by);
        }

        foreach (var figure in figures)
        {
            foreach (var subject in figure.Dimension.Subjects)
            {
                Observe(figure, subject);
            }
        }

        HasHeights = _observations.OfType<Observation.Height>().Any();
        Network = new Network(
            Points(figures, sketchOf),
            isForChecking ? Bearing.Disagreeing(_observations) : Bearing.Settling(_observations)
        );
    }

    public Network Network { get; }

    /// <summary>Whether stations are counted from a datum of the page.</summary>
    public bool HasStations { get; }

    /// <summary>Whether anything runs along the car.</summary>
    public bool HasAlong { get; }

    public bool HasHeights { get; }

    /// <summary>For the places of points.</summary>
    public static BookNetwork Of(IReadOnlyList<PageFigure> figures, Func<string, Place?> sketchOf) =>
        new(figures, sketchOf, isForChecking: false);

    /// <summary>For finding contradictions: only what can disagree.</summary>
    public static BookNetwork ForChecking(IReadOnlyList<PageFigure> figures) => new(figures, _ => null, isForChecking: true);

    /// <summary>The figure behind a reading; null when it follows from several.</summary>
    public string? FigureOf(string readingId) => _figureOf.GetValueOrDefault(readingId);

    private void Know(string place, Axis axis, double metres, IReadOnlyList<PageFigure> by)
    {
        var sigma = Math.Max(LeastSigmaMetres, Math.Sqrt(by.Sum(f => f.RoundingMetres * f.RoundingMetres)) / s_rectangle);
        var printed = by.Where(f => f != PageFigure.BySymmetry).ToList();
        var id = Named(printed.Count == 1 ? printed[0].Id : null);
        _observations.Add(new Observation.CoordinatePrior(id, place, axis, metres, sigma));
        var known = _places.GetValueOrDefault(place);
        _places[place] = axis == Axis.X ? (metres, known.Y) : (known.X, metres);
    }

    private void Observe(PageFigure figure, BookSubject subject)
    {
        var sigma = Math.Max(LeastSigmaMetres, figure.RoundingMetres / s_rectangle);
        string Id() => Named(figure.Id);
        switch (subject)
        {
            // A width is a length in plan as well: that keeps both of a pair at one station where nothing else does.
            case BookSubject.Between b
                when b.Sense is LengthSense.Plan or LengthSense.Unsaid || (IsPair(b) && b.Sense == LengthSense.Across):
                _observations.Add(new Observation.PlanDistance(Id(), b.From, b.To, Math.Abs(figure.Metres), sigma));
                break;
            case BookSubject.Between { Sense: LengthSense.Direct } b when !IsPair(b):
                _observations.Add(new Observation.DirectDistance(Id(), b.From, b.To, figure.Metres, sigma));
                break;
            case BookSubject.Between { Sense: LengthSense.Rise } b:
                _observations.Add(new Observation.Rise(Id(), b.From, b.To, figure.Metres, sigma));
                break;
            case BookSubject.At { Ordinate: Ordinate.Height } a:
                _observations.Add(new Observation.Height(Id(), a.Point, figure.Metres, sigma));
                break;
        }
    }

    private string Named(string? figure)
    {
        var id = $"o{_observations.Count + 1}";
        if (figure is not null)
        {
            _figureOf[id] = figure;
        }

        return id;
    }

    private IEnumerable<NetworkPoint> Points(IReadOnlyList<PageFigure> figures, Func<string, Place?> sketchOf)
    {
        var names = figures.SelectMany(f => f.Dimension.Subjects).SelectMany(s => s.Points).Distinct(StringComparer.Ordinal).ToList();
        var sketches = names.ToDictionary(n => n, sketchOf, StringComparer.Ordinal);
        // The sketch has its own zero along the car; it is brought to the book's before it serves as a start.
        var shifts = names
            .Where(n => _places.GetValueOrDefault(n).X is not null && sketches[n]?.X is not null)
            .Select(n => _places[n].X!.Value - sketches[n]!.X!.Value.Metres)
            .ToList();
        var shift = shifts.Count > 0 ? shifts.Average() : 0;
        return names.Select(name =>
        {
            var (x, y) = _places.GetValueOrDefault(name);
            var sketch = sketches[name];
            return new NetworkPoint(name)
            {
                SketchXMetres = x ?? sketch?.X?.Metres + shift,
                SketchYMetres = y ?? sketch?.Y?.Metres,
                SketchZMetres = sketch?.Z?.Metres,
            };
        });
    }

    private static bool IsPair(BookSubject.Between b) => BookSubject.OtherSide(b.From) == b.To;

    /// <summary>A length between left and right of one pair runs square across a symmetrical car, whatever the page calls it.</summary>
    private static PageFigure AsAcross(PageFigure figure) =>
        figure.Dimension.Subject is BookSubject.Between { Sense: LengthSense.Plan or LengthSense.Direct or LengthSense.Unsaid } b
        && IsPair(b)
            ? figure with
            {
                Dimension = figure.Dimension with
                {
                    Subject = new BookSubject.Between(Left(b), BookSubject.OtherSide(Left(b)), LengthSense.Across),
                    IsBothSides = false,
                },
            }
            : figure;

    private static string Left(BookSubject.Between b) => b.From.EndsWith(".L", StringComparison.Ordinal) ? b.From : b.To;
}
