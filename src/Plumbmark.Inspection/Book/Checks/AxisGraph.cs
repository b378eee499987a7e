using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Book.Checks;

/// <summary>Figures that run along one axis of the car, as steps from place to place: what stands where, and which rounds must close.</summary>
internal sealed class AxisGraph
{
    /// <summary>The name of what a station, a side or a height is counted from; no point can be called so.</summary>
    public const string Datum = "\0";

    private readonly Dictionary<string, (string? Before, PageFigure? Figure, int Sign, double Metres)> _tree = new(StringComparer.Ordinal);

    private AxisGraph(string words, IReadOnlyList<(string From, string To, PageFigure Figure, int Sign, double Metres)> steps)
    {
        Words = words;
        var byPlace = steps
            .SelectMany(s => new[] { (s.From, Step: s), (From: s.To, Step: (s.To, s.From, s.Figure, -s.Sign, -s.Metres)) })
            .ToLookup(s => s.From, s => s.Step, StringComparer.Ordinal);
        // The datum goes first, so that what is tied to it is counted from it.
        foreach (var root in byPlace.Select(g => g.Key).OrderBy(k => k == Datum ? 0 : 1))
        {
            Grow(root, byPlace);
        }

        Loops = [.. steps.Select(Closing).OfType<Loop>().DistinctBy(l => string.Join('\n', l.Ids.Order(StringComparer.Ordinal)))];
    }

    public string Words { get; }

    /// <summary>Every independent round of figures.</summary>
    public IReadOnlyList<Loop> Loops { get; }

    /// <summary>Where each place tied to the datum stands, metres; along the car backward, across it to the left, upward.</summary>
    public IEnumerable<(string Place, double Metres, IReadOnlyList<PageFigure> By)> FromDatum => Tied(root => root == Datum);

    /// <summary>Places that hang together but on no datum, with where each stands from the first of them, largest lot first.</summary>
    public IEnumerable<IReadOnlyList<(string Place, double Metres, IReadOnlyList<PageFigure> By)>> Adrift =>
        Tied(root => root != Datum)
            .GroupBy(p => RootOf(p.Place), StringComparer.Ordinal)
            .OrderByDescending(g => g.Count())
            .Select(g => (IReadOnlyList<(string, double, IReadOnlyList<PageFigure>)>)[.. g]);

    public static AxisGraph Along(IReadOnlyList<PageFigure> figures) =>
        new(Texts.Say("book.axis-graph.along-the-car"), [.. Steps(figures, LengthSense.Along, Ordinate.Station)]);

    /// <summary>The same where the drawing is taken as symmetrical: both of a pair stand equally far back.</summary>
    public static AxisGraph AlongInPairs(IReadOnlyList<PageFigure> figures)
    {
        var steps = Steps(figures, LengthSense.Along, Ordinate.Station).ToList();
        var places = steps.SelectMany(s => new[] { s.From, s.To }).ToHashSet(StringComparer.Ordinal);
        var level =
            from figure in figures
            where !figure.Dimension.IsHanded
            from subject in figure.Dimension.Subjects
            from point in subject.Points
            let other = BookSubject.OtherSide(point)
            where point != other && (places.Contains(point) || places.Contains(other))
            let names = string.CompareOrdinal(point, other) < 0 ? (From: point, To: other) : (From: other, To: point)
            group figure by names into pair
            select (pair.Key.From, pair.Key.To, PageFigure.BySymmetry, 1, 0.0);
        return new(Texts.Say("book.axis-graph.along-the-car"), [.. steps, .. level]);
    }

    public static AxisGraph Upward(IReadOnlyList<PageFigure> figures) =>
        new(Texts.Say("book.axis-graph.in-height"), [.. Steps(figures, LengthSense.Rise, Ordinate.Height)]);

    /// <param name="figures">The figures.</param>
    /// <param name="isHalved">Whether a width across a pair puts each half on its side of the centre line, as the drawing has it.</param>
    public static AxisGraph Across(IReadOnlyList<PageFigure> figures, bool isHalved) =>
        new(
            Texts.Say("book.axis-graph.across-the-car"),
            [.. Steps(figures, LengthSense.Across, Ordinate.Side).SelectMany(s => isHalved ? Halved(s) : [s])]
        );

    private static IEnumerable<(string From, string To, PageFigure Figure, int Sign, double Metres)> Steps(
        IReadOnlyList<PageFigure> figures,
        LengthSense sense,
        Ordinate ordinate
    ) =>
        from figure in figures
        from subject in figure.Dimension.Subjects
        let ends = Ends(subject, sense, ordinate)
        where ends is not null
        select (ends.Value.From, ends.Value.To, figure, ends.Value.Sign, ends.Value.Sign * figure.Metres);

    private static (string From, string To, int Sign)? Ends(BookSubject subject, LengthSense sense, Ordinate ordinate) =>
        subject switch
        {
            // Across: how far the first point lies to the left of the second.
            BookSubject.Between { Sense: LengthSense.Across } b when sense == LengthSense.Across => (b.To, b.From, 1),
            BookSubject.Between b when b.Sense == sense => (b.From, b.To, 1),
            BookSubject.At a when a.Ordinate == ordinate => (Datum, a.Point, ordinate == Ordinate.Side && IsRight(a.Point) ? -1 : 1),
            _ => null,
        };

    private static IEnumerable<(string, string, PageFigure, int, double)> Halved(
        (string From, string To, PageFigure Figure, int Sign, double Metres) step
    ) =>
        BookSubject.OtherSide(step.From) == step.To && step.From != step.To
            ? [(Datum, step.From, step.Figure, -step.Sign, -step.Metres / 2), (Datum, step.To, step.Figure, step.Sign, step.Metres / 2)]
            : [step];

    private static bool IsRight(string point) => point.EndsWith(".R", StringComparison.Ordinal);

    private void Grow(string root, ILookup<string, (string From, string To, PageFigure Figure, int Sign, double Metres)> steps)
    {
        if (!_tree.TryAdd(root, (null, null, 0, 0)))
        {
            return;
        }

        var waiting = new Queue<string>([root]);
        while (waiting.TryDequeue(out var place))
        {
            foreach (var step in steps[place].Where(s => !_tree.ContainsKey(s.To)))
            {
                _tree[step.To] = (place, step.Figure, step.Sign, _tree[place].Metres + step.Metres);
                waiting.Enqueue(step.To);
            }
        }
    }

    private IEnumerable<(string Place, double Metres, IReadOnlyList<PageFigure> By)> Tied(Func<string, bool> isRoot) =>
        from link in _tree
        where link.Key != Datum && isRoot(RootOf(link.Key))
        select (link.Key, link.Value.Metres, (IReadOnlyList<PageFigure>)[.. PathFrom(link.Key).Select(p => p.Figure)]);

    private string RootOf(string place)
    {
        while (_tree[place].Before is { } before)
        {
            place = before;
        }

        return place;
    }

    /// <summary>The round that a step closes with the tree; null for a step of the tree itself.</summary>
    private Loop? Closing((string From, string To, PageFigure Figure, int Sign, double Metres) step)
    {
        if (IsInTree(step.From, step.To, step.Figure) || IsInTree(step.To, step.From, step.Figure))
        {
            return null;
        }

        var (there, back) = (PathFrom(step.From), PathFrom(step.To));
        while (there.Count > 0 && back.Count > 0 && there[^1].Place == back[^1].Place)
        {
            there.RemoveAt(there.Count - 1);
            back.RemoveAt(back.Count - 1);
        }

        return new Loop(
            [(step.Figure, step.Sign), .. there.Select(t => (t.Figure, t.Sign)), .. back.Select(t => (t.Figure, -t.Sign))],
            Words
        );
    }

    private bool IsInTree(string from, string to, PageFigure figure) =>
        _tree[to].Before == from && ReferenceEquals(_tree[to].Figure, figure);

    private List<(string Place, PageFigure Figure, int Sign)> PathFrom(string place)
    {
        var path = new List<(string, PageFigure, int)>();
        while (_tree[place] is { Before: { } before, Figure: { } figure } link)
        {
            path.Add((place, figure, link.Sign));
            place = before;
        }

        return path;
    }
}
