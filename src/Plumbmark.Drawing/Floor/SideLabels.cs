using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Floor;

/// <summary>Names of the points in a lane above (left side) and below (right side) a view.</summary>
internal sealed class SideLabels : IPointLabels
{
    private const double Gap = 7;
    private readonly FloorScene _scene;
    private readonly double _above;
    private readonly double _below;
    private readonly Dictionary<string, double> _middles = new(StringComparer.Ordinal);

    public SideLabels(FloorScene scene, double above, double below)
    {
        (_scene, _above, _below) = (scene, above, below);
        foreach (var isLeft in new[] { true, false })
        {
            var labels = scene
                .Seen.Where(s => s.Placed.IsLeft == isLeft)
                .Select(s => new Lane.Label(
                    s.Id,
                    scene.Figure.Drawn(s).X,
                    Plate.WidthOf(Text(s), Palette.Name) + Gap,
                    PointLabels.Weight(scene, s)
                ));
            foreach (var (id, middle) in Lane.Place(labels, 0, scene.Options.Width))
            {
                _middles[id] = middle;
            }
        }
    }

    public int LeftOut => _scene.Seen.Count - _middles.Count;

    public IEnumerable<Shape> Draw(Seen seen)
    {
        if (!_middles.TryGetValue(seen.Id, out var middle))
        {
            yield break;
        }

        var isLeft = seen.Placed.IsLeft;
        var from = new Spot(middle, isLeft ? _above + 2 : _below - 2);
        yield return new Shape.Line(from, _scene.Figure.Drawn(seen), Palette.Leader);
        var lettering = PointSigns.Of(seen) == PointSign.Out ? Palette.OutWord : Palette.Name;
        yield return new Shape.Words(new Spot(middle, isLeft ? _above - 2 : _below + 12), Text(seen), lettering, Anchor.Middle);
    }

    private static string Text(Seen seen)
    {
        var name = Plate.Cut(seen.Id, Palette.Name, 92);
        return PointSigns.Of(seen) == PointSign.Out ? Texts.Say("drawing.side-labels.out", name) : name;
    }
}
