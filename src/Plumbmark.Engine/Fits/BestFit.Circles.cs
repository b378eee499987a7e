using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

public static partial class BestFit
{
    /// <summary>A circle through at least three points of a plane that do not lie on one line.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<Circle2Fit> Circle2(ReadOnlySpan<Point2> points)
    {
        var cloud = Cloud2.Make<Circle2Fit>(points, 3, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var start = StartingCircle(cloud.Points);
        if (start is null)
        {
            return new FitOutcome<Circle2Fit>.Undetermined(Degeneracy.Collinear);
        }

        var (state, cofactor, settled, steps) = GaussNewton.Minimise(new Circle2Model(cloud.Points), start);
        if (!settled || cofactor is null)
        {
            return NotFound<Circle2Fit>(settled, steps);
        }

        var circle = new Circle2(cloud.Centre + (cloud.Size * state.Centre), cloud.Size * Math.Abs(state.RadiusMetres));
        var residuals = new double[points.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = circle.Distance(points[i]);
        }

        return new FitOutcome<Circle2Fit>.Fitted(
            new Circle2Fit(circle, FitResiduals.Signed(residuals, points.Length - 3), new FitCofactor(cofactor), steps)
        );
    }

    /// <summary>A circle through at least three points of space that do not lie on one line.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<Circle3Fit> Circle3(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<Circle3Fit>(points, 3, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var normal = cloud.Directions[2];
        var start = StartingCircle(Flatten(cloud.Points, normal));
        if (start is null)
        {
            return new FitOutcome<Circle3Fit>.Undetermined(Degeneracy.Collinear);
        }

        var first = new Circle3(Lift(start.Centre, normal), normal, start.RadiusMetres);
        var (state, cofactor, settled, steps) = GaussNewton.Minimise(new Circle3Model(cloud.Points), first);
        if (!settled || cofactor is null)
        {
            return NotFound<Circle3Fit>(settled, steps);
        }

        var circle = new Circle3(cloud.Centre + (cloud.Size * state.Centre), state.Normal, cloud.Size * Math.Abs(state.RadiusMetres));
        var residuals = new double[points.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = circle.Distance(points[i]);
        }

        var quality = new FitResiduals(residuals, (2 * points.Length) - 6, residuals.Sum(v => v * v), 2 * residuals.Max());
        var (e1, e2) = state.Normal.SquareDirections();
        return new FitOutcome<Circle3Fit>.Fitted(
            new Circle3Fit(circle, e1, e2, quality, AnglesUnscaled(cofactor, cloud.Size, 3, 4), steps)
        );
    }

    // The pass without a search that leaves the smallest sum of squared distances: each of the three is the best start for some arcs.
    internal static Circle2? StartingCircle(Point2[] points)
    {
        var (best, smallest) = (default(Circle2), double.PositiveInfinity);
        foreach (var circle in new[] { AlgebraicCircle.Taubin(points), AlgebraicCircle.Pratt(points), AlgebraicCircle.Kasa(points) })
        {
            var sum = circle is null ? double.NaN : points.Sum(p => circle.Distance(p) * circle.Distance(p));
            if (sum < smallest)
            {
                (best, smallest) = (circle, sum);
            }
        }

        return best;
    }

    internal static Point2[] Flatten(Vector3[] points, Vector3 normal)
    {
        var (e1, e2) = normal.SquareDirections();
        return Array.ConvertAll(points, p => new Point2(Vector3.Dot(p, e1), Vector3.Dot(p, e2)));
    }

    internal static Vector3 Lift(Point2 place, Vector3 normal)
    {
        var (e1, e2) = normal.SquareDirections();
        return (place.X * e1) + (place.Y * e2);
    }

    // In scaled coordinates lengths and residuals shrink alike but angles do not: their rows and columns are divided by the size.
    private static FitCofactor AnglesUnscaled(double[,] q, double size, params ReadOnlySpan<int> angles)
    {
        foreach (var angle in angles)
        {
            for (var k = 0; k < q.GetLength(0); k++)
            {
                q[angle, k] /= size;
                q[k, angle] /= size;
            }
        }

        return new FitCofactor(q);
    }

    private static FitOutcome<TFit> NotFound<TFit>(bool settled, int steps)
        where TFit : class =>
        settled ? new FitOutcome<TFit>.Undetermined(Degeneracy.OneDirectionFree) : new FitOutcome<TFit>.NotSettled(steps);
}
