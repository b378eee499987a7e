using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>Names and verdict words of the points, in a lane on each side of the drawing, each joined to its point by a thin line.</summary>
internal sealed class PointLabels : IPointLabels
{
    private const double WidestLane = 96;
    private const double OneLine = 17;
    private const double TwoLines = 31;
    private readonly FloorScene _scene;
    private readonly bool _hasWords;
    private readonly Dictionary<string, (double Middle, bool IsLeft)> _places = new(StringComparer.Ordinal);

    public PointLabels(FloorScene scene, double from, double to)
    {
        _scene = scene;
        _hasWords = HasRoomForWords(scene.Seen, to - from);
        foreach (var isLeft in new[] { true, false })
        {
            var labels = scene
                .Seen.Where(s => GoesLeft(s.Placed) == isLeft)
                .Select(s => new Lane.Label(s.Id, scene.Figure.Drawn(s).Y, _hasWords ? TwoLines : OneLine, Weight(scene, s)));
            foreach (var (id, middle) in Lane.Place(labels, from, to))
            {
                _places[id] = (middle, isLeft);
            }
        }
    }

    /// <summary>Where the labels stand: nothing else may be written there.</summary>
    public IEnumerable<Patch> Patches =>
        from seen in _scene.Seen
        where _places.ContainsKey(seen.Id)
        let place = _places[seen.Id]
        let width = LabelWidth(seen, _hasWords)
        let left = place.IsLeft ? 2 : _scene.Options.Width - 2 - width
        let half = (_hasWords ? TwoLines : OneLine) / 2
        select new Patch(left, place.Middle - half, left + width, place.Middle + half);

    public int LeftOut => _scene.Seen.Count - _places.Count;

    /// <summary>The width that the labels of one side need.</summary>
    public static double LaneWidth(IEnumerable<Seen> seen, bool isLeft, double height)
    {
        var all = seen.ToList();
        var hasWords = HasRoomForWords(all, height);
        return all.Where(s => GoesLeft(s.Placed) == isLeft).Select(s => LabelWidth(s, hasWords)).DefaultIfEmpty(0).Max() + 6;
    }

    /// <summary>The height that the longer lane needs with its words.</summary>
    public static double HeightFor(IReadOnlyList<Seen> seen) =>
        Math.Max(seen.Count(s => GoesLeft(s.Placed)), seen.Count(s => !GoesLeft(s.Placed))) * TwoLines;

    public IEnumerable<Shape> Draw(Seen seen)
    {
        if (!_places.TryGetValue(seen.Id, out var place))
        {
            yield break;
        }

        var width = _scene.Options.Width;
        var anchor = place.IsLeft ? Anchor.Start : Anchor.End;
        var outer = place.IsLeft ? 2 : width - 2;
        var name = Plate.Cut(seen.Id, Palette.Name, WidestLane);
        var inner = outer + ((place.IsLeft ? 1 : -1) * (LabelWidth(seen, _hasWords) + 3));
        yield return new Shape.Line(new Spot(inner, place.Middle), _scene.Figure.Drawn(seen), Palette.Leader);
        var sign = PointSigns.Of(seen);
        var isOut = sign == PointSign.Out;
        if (_hasWords && HasVerdict(sign))
        {
            yield return new Shape.Words(new Spot(outer, place.Middle - 2), name, Palette.Name, anchor);
            yield return new Shape.Words(
                new Spot(outer, place.Middle + 11.5),
                PointSigns.Words(sign),
                isOut ? Palette.OutWord : Palette.Note,
                anchor
            );
        }
        else
        {
            var text = isOut ? Texts.Say("drawing.point-labels.out", name) : name;
            yield return new Shape.Words(new Spot(outer, place.Middle + 5), text, isOut ? Palette.OutWord : Palette.Name, anchor);
        }
    }

    private static bool HasVerdict(PointSign sign) => sign is PointSign.True or PointSign.Out or PointSign.CannotTellYet;

    private static bool GoesLeft(PlacedPoint placed) => placed.IsLeft;

    private static bool HasRoomForWords(IReadOnlyList<Seen> seen, double height) => HeightFor(seen) <= height;

    private static double LabelWidth(Seen seen, bool hasWords)
    {
        var sign = PointSigns.Of(seen);
        var name = Math.Min(WidestLane, Plate.WidthOf(seen.Id, Palette.Name));
        var word = Plate.WidthOf(PointSigns.Words(sign), sign == PointSign.Out ? Palette.OutWord : Palette.Note);
        return hasWords && HasVerdict(sign) ? Math.Max(name, word)
            : sign == PointSign.Out ? name + Plate.WidthOf(" out", Palette.OutWord)
            : name;
    }

    /// <summary>What must be named before the rest when there is no room for all.</summary>
    public static int Weight(FloorScene scene, Seen seen)
    {
        var isNext = scene.Answer.Next is [var next, ..] && (next.From == seen.Id || next.To == seen.Id || next.Point == seen.Id);
        var isDoubted = scene.Answer.Suspects.Any(s => s.Point == seen.Id);
        return (isNext || isDoubted || PointSigns.Of(seen) == PointSign.Out ? 4 : 0)
            + (seen.Placed.Verdict is not null ? 2 : 0)
            + (seen.IsMeasured ? 1 : 0);
    }
}
