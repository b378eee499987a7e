using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Floor;

/// <summary>The outline that makes a frame of the points: a rail down each side, spurs to what stands beside a rail, lines across between partners.</summary>
internal static class FrameLines
{
    public static IEnumerable<Shape> Draw(FloorScene scene)
    {
        foreach (var (from, to) in Segments(scene))
        {
            if (from.IsMeasured && to.IsMeasured)
            {
                yield return new Shape.Line(scene.Figure.Should(from), scene.Figure.Should(to), Palette.Should);
            }
        }

        foreach (var (from, to) in Segments(scene))
        {
            var isFar = scene.View == FloorView.Side && !from.Placed.IsLeft;
            var ink =
                !from.IsMeasured || !to.IsMeasured ? Palette.Sketched
                : isFar ? Palette.FarSide
                : Palette.Frame;
            yield return new Shape.Line(scene.Figure.Drawn(from), scene.Figure.Drawn(to), ink);
        }
    }

    /// <summary>The lines of the outline, each from point to point.</summary>
    public static IEnumerable<(Seen From, Seen To)> Segments(FloorScene scene)
    {
        var onRails = new HashSet<string>(StringComparer.Ordinal);
        foreach (var isLeft in new[] { true, false })
        {
            var side = scene.Side(isLeft).ToList();
            var rail = OnRail(side);
            onRails.UnionWith(rail.Select(r => r.Id));
            foreach (var (from, to) in rail.Zip(rail.Skip(1)))
            {
                yield return (from, to);
            }

            if (rail.Count > 0)
            {
                foreach (var beside in side.Except(rail))
                {
                    yield return (rail.MinBy(r => Math.Abs(r.Placed.XMetres - beside.Placed.XMetres))!, beside);
                }
            }
        }

        if (scene.View == FloorView.Plan)
        {
            foreach (var left in scene.Side(left: true))
            {
                if (scene.Find(left.Placed.Point.Mirror) is { } right && onRails.Contains(left.Id) && onRails.Contains(right.Id))
                {
                    yield return (left, right);
                }
            }
        }
    }

    /// <summary>The points that a rail runs through: not an outrigger that reaches much further out, nor a mount far inside.</summary>
    private static List<Seen> OnRail(List<Seen> side)
    {
        if (side.Count < 4)
        {
            return side;
        }

        // Shares of the middle half width: a rail sweeps that much, an outrigger or an inner mount goes beyond it.
        const double Outermost = 1.45;
        const double Innermost = 0.55;
        var halves = side.Select(s => Math.Abs(s.Placed.YMetres)).Order().ToList();
        var middle = halves[halves.Count / 2];
        return [.. side.Where(s => Math.Abs(s.Placed.YMetres) is var half && half <= Outermost * middle && half >= Innermost * middle)];
    }
}
