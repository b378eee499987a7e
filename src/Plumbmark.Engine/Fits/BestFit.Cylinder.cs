using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

public static partial class BestFit
{
    // Directions tried as the axis before the search: about 13 degrees apart over the half sphere, well inside what the search corrects.
    private const int DirectionsTried = 120;
    private const int StartsRefined = 4;

    /// <summary>A cylinder and its axis through at least five points.</summary>
    /// <remarks>
    /// The axis may point anywhere: a grid of directions and the three principal ones are tried, the best few are refined, the smallest sum wins.
    /// One ring of points leaves the tilt of the axis free and is refused.
    /// </remarks>
    /// <param name="points">Metres.</param>
    public static FitOutcome<CylinderFit> Cylinder(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<CylinderFit>(points, 5, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var model = new CylinderModel(cloud.Points);
        var (best, bestSum, anySettled, steps) = (default(Cylinder), double.PositiveInfinity, false, 0);
        double[,]? bestCofactor = null;
        foreach (var start in StartingCylinders(cloud))
        {
            var (state, cofactor, settled, took) = GaussNewton.Minimise(model, start);
            anySettled |= settled;
            var sum = settled ? cloud.Points.Sum(p => state.Distance(p) * state.Distance(p)) : double.NaN;
            if (sum < bestSum)
            {
                (best, bestSum, bestCofactor, steps) = (state, sum, cofactor, took);
            }
        }

        return best is null || bestCofactor is null
            ? NotFound<CylinderFit>(anySettled || best is not null, steps)
            : Fitted(points, cloud, best, bestCofactor, steps);
    }

    private static FitOutcome<CylinderFit> Fitted(
        ReadOnlySpan<Vector3> points,
        Cloud3 cloud,
        Cylinder scaled,
        double[,] cofactor,
        int steps
    )
    {
        var axis = new Line3(cloud.Centre + (cloud.Size * scaled.Axis.Point), scaled.Axis.Direction);
        var cylinder = new Cylinder(axis, cloud.Size * Math.Abs(scaled.RadiusMetres));
        var residuals = new double[points.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            residuals[i] = cylinder.Distance(points[i]);
        }

        var (e1, e2) = axis.Direction.SquareDirections();
        return new FitOutcome<CylinderFit>.Fitted(
            new CylinderFit(
                cylinder,
                e1,
                e2,
                FitResiduals.Signed(residuals, points.Length - 5),
                AnglesUnscaled(cofactor, cloud.Size, 2, 3),
                steps
            )
        );
    }

    private static IEnumerable<Cylinder> StartingCylinders(Cloud3 cloud)
    {
        var directions = new List<Vector3>(cloud.Directions);
        var golden = Math.PI * (3 - Math.Sqrt(5));
        for (var k = 0; k < DirectionsTried; k++)
        {
            // Fibonacci's spiral over the half sphere: equal areas, so no direction is favoured.
            var z = (k + 0.5) / DirectionsTried;
            var across = Math.Sqrt(1 - (z * z));
            directions.Add(new Vector3(across * Math.Cos(golden * k), across * Math.Sin(golden * k), z));
        }

        return directions
            .Select(direction => (Direction: direction, Circle: StartingCircle(Flatten(cloud.Points, direction))))
            .Where(start => start.Circle is not null)
            .Select(start => new Cylinder(
                new Line3(Lift(start.Circle!.Centre, start.Direction), start.Direction),
                start.Circle.RadiusMetres
            ))
            .OrderBy(start => cloud.Points.Sum(p => start.Distance(p) * start.Distance(p)))
            .Take(StartsRefined);
    }
}
