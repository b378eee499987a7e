using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

/// <summary>
/// Shapes through measured points with the smallest sum of squared distances, square to the shape. The sibling <see cref="MinimumZone"/> gives the
/// narrowest band instead.
/// </summary>
/// <remarks>
/// Assumes that every coordinate of every point is measured equally well and independently. Lines and planes: the direction of least spread through the
/// centroid, by singular values (Golub and Van Loan, Matrix Computations, 4th ed., 6.3, total least squares). Circles and cylinders: Gauss-Newton on the
/// orthogonal distances (Gander, Golub, Strebel, BIT 34 (1994) 558-578). Covariances are first order.
/// </remarks>
public static partial class BestFit
{
    /// <summary>A line through at least two points of a plane.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<Line2Fit> Line2(ReadOnlySpan<Point2> points)
    {
        var cloud = Cloud2.Make<Line2Fit>(points, 2, mayBeCollinear: true, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var line = new Line2(cloud.Centre, cloud.Along);
        var n = points.Length;
        var along = cloud.Size * cloud.Spread[0];
        var q = new double[,]
        {
            { 1.0 / n, 0 },
            { 0, 1 / (along * along) },
        };
        var residuals = new double[n];
        for (var i = 0; i < n; i++)
        {
            residuals[i] = line.Distance(points[i]);
        }

        return new FitOutcome<Line2Fit>.Fitted(new Line2Fit(line, FitResiduals.Signed(residuals, n - 2), new FitCofactor(q)));
    }

    /// <summary>A line through at least two points of space.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<Line3Fit> Line3(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<Line3Fit>(points, 2, mayBeCollinear: true, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var line = new Line3(cloud.Centre, cloud.Directions[0]);
        var (n, along) = (points.Length, cloud.Size * cloud.Spread[0]);
        var q = new double[4, 4];
        (q[0, 0], q[1, 1], q[2, 2], q[3, 3]) = (1.0 / n, 1.0 / n, 1 / (along * along), 1 / (along * along));
        var residuals = new double[n];
        for (var i = 0; i < n; i++)
        {
            residuals[i] = line.Distance(points[i]);
        }

        // Each point is observed in both directions across the line: 2 n values, 4 unknowns.
        var quality = new FitResiduals(residuals, (2 * n) - 4, residuals.Sum(v => v * v), 2 * residuals.Max());
        return new FitOutcome<Line3Fit>.Fitted(new Line3Fit(line, cloud.Directions[1], cloud.Directions[2], quality, new FitCofactor(q)));
    }

    /// <summary>A plane through at least three points that do not lie on one line.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<PlaneFit> Plane(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<PlaneFit>(points, 3, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var plane = new Plane(cloud.Centre, Upward(cloud.Directions[2]));
        var n = points.Length;
        var (u, v) = (cloud.Size * cloud.Spread[0], cloud.Size * cloud.Spread[1]);
        var q = new double[3, 3];
        (q[0, 0], q[1, 1], q[2, 2]) = (1.0 / n, 1 / (u * u), 1 / (v * v));
        var residuals = new double[n];
        for (var i = 0; i < n; i++)
        {
            residuals[i] = plane.Distance(points[i]);
        }

        return new FitOutcome<PlaneFit>.Fitted(
            new PlaneFit(plane, cloud.Directions[0], cloud.Directions[1], FitResiduals.Signed(residuals, n - 3), new FitCofactor(q))
        );
    }

    /// <summary>The one of two opposite directions whose largest component is positive.</summary>
    internal static Vector3 Upward(Vector3 direction)
    {
        var (x, y, z) = (Math.Abs(direction.X), Math.Abs(direction.Y), Math.Abs(direction.Z));
        var largest =
            z >= x && z >= y ? direction.Z
            : y >= x ? direction.Y
            : direction.X;
        return largest < 0 ? -1 * direction : direction;
    }
}
