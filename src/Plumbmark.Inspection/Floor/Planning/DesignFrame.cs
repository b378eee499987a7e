using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>The frame as a design sees it: every drawn point has a place, near enough to plan by, and an uncertainty, however large.</summary>
internal static class DesignFrame
{
    // Beyond this a coordinate is only drawn: more than any reading leaves, less than the loose prior of a sketch.
    private const double OnlyDrawnMetres = 0.02;

    /// <summary>The frame of a design, lying along its own axes.</summary>
    /// <param name="points">The frame's points.</param>
    /// <param name="design">What is known.</param>
    /// <param name="fit">Where the points are, as far as fitted.</param>
    /// <param name="turnRadians">How it is to be turned, when that is known from another design of the same places.</param>
    public static MeasuredFrame Of(IReadOnlyList<FramePoint> points, NetworkDesign design, NetworkFit? fit, double? turnRadians = null)
    {
        var coordinates = new List<(int Point, int Axis)>();
        var values = new List<double>();
        var indices = new List<int>();
        var onlyDrawn = new List<bool>();
        for (var p = 0; p < points.Count; p++)
        {
            var place = PlaceOf(points[p], fit);
            if (place is not var (x, y, z))
            {
                continue;
            }

            foreach (var (axis, value) in new[] { (0, x), (1, y), (2, z) })
            {
                var index = design.IndexOf(points[p].Id, (Axis)axis);
                coordinates.Add((p, axis));
                values.Add(value);
                indices.Add(index);
                onlyDrawn.Add(Math.Sqrt(design[index, index]) > OnlyDrawnMetres);
            }
        }

        var covariance = new double[indices.Count, indices.Count];
        for (var i = 0; i < indices.Count; i++)
        {
            for (var j = 0; j < indices.Count; j++)
            {
                covariance[i, j] = design[indices[i], indices[j]];
            }
        }

        var frame = new MeasuredFrame(points, coordinates, [.. values], covariance) { IsOnlyDrawn = onlyDrawn };
        return turnRadians is { } turn ? frame.Moved(turn, 0, 0) : FramePlacing.InOwnAxes(frame, []);
    }

    /// <summary>A weighted sum of the frame's coordinates as one of the design's, which lies as the readings were fitted and not along the frame.</summary>
    public static double[] Gradient(MeasuredFrame frame, NetworkDesign design, double[] weights)
    {
        var gradient = new double[design.Count];
        var (sin, cos) = Math.SinCos(frame.TurnRadians);
        for (var p = 0; p < frame.Points.Count; p++)
        {
            if (!frame.HasPlan(p))
            {
                continue;
            }

            var (wx, wy) = (weights[frame.Place(p, 0)], weights[frame.Place(p, 1)]);
            gradient[design.IndexOf(frame.Points[p].Id, Axis.X)] = (wx * cos) + (wy * sin);
            gradient[design.IndexOf(frame.Points[p].Id, Axis.Y)] = (-wx * sin) + (wy * cos);
            gradient[design.IndexOf(frame.Points[p].Id, Axis.Z)] = weights[frame.Place(p, 2)];
        }

        return gradient;
    }

    private static (double X, double Y, double Z)? PlaceOf(FramePoint point, NetworkFit? fit)
    {
        var fitted = fit?.Points.FirstOrDefault(p => p.Id == point.Id);
        var x = fitted?.XMetres ?? (point.Sketch?.X ?? point.Nominal?.X)?.Metres;
        var y = fitted?.YMetres ?? (point.Sketch?.Y ?? point.Nominal?.Y)?.Metres;
        var z = fitted?.ZMetres ?? (point.Nominal?.Z ?? point.Sketch?.Z)?.Metres ?? 0;
        return x is null || y is null ? null : (x.Value, y.Value, z);
    }
}
