using System.Runtime.InteropServices;

namespace Plumbmark.Drawing.Floor;

/// <summary>Turns and shifts the sketch onto the measured points, so that a point without readings stands in the right neighbourhood.</summary>
/// <remarks>
/// Least squares without scale over the points that have both. In the plane the best angle is atan2(Σ a×b, Σ a·b) of the centred
/// pairs a (sketch) and b (measured), the two-dimensional case of the orthogonal Procrustes problem. With one common point it only shifts.
/// For drawing only: it is never evidence.
/// </remarks>
[StructLayout(LayoutKind.Auto)]
internal readonly struct SketchFit
{
    private readonly double _cos;
    private readonly double _sin;
    private readonly (double X, double Y) _from;
    private readonly (double X, double Y) _to;

    private SketchFit(double angleRadians, (double X, double Y) from, (double X, double Y) to)
    {
        (_sin, _cos) = Math.SinCos(angleRadians);
        (_from, _to) = (from, to);
    }

    public static SketchFit Of(IReadOnlyList<((double X, double Y) Sketch, (double X, double Y) Measured)> pairs)
    {
        if (pairs.Count == 0)
        {
            return new SketchFit(0, default, default);
        }

        var from = (X: pairs.Average(p => p.Sketch.X), Y: pairs.Average(p => p.Sketch.Y));
        var to = (X: pairs.Average(p => p.Measured.X), Y: pairs.Average(p => p.Measured.Y));
        double dot = 0;
        double cross = 0;
        foreach (var (sketch, measured) in pairs)
        {
            var (ax, ay) = (sketch.X - from.X, sketch.Y - from.Y);
            var (bx, by) = (measured.X - to.X, measured.Y - to.Y);
            dot += (ax * bx) + (ay * by);
            cross += (ax * by) - (ay * bx);
        }

        return new SketchFit(dot == 0 && cross == 0 ? 0 : Math.Atan2(cross, dot), from, to);
    }

    public (double X, double Y) ToMeasured(double xMetres, double yMetres)
    {
        var (ax, ay) = (xMetres - _from.X, yMetres - _from.Y);
        return (_to.X + (_cos * ax) - (_sin * ay), _to.Y + (_sin * ax) + (_cos * ay));
    }
}
