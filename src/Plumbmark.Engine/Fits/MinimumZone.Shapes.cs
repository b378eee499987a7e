using System.Collections.Immutable;
using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Fits;

public static partial class MinimumZone
{
    /// <summary>The two parallel planes closest together that hold at least three points between them.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<MinimumZoneFit<Plane>> Plane(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<MinimumZoneFit<Plane>>(points, 3, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var start = new Plane(default, BestFit.Upward(cloud.Directions[2]));
        return ZoneSearch
                .Narrow(new PlaneModel(cloud.Points), start, out var steps)
                ?.To(cloud.Size, p => new Plane(cloud.Centre + (cloud.Size * p.Point), BestFit.Upward(p.Normal)))
                .AsOutcome()
            ?? new FitOutcome<MinimumZoneFit<Plane>>.NotSettled(steps);
    }

    /// <summary>The two circles about one centre closest together that hold at least three points between them.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<MinimumZoneFit<Circle2>> Circle2(ReadOnlySpan<Point2> points)
    {
        var cloud = Cloud2.Make<MinimumZoneFit<Circle2>>(points, 3, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        var start = BestFit.Circle2(cloud.Points).FitOrNull?.Circle ?? BestFit.StartingCircle(cloud.Points);
        if (start is null)
        {
            return new FitOutcome<MinimumZoneFit<Circle2>>.Undetermined(Degeneracy.Collinear);
        }

        return ZoneSearch
                .Narrow(new Circle2Model(cloud.Points), start, out var steps)
                ?.To(cloud.Size, c => new Circle2(cloud.Centre + (cloud.Size * c.Centre), cloud.Size * c.RadiusMetres))
                .AsOutcome()
            ?? new FitOutcome<MinimumZoneFit<Circle2>>.NotSettled(steps);
    }

    /// <summary>The two cylinders about one axis closest together that hold at least five points between them.</summary>
    /// <param name="points">Metres.</param>
    public static FitOutcome<MinimumZoneFit<Cylinder>> Cylinder(ReadOnlySpan<Vector3> points)
    {
        var cloud = Cloud3.Make<MinimumZoneFit<Cylinder>>(points, 5, mayBeCollinear: false, out var refusal);
        if (cloud is null)
        {
            return refusal!;
        }

        return BestFit
            .Cylinder(cloud.Points)
            .Match(
                fit =>
                    ZoneSearch
                        .Narrow(new CylinderModel(cloud.Points), fit.Cylinder, out var steps)
                        ?.To(
                            cloud.Size,
                            c => new Cylinder(
                                new Line3(cloud.Centre + (cloud.Size * c.Axis.Point), c.Axis.Direction),
                                cloud.Size * c.RadiusMetres
                            )
                        )
                        .AsOutcome()
                    ?? new FitOutcome<MinimumZoneFit<Cylinder>>.NotSettled(steps),
                (given, needed) => new FitOutcome<MinimumZoneFit<Cylinder>>.TooFewPoints(given, needed),
                index => new FitOutcome<MinimumZoneFit<Cylinder>>.NotANumber(index),
                why => new FitOutcome<MinimumZoneFit<Cylinder>>.Undetermined(why),
                steps => new FitOutcome<MinimumZoneFit<Cylinder>>.NotSettled(steps)
            );
    }

    private static MinimumZoneFit<TShape> To<TShape>(this ZoneSearch.Found<TShape> found, double size, Func<TShape, TShape> unscale) =>
        new(unscale(found.State), size * found.Zone, [.. found.Points], found.Sensitivity);

    private static FitOutcome<MinimumZoneFit<TShape>> AsOutcome<TShape>(this MinimumZoneFit<TShape> fit) =>
        new FitOutcome<MinimumZoneFit<TShape>>.Fitted(fit);
}
