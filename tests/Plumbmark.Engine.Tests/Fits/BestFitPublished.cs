using Plumbmark.Engine.Fits;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>Fits against numbers printed elsewhere. Data and results name their source; tolerances are half of the last digit printed.</summary>
public class BestFitPublished
{
    // Gander, Golub, Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994) 558-578, first example.
    private static readonly Point2[] s_gander = [new(1, 7), new(2, 6), new(5, 8), new(7, 7), new(9, 5), new(3, 7)];

    // OSGeoLabBp/tutorials, english/data_processing/circle.rst.
    private static readonly Point2[] s_tutorial = [new(11.88, .08), new(10.34, 8.59), new(2.58, 9.54), new(-.29, 1.95)];

    [Fact]
    public void Circle2_GanderGolubStrebel_AgreesWithThePaperAndTenDigits()
    {
        var fit = BestFit.Circle2(s_gander).FitOrNull!;
        // The paper prints 4.7398, 2.9835, 4.7142 (digits quoted from memory); the longer digits are an independent computation.
        Assert.Equal(4.7398, fit.Circle.Centre.X, 5e-5);
        Assert.Equal(4.739782, fit.Circle.Centre.X, 5e-7);
        Assert.Equal(2.983533, fit.Circle.Centre.Y, 5e-7);
        Assert.Equal(4.714226, fit.Circle.RadiusMetres, 5e-7);
        Assert.Equal(1.107971, Math.Sqrt(fit.Residuals.SumOfSquares), 5e-7);
        Assert.Equal(3, fit.Residuals.DegreesOfFreedom);
    }

    [Fact]
    public void AlgebraicCircles_GanderGolubStrebel_AgreeWithStoredValues()
    {
        // Pratt and Taubin: MDMTseng/visSele contrib/circleFitting/TestAlgebraicCircleFits.cpp. Its Kåsa line is wrong; (773/163, 5001/1304) is exact.
        Agrees(AlgebraicCircle.Kasa(s_gander), 773.0 / 163, 5001.0 / 1304, 4.108762);
        Agrees(AlgebraicCircle.Pratt(s_gander), 4.615482, 2.807354, 4.911302);
        Agrees(AlgebraicCircle.Taubin(s_gander), 4.613933, 2.795209, 4.879213);
    }

    [Fact]
    public void Circles_FourPointTutorial_AgreeWithIndependentComputation()
    {
        Agrees(AlgebraicCircle.Kasa(s_tutorial), 6.081443, 3.634645, 6.699184);
        Agrees(BestFit.Circle2(s_tutorial).FitOrNull!.Circle, 6.081131, 3.629951, 6.698732);
    }

    [Fact]
    public void Circle2_ThroughThreePoints_IsTheCircumscribedCircle()
    {
        // Right-angled triangle of Thales; second triple computed independently.
        Agrees(BestFit.Circle2([new(0, 0), new(4, 0), new(0, 3)]).FitOrNull!.Circle, 2, 1.5, 2.5);
        Agrees(BestFit.Circle2(s_tutorial.AsSpan(0, 3)).FitOrNull!.Circle, 5.762471, 3.367292, 6.944814);
    }

    [Fact]
    public void Plane_TiltedSquare_AgreesWithOpenIndyTest()
    {
        // OpenIndy/OpenIndy-DefaultPlugin test/function/tst_function.cpp at 98d819f, testBestFitPlane.
        Vector3[] square = [new(0, 0, .001), new(1, 0, .002), new(1, 1, .004), new(0, 1, .003)];
        var fit = BestFit.Plane(square).FitOrNull!;
        Assert.Equal(-.0009999975, fit.Plane.Normal.X, 1e-9);
        Assert.Equal(-.001999995, fit.Plane.Normal.Y, 1e-9);
        Assert.Equal(.9999975, fit.Plane.Normal.Z, 1e-9);
        Assert.Equal(0, fit.Residuals.ZoneMetres, 1e-15);
    }

    [Fact]
    public void Line3_LongLine_AgreesWithOpenIndyTest()
    {
        // Same file, testBestFitLine_residuals, millimetres: residuals printed to four digits, sqrt(SS / 2) = .0069, and a point left out of the fit.
        Vector3[] points =
        [
            new(999.9916, 999.9958, 999.9917),
            new(2000.0015, 2000.0008, 999.9970),
            new(3000.0270, 3000.0247, 1000.0083),
            new(4999.9732, 4999.9797, 1000.0041),
        ];
        var fit = BestFit.Line3(points).FitOrNull!;
        var direction = fit.Line.Direction.X < 0 ? -1 * fit.Line.Direction : fit.Line.Direction;
        Assert.Equal(.707106, direction.X, 1e-6);
        Assert.Equal(.707107, direction.Y, 1e-6);
        Assert.Equal(.000002, direction.Z, 1e-6);
        Assert.Equal([.0040, .0017, .0079, .0039], fit.Residuals.Metres.Select(r => Math.Round(r, 4)));
        Assert.Equal(.0069, Math.Sqrt(fit.Residuals.SumOfSquares / 2), 5e-5);
        Assert.Equal(141.4227, fit.Line.Distance(new Vector3(3899.9642, 4099.9690, 999.9721)), 5e-5);
    }

    [Fact]
    public void Cylinder_ShallowArc_AgreesWithOpenIndyTest()
    {
        // Same file, testBestFitCylinder1: 10.4 m radius from an arc of 0.9 m.
        var points =
            from edge in new[] { (900, 19.05), (700, 12.34), (200, 12.34), (0.0, 19.05) }
            from z in new[] { -1205.0, 0, 1205 }
            select new Vector3(edge.Item1, edge.Item2, z);
        var fit = BestFit.Cylinder(points.ToArray()).FitOrNull!;
        Assert.Equal(1, Math.Abs(fit.Cylinder.Axis.Direction.Z), 1e-5);
        Assert.Equal(10438.54, fit.Cylinder.RadiusMetres, .005);
        // Independent computation, more digits.
        Assert.Equal(10438.539903, fit.Cylinder.RadiusMetres, 1e-5);
        Assert.Equal(450, fit.Cylinder.Axis.Point.X, 1e-6);
        Assert.Equal(10447.88576, fit.Cylinder.Axis.Point.Y, 1e-5);
    }

    [Fact]
    public void Cylinder_EightPoints_AgreesWithOpenIndyTest()
    {
        // Same file, testBestFitCylinder2: radius 19.16 and standard deviation .03; direction by independent computation.
        Vector3[] points =
        [
            new(256.39, 1460.15, 1326.66),
            new(264.47, 1449.69, 1335.19),
            new(256.13, 1477.83, 1328.50),
            new(237.81, 1477.93, 1345.91),
            new(237.02, 1461.86, 1342.85),
            new(251.36, 1462.91, 1329.84),
            new(259.58, 1483.65, 1332.64),
            new(247.51, 1484.00, 1345.92),
        ];
        var fit = BestFit.Cylinder(points).FitOrNull!;
        Assert.Equal(19.16, fit.Cylinder.RadiusMetres, .005);
        Assert.Equal(19.161395, fit.Cylinder.RadiusMetres, 5e-7);
        Assert.Equal(.03336, fit.Residuals.SigmaMetres!.Value, 5e-6);
        var direction = fit.Cylinder.Axis.Direction;
        var sense = direction.Z < 0 ? -1 : 1;
        Assert.Equal(-.742312, sense * direction.X, 5e-7);
        Assert.Equal(-.039837, sense * direction.Y, 5e-7);
        Assert.Equal(.668870, sense * direction.Z, 5e-7);
    }

    [Fact]
    public void CircleUncertainty_ArcOfKnownSagitta_AgreesWithTheSagittaFormula()
    {
        // Handbook geometry: R = h/2 + c²/(8 h); c = 100, h = 5 gives R 252.5 and dR/dh = 1/2 - c²/(8 h²) = -49.5. The three points move square to the arc:
        // the middle by e and the ends by e each give h an uncertainty of e sqrt(1 + 1/2), apart from the ends' lean of c/2/R.
        Point2[] arc = [new(-50, 0), new(0, 5), new(50, 0)];
        var fit = BestFit.Circle2(arc).FitOrNull!;
        Assert.Equal(252.5, fit.Circle.RadiusMetres, 1e-9);
        var expected = 49.5 * Math.Sqrt(1.5);
        Assert.Equal(expected, Math.Sqrt(fit.Cofactor[2, 2]), 0.03 * expected);
    }

    private static void Agrees(Circle2? circle, double x, double y, double radius)
    {
        Assert.NotNull(circle);
        Assert.Equal(x, circle.Centre.X, 5e-7);
        Assert.Equal(y, circle.Centre.Y, 5e-7);
        Assert.Equal(radius, circle.RadiusMetres, 5e-7);
    }
}
