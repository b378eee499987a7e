using CsCheck;
using Plumbmark.Engine.Fits;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>The narrowest band: never wider than the least-squares one, and equal to the best of all bands tried one by one.</summary>
public class MinimumZoneLaws
{
    private const double Rounding = 1e-11;
    private const double Nanometre = 1e-9;

    [Fact]
    public void Line2_EqualsTheNarrowestStripTried() =>
        Clouds.NearLine.Sample(
            points =>
            {
                var zone = MinimumZone.Line2(points).FitOrNull!;
                Assert.Equal(NarrowestStrip(points), zone.ZoneMetres, Rounding);
                var heights = points.Select(p => zone.Shape.Distance(p)).ToArray();
                Assert.Equal(zone.ZoneMetres / 2, heights.Max(), Rounding);
                Assert.Equal(-zone.ZoneMetres / 2, heights.Min(), Rounding);
                Assert.True(zone.ZoneMetres <= BestFit.Line2(points).FitOrNull!.Residuals.ZoneMetres + Rounding);
            },
            iter: 300
        );

    [Fact]
    public void Plane_EqualsTheNarrowestPairOfPlanesTried() =>
        Clouds
            .NearPlane.Select(points => points.Length > 9 ? points[..9] : points)
            .Where(points => BestFit.Plane(points).FitOrNull is { } fit && fit.Cofactor[2, 2] < 100)
            .Sample(
                points =>
                {
                    var zone = MinimumZone.Plane(points).FitOrNull!;
                    Assert.Equal(NarrowestSlab(points), zone.ZoneMetres, Rounding);
                    Assert.True(zone.ZoneMetres <= BestFit.Plane(points).FitOrNull!.Residuals.ZoneMetres + Rounding);
                },
                iter: 100
            );

    [Fact]
    public void Circle2_EqualsTheNarrowestRingTried() =>
        Clouds
            .NearCircle.Select(points => points.Length > 9 ? points[..9] : points)
            .Where(points => BestFit.Circle2(points).FitOrNull is { } fit && fit.Cofactor[2, 2] < 1)
            .Sample(
                points =>
                {
                    var zone = MinimumZone.Circle2(points).FitOrNull!;
                    Assert.Equal(NarrowestRing(points), zone.ZoneMetres, Rounding);
                    Assert.True(zone.ZoneMetres <= BestFit.Circle2(points).FitOrNull!.Residuals.ZoneMetres + Rounding);
                },
                iter: 100
            );

    [Fact]
    public void Line3_NoSmallMoveNarrowsTheTube() =>
        Gen.Select(Clouds.NearRod, Gen.Int)
            .Sample(
                (points, seed) =>
                {
                    var zone = MinimumZone.Line3(points).FitOrNull!;
                    var random = new Random(seed);
                    double Small() => 1e-5 * ((2 * random.NextDouble()) - 1);
                    for (var trial = 0; trial < 200; trial++)
                    {
                        var point = zone.Shape.Point + new Vector3(Small(), Small(), Small());
                        var direction = (zone.Shape.Direction + new Vector3(Small(), Small(), Small())).Direction;
                        var tube = 2 * points.Max(p => new Line3(point, direction).Distance(p));
                        Assert.True(tube >= zone.ZoneMetres - Nanometre);
                    }

                    Assert.True(zone.ZoneMetres <= BestFit.Line3(points).FitOrNull!.Residuals.ZoneMetres + Rounding);
                },
                iter: 40
            );

    [Fact]
    public void Cylinder_NoSmallMoveNarrowsTheBand() =>
        Gen.Select(Clouds.NearBore, Gen.Int)
            .Sample(
                (points, seed) =>
                {
                    var zone = MinimumZone.Cylinder(points).FitOrNull!;
                    var random = new Random(seed);
                    double Small() => 1e-6 * ((2 * random.NextDouble()) - 1);
                    for (var trial = 0; trial < 200; trial++)
                    {
                        var axis = new Line3(
                            zone.Shape.Axis.Point + new Vector3(Small(), Small(), Small()),
                            (zone.Shape.Axis.Direction + new Vector3(Small(), Small(), Small())).Direction
                        );
                        var distances = points.Select(axis.Distance).ToArray();
                        Assert.True(distances.Max() - distances.Min() >= zone.ZoneMetres - Nanometre);
                    }

                    Assert.True(zone.ZoneMetres <= BestFit.Cylinder(points).FitOrNull!.Residuals.ZoneMetres + Rounding);
                },
                iter: 20
            );

    [Fact]
    public void Zones_MovedAndShuffled_KeepTheirWidth() =>
        Gen.Select(Clouds.NearPlane, Clouds.Motion, Gen.Int)
            .Where((points, _, _) => BestFit.Plane(points).FitOrNull is { } fit && fit.Cofactor[2, 2] < 100)
            .Sample(
                (points, motion, seed) =>
                {
                    var here = MinimumZone.Plane(points).FitOrNull!;
                    var there = MinimumZone.Plane(Array.ConvertAll(Clouds.Shuffled(points, seed), p => motion(p))).FitOrNull!;
                    Assert.Equal(here.ZoneMetres, there.ZoneMetres, Rounding);
                },
                iter: 100
            );

    private static double NarrowestStrip(Point2[] points) =>
        (
            from a in points
            from b in points
            where a != b
            let along = (1 / (b - a).Norm) * (b - a)
            let heights = points.Select(p => along.Cross(p - a)).ToArray()
            select heights.Max() - heights.Min()
        ).Min();

    // The narrowest slab has three points on one side, or two on each: its normal is square to two of the lines between points.
    private static double NarrowestSlab(Vector3[] points)
    {
        var steps = (from a in points from b in points where a != b select b - a).ToArray();
        return (
            from a in steps
            from b in steps
            let normal = Vector3.Cross(a, b)
            where normal.Norm > 1e-9
            let heights = points.Select(p => Vector3.Dot(normal.Direction, p)).ToArray()
            select heights.Max() - heights.Min()
        ).Min();
    }

    // The narrowest ring has four points on its two circles: its centre is equally far from the two points of each of two pairs.
    private static double NarrowestRing(Point2[] points)
    {
        var pairs = (from i in Enumerable.Range(0, points.Length) from j in Enumerable.Range(0, i) select (points[i], points[j])).ToArray();
        return (
            from p in pairs
            from q in pairs
            let centre = Meet(p, q)
            where centre.IsFinite
            let radii = points.Select(x => (x - centre).Norm).ToArray()
            select radii.Max() - radii.Min()
        ).Min();
    }

    private static Point2 Meet((Point2 A, Point2 B) p, (Point2 A, Point2 B) q)
    {
        var (m, n) = (p.B - p.A, q.B - q.A);
        var (c, d) = (m.Dot(0.5 * (p.A + p.B)), n.Dot(0.5 * (q.A + q.B)));
        return 1 / m.Cross(n) * new Point2((c * n.Y) - (d * m.Y), (d * m.X) - (c * n.X));
    }
}
