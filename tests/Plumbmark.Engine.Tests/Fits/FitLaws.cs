using CsCheck;
using Plumbmark.Engine.Fits;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>What must hold for any points: moving the part, renumbering its points or changing the unit does not change what it is.</summary>
public class FitLaws
{
    // Points lie within metres of the origin: ten thousand roundings of a double, a thousandth of a nanometre.
    private const double Rounding = 1e-11;

    [Fact]
    public void Circle2_MovedAndShuffled_KeepsItsRadiusAndCarriesItsCentre() =>
        Gen.Select(Clouds.NearCircle, Clouds.FlatMotion, Gen.Int)
            .Sample(
                (points, motion, seed) =>
                {
                    var here = BestFit.Circle2(points).FitOrNull!;
                    var there = BestFit.Circle2(Array.ConvertAll(Clouds.Shuffled(points, seed), p => motion(p))).FitOrNull!;
                    Assert.Equal(here.Circle.RadiusMetres, there.Circle.RadiusMetres, Rounding);
                    Assert.True((motion(here.Circle.Centre) - there.Circle.Centre).Norm < Rounding);
                    Assert.Equal(here.Cofactor[2, 2], there.Cofactor[2, 2], 1e-8);
                },
                iter: 200
            );

    [Fact]
    public void Plane_MovedAndShuffled_KeepsItsResiduals() =>
        Gen.Select(Clouds.NearPlane, Clouds.Motion)
            .Where((points, _) => BestFit.Plane(points).FitOrNull is not null)
            .Sample(
                (points, motion) =>
                {
                    var here = BestFit.Plane(points).FitOrNull!;
                    var there = BestFit.Plane(Array.ConvertAll(points, p => motion(p))).FitOrNull!;
                    var sense = Math.Sign(here.Residuals.Metres[0] * there.Residuals.Metres[0]);
                    Assert.All(
                        here.Residuals.Metres.Zip(there.Residuals.Metres),
                        pair => Assert.Equal(pair.First, sense * pair.Second, Rounding)
                    );
                },
                iter: 200
            );

    [Fact]
    public void Cylinder_Moved_KeepsItsRadiusAndCarriesItsAxis() =>
        Gen.Select(Clouds.NearBore, Clouds.Motion)
            .Sample(
                (points, motion) =>
                {
                    var here = BestFit.Cylinder(points).FitOrNull!;
                    var there = BestFit.Cylinder(Array.ConvertAll(points, p => motion(p))).FitOrNull!;
                    Assert.Equal(here.Cylinder.RadiusMetres, there.Cylinder.RadiusMetres, 1e-10);
                    Assert.Equal(0, there.Cylinder.Axis.Distance(motion(here.Cylinder.Axis.Point)), 1e-10);
                },
                iter: 50
            );

    [Fact]
    public void Circle3_OfPointsInAPlane_IsTheFlatCircle() =>
        Gen.Select(Clouds.NearCircle, Clouds.Motion)
            .Sample(
                (points, motion) =>
                {
                    var flat = BestFit.Circle2(points).FitOrNull!;
                    var spatial = BestFit.Circle3(Array.ConvertAll(points, p => motion(new Vector3(p.X, p.Y, 0)))).FitOrNull!;
                    Assert.Equal(flat.Circle.RadiusMetres, spatial.Circle.RadiusMetres, Rounding);
                    Assert.Equal(flat.Residuals.SumOfSquares, spatial.Residuals.SumOfSquares, 1e-15);
                },
                iter: 200
            );

    [Fact]
    public void EveryFit_InAnotherUnit_GivesTheSameShapeInThatUnit() =>
        Gen.Select(Clouds.NearBore, Gen.Double[1e-3, 1e3])
            .Sample(
                (points, unit) =>
                {
                    var metres = BestFit.Cylinder(points).FitOrNull!;
                    var other = BestFit.Cylinder(Array.ConvertAll(points, p => unit * p)).FitOrNull!;
                    Assert.Equal(1, other.Cylinder.RadiusMetres / unit / metres.Cylinder.RadiusMetres, 1e-9);
                    // Tilt per unit error goes with 1 / unit²; a shift per unit error does not change.
                    // The two directions across the axis may be chosen anew, so only what does not depend on them is compared.
                    double Both(CylinderFit fit, int k) => fit.Cofactor[k, k] + fit.Cofactor[k + 1, k + 1];
                    Assert.Equal(1, Both(other, 2) * unit * unit / Both(metres, 2), 1e-6);
                    Assert.Equal(1, Both(other, 0) / Both(metres, 0), 1e-6);
                },
                iter: 50
            );

    [Fact]
    public void Cofactors_AreSymmetricAndPositive() =>
        Clouds.NearBore.Sample(
            points =>
            {
                var q = BestFit.Cylinder(points).FitOrNull!.Cofactor;
                for (var i = 0; i < q.Count; i++)
                {
                    Assert.True(q[i, i] > 0);
                    for (var j = 0; j < q.Count; j++)
                    {
                        Assert.Equal(q[i, j], q[j, i]);
                        Assert.True((q[i, j] * q[i, j]) <= q[i, i] * q[j, j] * (1 + 1e-9));
                    }
                }
            },
            iter: 50
        );
}
