using CsCheck;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Fits.Kernels;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>Written derivatives against central differences, and written covariances against refits of disturbed points.</summary>
public class DerivativeLaws
{
    private const double Step = 1e-6;

    [Fact]
    public void Plane_DerivativesAreDifferences() =>
        Clouds.NearPlane.Sample(
            points => Agrees(new PlaneModel(points), new Plane(new(.01, .02, .03), new Vector3(.1, .3, 1).Direction)),
            iter: 20
        );

    [Fact]
    public void Circle2_DerivativesAreDifferences() =>
        Clouds.NearCircle.Sample(points => Agrees(new Circle2Model(points), new Circle2(new(.21, -.09), .045)), iter: 20);

    [Fact]
    public void Circle3_DerivativesAreDifferences() =>
        Clouds.NearBore.Sample(
            points => Agrees(new Circle3Model(points), new Circle3(new(.001, .002, .003), new Vector3(.1, .2, 1).Direction, .018)),
            iter: 20
        );

    [Fact]
    public void Cylinder_DerivativesAreDifferences() =>
        Clouds.NearBore.Sample(
            points =>
            {
                // The axis point abreast of the origin, as the search keeps it.
                var direction = new Vector3(.1, -.2, 1).Direction;
                var off = new Vector3(.001, .002, 0);
                Agrees(
                    new CylinderModel(points),
                    new Cylinder(new Line3(off - (Vector3.Dot(off, direction) * direction), direction), .019)
                );
            },
            iter: 20
        );

    [Fact]
    public void Cylinder_CovarianceIsThatOfRefits()
    {
        var points = Clouds.Bore(24);
        var fit = BestFit.Cylinder(points).FitOrNull!;
        Refits(
            points,
            disturbed =>
            {
                var c = BestFit.Cylinder(disturbed).FitOrNull!.Cylinder;
                var direction = Math.Sign(Vector3.Dot(c.Axis.Direction, fit.Cylinder.Axis.Direction)) * c.Axis.Direction;
                // Where the new axis passes the old centre, so that both mean the same place.
                var at = c.Axis.Point + (c.Axis.Station(fit.Cylinder.Axis.Point) * c.Axis.Direction);
                var shift = at - fit.Cylinder.Axis.Point;
                return
                [
                    Vector3.Dot(shift, fit.First),
                    Vector3.Dot(shift, fit.Second),
                    Vector3.Dot(direction, fit.First),
                    Vector3.Dot(direction, fit.Second),
                    c.RadiusMetres,
                ];
            },
            fit.Cofactor
        );
    }

    [Fact]
    public void Circle3_CovarianceIsThatOfRefits()
    {
        // Exactly on a leaning circle: the covariance is first order, so the residuals must be small.
        var (normal, e1) = (new Vector3(.2, -.3, 1).Direction, new Vector3(3, 2, 0).Direction);
        var e2 = Vector3.Cross(normal, e1);
        Vector3[] points =
        [
            .. Enumerable.Range(0, 9).Select(k => new Vector3(.1, .2, .3) + (.02 * Math.Cos(k) * e1) + (.02 * Math.Sin(k) * e2)),
        ];
        var fit = BestFit.Circle3(points).FitOrNull!;
        Refits(
            points,
            disturbed =>
            {
                var c = BestFit.Circle3(disturbed).FitOrNull!.Circle;
                var normal = Math.Sign(Vector3.Dot(c.Normal, fit.Circle.Normal)) * c.Normal;
                var shift = c.Centre - fit.Circle.Centre;
                return
                [
                    Vector3.Dot(shift, fit.First),
                    Vector3.Dot(shift, fit.Second),
                    Vector3.Dot(shift, fit.Circle.Normal),
                    -Vector3.Dot(normal, fit.First),
                    -Vector3.Dot(normal, fit.Second),
                    c.RadiusMetres,
                ];
            },
            fit.Cofactor
        );
    }

    [Fact]
    public void Plane_HeightUncertaintyIsThatOfRefits()
    {
        Vector3[] points = [new(0, 0, 0), new(.2, 0, 0), new(.2, .1, 0), new(0, .1, 0), new(.07, .03, 0)];
        var fit = BestFit.Plane(points).FitOrNull!;
        var place = new Vector3(.3, -.05, 0);
        var variance = 0.0;
        for (var i = 0; i < points.Length; i++)
        {
            var disturbed = (Vector3[])points.Clone();
            disturbed[i] += new Vector3(0, 0, Step);
            var change = BestFit.Plane(disturbed).FitOrNull!.Plane.Distance(place) / Step;
            variance += change * change;
        }

        Assert.Equal(Math.Sqrt(variance), fit.UncertaintyUnder(place, 1), 1e-6);
    }

    private static void Agrees<TState>(FitModel<TState> model, TState state)
    {
        var (m, p) = (model.Rows, model.Unknowns);
        var (f, jacobian, unused) = (new double[m], new double[m * p], new double[m * p]);
        var (ahead, behind) = (new double[m], new double[m]);
        model.Linearise(state, f, jacobian);
        for (var k = 0; k < p; k++)
        {
            var step = new double[p];
            step[k] = Step;
            model.Linearise(model.Move(state, step), ahead, unused);
            step[k] = -Step;
            model.Linearise(model.Move(state, step), behind, unused);
            for (var i = 0; i < m; i++)
            {
                // Central differences are good to the square of the step, and to a rounding divided by it.
                Assert.Equal((ahead[i] - behind[i]) / (2 * Step), jacobian[(i * p) + k], 1e-7);
            }
        }
    }

    // First-order law of propagation: Q = Σ (dθ/dx)(dθ/dx)ᵀ over every coordinate of every point, here by refitting.
    private static void Refits(Vector3[] points, Func<Vector3[], double[]> unknowns, FitCofactor written)
    {
        var q = new double[written.Count, written.Count];
        foreach (var axis in new[] { new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1) })
        {
            for (var i = 0; i < points.Length; i++)
            {
                double[] At(double step)
                {
                    var disturbed = (Vector3[])points.Clone();
                    disturbed[i] += step * axis;
                    return unknowns(disturbed);
                }

                var (ahead, behind) = (At(Step), At(-Step));
                var slope = ahead.Zip(behind, (a, b) => (a - b) / (2 * Step)).ToArray();
                for (var j = 0; j < slope.Length; j++)
                {
                    for (var k = 0; k < slope.Length; k++)
                    {
                        q[j, k] += slope[j] * slope[k];
                    }
                }
            }
        }

        for (var j = 0; j < written.Count; j++)
        {
            for (var k = 0; k < written.Count; k++)
            {
                var scale = Math.Sqrt(written[j, j] * written[k, k]);
                Assert.Equal(q[j, k] / scale, written[j, k] / scale, 1e-4);
            }
        }
    }
}
