using System.Collections.Immutable;
using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

/// <summary>
/// Shapes about which the band that holds every point is narrowest: straightness, flatness, roundness. The sibling <see cref="BestFit"/> listens to all
/// points alike and carries a covariance.
/// </summary>
/// <remarks>
/// A line in a plane is exact: some edge of the convex hull lies along the narrowest strip (Houle and Toussaint, IEEE Trans. PAMI 10 (1988) 761-765).
/// Planes, circles and cylinders: linear problems in the largest residual, each solved exactly by the exchange method and turned into the new position until
/// the shape stands still, starting at the least-squares shape. The result is the nearest place where no small move narrows the band; for points close to the shape,
/// as a part's are, that is the narrowest of all. The band is never wider than that of the least-squares shape.
/// </remarks>
public static partial class MinimumZone
{
    /// <summary>The narrowest strip over at least two points of a plane.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<MinimumZoneFit<Line2>> Line2(ReadOnlySpan<Point2> points)
    {
        var cloud = Cloud2.Make<MinimumZoneFit<Line2>>(points, 2, mayBeCollinear: true, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var onGrid = Array.ConvertAll(cloud.Points, ConvexHull.OnGrid);
        var hull = ConvexHull.Of(onGrid);
        if (hull.Length == 2)
        {
            var straight = new Line2(cloud.Centre, cloud.Along);
            return new FitOutcome<MinimumZoneFit<Line2>>.Fitted(new(straight, 0, [hull[0], hull[1]], 0));
        }

        var (edge, width, opposite) = NarrowestEdge(onGrid, hull);
        var (a, b) = (onGrid[hull[edge]], onGrid[hull[(edge + 1) % hull.Length]]);
        var along = (1 / (b - a).Norm) * (b - a);
        // Points in the order given run along the line, so that left of it means the same as for the least-squares line.
        var direction = along.Dot(cloud.Along) < 0 ? -1 * along : along;
        var middle = a + (width / 2 * new Point2(-along.Y, along.X));
        var share = along.Dot(onGrid[opposite] - a) / (b - a).Norm;
        var line = new Line2(cloud.Centre + (cloud.Size * middle), direction);
        var sensitivity = Math.Sqrt(1 + (share * share) + ((1 - share) * (1 - share)));
        ImmutableArray<int> contacts = [hull[edge], hull[(edge + 1) % hull.Length], opposite];
        return new FitOutcome<MinimumZoneFit<Line2>>.Fitted(new(line, cloud.Size * width, contacts, sensitivity));
    }

    // Every edge against every corner: a hull has few corners, and nothing depends on the order of nearly equal heights.
    private static (int Edge, double Width, int Opposite) NarrowestEdge(Point2[] points, int[] hull)
    {
        var (best, narrowest, opposite) = (0, double.PositiveInfinity, 0);
        for (var edge = 0; edge < hull.Length; edge++)
        {
            var a = points[hull[edge]];
            var side = points[hull[(edge + 1) % hull.Length]] - a;
            var (width, far) = (0.0, hull[edge]);
            foreach (var corner in hull)
            {
                var height = side.Cross(points[corner] - a) / side.Norm;
                (width, far) = height > width ? (height, corner) : (width, far);
            }

            if (width < narrowest)
            {
                (best, narrowest, opposite) = (edge, width, far);
            }
        }

        return (best, narrowest, opposite);
    }
}
