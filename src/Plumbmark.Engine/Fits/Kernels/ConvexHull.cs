namespace Plumbmark.Engine.Fits.Kernels;

/// <summary>The corners of the smallest convex shape round points of a plane, anticlockwise, without doubt about any turn.</summary>
/// <remarks>
/// Andrew's monotone chain (Information Processing Letters 9, 1979) on points set to a grid of 2⁻⁴⁰ of their size, a thousandth of a nanometre per metre, where
/// every turn is an exact integer. Points on an edge and repeated points are left out; points on one line give its two ends.
/// </remarks>
internal static class ConvexHull
{
    private const double CellsPerUnit = 1L << 40;

    /// <summary>Sets a scaled point to the grid.</summary>
    public static Point2 OnGrid(Point2 p) =>
        new(Math.Round(p.X * CellsPerUnit) / CellsPerUnit, Math.Round(p.Y * CellsPerUnit) / CellsPerUnit);

    /// <summary>Numbers of the corners among points set to the grid.</summary>
    public static int[] Of(Point2[] points)
    {
        var order = Enumerable.Range(0, points.Length).OrderBy(i => points[i].X).ThenBy(i => points[i].Y).ToArray();
        var hull = new List<int>();
        Chain(points, order, hull);
        Array.Reverse(order);
        Chain(points, order, hull);
        return [.. hull];
    }

    private static void Chain(Point2[] points, int[] order, List<int> hull)
    {
        var first = hull.Count;
        foreach (var i in order)
        {
            while (hull.Count >= first + 2 && !IsLeftTurn(points[hull[^2]], points[hull[^1]], points[i]))
            {
                hull.RemoveAt(hull.Count - 1);
            }

            if (hull.Count == first || points[hull[^1]] != points[i])
            {
                hull.Add(i);
            }
        }

        // The last point of a chain is the first of the next.
        hull.RemoveAt(hull.Count - 1);
    }

    private static bool IsLeftTurn(Point2 a, Point2 b, Point2 c)
    {
        static Int128 Cells(double difference) => (Int128)(difference * CellsPerUnit);
        return (Cells(b.X - a.X) * Cells(c.Y - a.Y)) - (Cells(b.Y - a.Y) * Cells(c.X - a.X)) > 0;
    }
}
