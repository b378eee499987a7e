using Plumbmark.Engine.Adjustment;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>Takes the coordinates that a fitted network determines, with their covariance, for the frame's points.</summary>
internal static class MeasuredFrameOfFit
{
    /// <summary>The frame as fitted. A point with only one of x and y determined counts as not placed in plan.</summary>
    public static MeasuredFrame Of(IReadOnlyList<FramePoint> points, NetworkFit fit)
    {
        var covariance = fit.Covariance;
        var kept = new List<(int Point, int Axis, int Index)>();
        for (var p = 0; p < points.Count; p++)
        {
            var x = covariance.IndexOf(points[p].Id, Axis.X);
            var y = covariance.IndexOf(points[p].Id, Axis.Y);
            if (x is { } ix && y is { } iy)
            {
                kept.Add((p, 0, ix));
                kept.Add((p, 1, iy));
            }

            if (covariance.IndexOf(points[p].Id, Axis.Z) is { } iz)
            {
                kept.Add((p, 2, iz));
            }
        }

        var full = covariance.Full();
        var values = new double[kept.Count];
        var matrix = new double[kept.Count, kept.Count];
        for (var i = 0; i < kept.Count; i++)
        {
            values[i] = covariance.ValuesMetres[kept[i].Index];
            for (var j = 0; j < kept.Count; j++)
            {
                matrix[i, j] = full[(kept[i].Index * covariance.Count) + kept[j].Index];
            }
        }

        return new MeasuredFrame(points, [.. kept.Select(k => (k.Point, k.Axis))], values, matrix);
    }
}
