using Plumbmark.Inspection.Floor.Comparing;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>
/// Lays a measured frame along x with its centre line on y = 0: first roughly, by the direction across its pairs or by the drawing, then by
/// <see cref="FrameLie"/> until it rests.
/// </summary>
internal static class FramePlacing
{
    private const double RestRadians = 1e-9; // a thousandth of a micrometre over a metre
    private const int MostRounds = 10;

    /// <summary>The frame in its own axes; as it came when neither pairs nor drawing tell how it lies.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="damage">Displacements by damage believed to be there: see <see cref="FrameLie.Of"/>.</param>
    public static MeasuredFrame InOwnAxes(MeasuredFrame frame, IReadOnlyList<double[]> damage)
    {
        var placed = FromDrawing(frame) ?? frame;
        placed = frame.Pairs.Any(p => HasPlan(placed, p)) ? AcrossPairs(placed) : placed;
        for (var round = 0; round < MostRounds; round++)
        {
            var lie = FrameLie.Of(placed, Contrasts.Of(placed), damage);
            var sizes = lie.Sizes();
            if (!lie.HasCentreLine)
            {
                break;
            }

            placed = placed.Moved(-sizes[2], -sizes[0], -sizes[1]);
            if (Math.Abs(sizes[2]) < RestRadians && Math.Abs(sizes[1]) < RestRadians && Math.Abs(sizes[0]) < RestRadians)
            {
                break;
            }
        }

        return placed;
    }

    private static bool HasPlan(MeasuredFrame frame, FramePair pair) => frame.HasPlan(pair.Left) && frame.HasPlan(pair.Right);

    /// <summary>Forward is square to the way from right to left: the middle one of all pairs' opinions, so that a bent one does not count.</summary>
    private static MeasuredFrame AcrossPairs(MeasuredFrame frame)
    {
        var across = frame
            .Pairs.Where(p => HasPlan(frame, p))
            .Select(p => (X: frame.X(p.Left) - frame.X(p.Right), Y: frame.Y(p.Left) - frame.Y(p.Right)))
            .ToList();
        var first = across.MaxBy(a => double.Hypot(a.X, a.Y));
        var turns = across.Select(a => Math.Atan2((first.X * a.Y) - (first.Y * a.X), (first.X * a.X) + (first.Y * a.Y))).Order().ToList();
        var angle = Math.Atan2(first.Y, first.X) + turns[turns.Count / 2];
        var turned = frame.Moved((Math.PI / 2) - angle, 0, 0);
        var middles = turned.Pairs.Where(p => HasPlan(turned, p)).Select(p => (turned.Y(p.Left) + turned.Y(p.Right)) / 2).Order().ToList();
        return turned.Moved(0, 0, -middles[middles.Count / 2]);
    }

    /// <summary>Least-squares turn and shift onto the book's figures, else onto the sketch; null when fewer than two points are drawn.</summary>
    private static MeasuredFrame? FromDrawing(MeasuredFrame frame)
    {
        var drawn = Enumerable
            .Range(0, frame.Points.Count)
            .Where(frame.HasPlan)
            .Select(p => (Point: p, Drawn: frame.Points[p].Nominal is { X: not null, Y: not null } book ? book : frame.Points[p].Sketch))
            .Where(d => d.Drawn is { X: not null, Y: not null })
            .Select(d => (X: frame.X(d.Point), Y: frame.Y(d.Point), U: d.Drawn!.X!.Value.Metres, V: d.Drawn.Y!.Value.Metres))
            .ToList();
        if (drawn.Count < 2)
        {
            return null;
        }

        var (x, y, u, v) = (drawn.Average(d => d.X), drawn.Average(d => d.Y), drawn.Average(d => d.U), drawn.Average(d => d.V));
        var cos = drawn.Sum(d => ((d.X - x) * (d.U - u)) + ((d.Y - y) * (d.V - v)));
        var sin = drawn.Sum(d => ((d.X - x) * (d.V - v)) - ((d.Y - y) * (d.U - u)));
        var angle = Math.Atan2(sin, cos);
        var turned = frame.Moved(angle, 0, 0);
        var dx = drawn.Average(d => d.U - ((Math.Cos(angle) * d.X) - (Math.Sin(angle) * d.Y)));
        var dy = drawn.Average(d => d.V - ((Math.Sin(angle) * d.X) + (Math.Cos(angle) * d.Y)));
        return turned.Moved(0, dx, dy);
    }
}
