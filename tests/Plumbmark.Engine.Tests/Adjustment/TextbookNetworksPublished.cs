using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Networks whose solution is printed in a book. Standard deviations in books are a-posteriori: Sigma0 times ours.</summary>
public class TextbookNetworksPublished
{
    private static NetworkFit Fit(Network network) => Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;

    private static NetworkPoint Fixed(string id, double x, double y, double? z = null) =>
        new(id)
        {
            X = new Coordinate.Fixed(x),
            Y = new Coordinate.Fixed(y),
            Z = z is { } height ? new Coordinate.Fixed(height) : Coordinate.Unknown,
        };

    private static NetworkPoint Near(string id, double x, double y, double? z = null) =>
        new(id)
        {
            SketchXMetres = x,
            SketchYMetres = y,
            SketchZMetres = z,
        };

    private static Network Plan(IEnumerable<NetworkPoint> points, double sigma, params (string From, string To, double Length)[] lengths) =>
        new(points, lengths.Select(l => new PlanDistance($"{l.From}-{l.To}", l.From, l.To, l.Length, sigma)));

    // Strang and Borre, Linear Algebra, Geodesy, and GPS, 1997, example 10.1, p. 345.
    [Fact]
    public void StrangBorre10_1_ThreeDistancesToOnePoint()
    {
        var fit = Fit(
            Plan(
                [Fixed("1", 170.71, 270.71), Fixed("2", 100, 100), Fixed("3", 241.42, 100), Near("P", 170.71, 170.71)],
                0.01,
                ("1", "P", 100.01),
                ("2", "P", 100.02),
                ("3", "P", 100.03)
            )
        );
        Place(fit, "P", 170.7029, 170.7234, 0.00005);
        Deviations(fit, "P", 0.03303, 0.02335, 0.000005);
        Near(0.03302932, 0.01 * fit.Sigma0!.Value, 5e-9);
        // Own computation: residuals and redundancy numbers.
        Residuals(fit, 5e-7, -0.023356, -0.016516, -0.016512);
        Redundancies(fit, 5e-7, 0.500047, 0.250037, 0.249916);
    }

    // Strang and Borre 1997, example 12.4, p. 411: the same as a free network.
    [Fact]
    public void StrangBorre12_4_FreeNetworkByInnerConstraints()
    {
        var fit = Fit(
            Plan(
                [Near("P", 170.71, 170.71), Near("1", 170.71, 270.71), Near("2", 100, 100), Near("3", 241.42, 100)],
                0.01,
                ("1", "P", 100.01),
                ("2", "P", 100.02),
                ("3", "P", 100.03),
                ("1", "2", 184.785),
                ("2", "3", 141.44),
                ("1", "3", 184.805)
            )
        );
        Assert.Equal([DatumMotion.ShiftX, DatumMotion.ShiftY, DatumMotion.TurnAboutZ], fit.Datum.FreeMotions);
        Place(fit, "P", 170.7123, 170.7185, 0.00005);
        Place(fit, "1", 170.7032, 270.7213, 0.00005);
        Place(fit, "2", 99.9912, 99.9971, 0.00005);
        Place(fit, "3", 241.4333, 99.9830, 0.00005);
        Deviations(fit, "P", 0.01079, 0.00682, 0.000005);
        Deviations(fit, "1", 0.00810, 0.00551, 0.000005);
        Deviations(fit, "2", 0.00641, 0.00705, 0.000005);
        Deviations(fit, "3", 0.00640, 0.00705, 0.000005);
        Near(1.176363, fit.Sigma0!.Value, 5e-7);
        Near(1.383829, fit.WeightedSquares, 5e-7);
        Redundancies(fit, 5e-7, 0.374330, 0.187093, 0.187198, 0.109608, 0.032100, 0.109671);
        Assert.All(fit.Readings, r => Near(fit.Sigma0!.Value, Math.Abs(r.Standardised!.Value), 1e-6));
    }

    // Ghilani, Adjustment Computations, 5th ed., 2010, example 14.5, p. 251 and 19.3, p. 404, in feet. The start is 4 miles off.
    [Theory]
    [InlineData(2_415_776.0, 391_043.0, 2_416_892.0, 387_603.0)]
    [InlineData(2_410_100.0, 391_000.0, 2_430_000.0, 380_000.0)]
    [InlineData(2_415_000.0, 390_000.0, 2_415_000.0, 380_000.0)]
    public void Ghilani14_5_CoordinatesOfMillionsAndAPoorStart(double wisconsinX, double wisconsinY, double campusX, double campusY)
    {
        var fit = Fit(
            Plan(
                [
                    Fixed("Badger", 2_410_000.000, 390_000.000),
                    Fixed("Bucky", 2_411_820.000, 386_881.222),
                    Near("Wisconsin", wisconsinX, wisconsinY),
                    Near("Campus", campusX, campusY),
                ],
                0.01,
                ("Badger", "Wisconsin", 5870.302),
                ("Badger", "Campus", 7297.588),
                ("Wisconsin", "Campus", 3616.434),
                ("Wisconsin", "Bucky", 5742.878),
                ("Campus", "Bucky", 5123.760)
            )
        );
        Place(fit, "Wisconsin", 2_415_776.9044, 391_043.2945, 0.00005);
        Place(fit, "Campus", 2_416_892.6955, 387_603.2551, 0.00005);
        Deviations(fit, "Wisconsin", 0.14879, 0.22061, 0.000005);
        Deviations(fit, "Campus", 0.10378, 0.27054, 0.000005);
        Near(0.13590536, fit.Sigma0!.Value * 0.01, 5e-9);
        Redundancies(fit, 5e-7, 0.161897, 0.337985, 0.073125, 0.205739, 0.221254);
        Residuals(fit, 5e-7, 0.054684, -0.079011, 0.036751, -0.061645, 0.063927);
        // Own computation: minimal detectable bias, δ₀ = 4.1321.
        Detectable(fit, 5e-7, 0.102697, 0.071077, 0.152807, 0.091100, 0.087848);
    }

    // Benning, Statistik in Geodaesie, Geoinformation und Bauwesen, 2011, example 8-2, p. 256: a braced rectangle. The coordinates are a
    // recomputation published with a collection of such examples, not the book's own print.
    [Fact]
    public void Benning8_2_BracedRectangle()
    {
        var fit = Fit(
            Plan(
                [Fixed("1", 0, 1000), Fixed("2", 1000, 1000), Near("3", 0, 0), Near("4", 1000, 0)],
                0.01,
                ("1", "3", 1000.02),
                ("1", "4", 1414.20),
                ("2", "3", 1414.24),
                ("2", "4", 999.98),
                ("3", "4", 1000.00)
            )
        );
        Place(fit, "3", -0.0096, -0.0226, 0.00005);
        Place(fit, "4", 999.9930, 0.0174, 0.00005);
        Deviations(fit, "3", 0.00901, 0.00637, 0.000005);
        Deviations(fit, "4", 0.00901, 0.00637, 0.000005);
        Near(0.688242, fit.Sigma0!.Value, 5e-7);
        Redundancies(fit, 5e-7, 0.142852, 0.285706, 0.285722, 0.142863, 0.142857);
    }

    // Ghilani 2010, example 12.6, p. 218-220: levelling.
    [Fact]
    public void Ghilani12_6_LevelNetwork()
    {
        var fit = Fit(
            new Network(
                [new("A") { Z = new Coordinate.Fixed(437.596) }, new("B"), new("C"), new("D")],
                [
                    new Rise("AB", "A", "B", 10.509, 0.006),
                    new Rise("BC", "B", "C", 5.360, 0.004),
                    new Rise("CD", "C", "D", -8.523, 0.005),
                    new Rise("DA", "D", "A", -7.348, 0.003),
                    new Rise("BD", "B", "D", -3.167, 0.004),
                    new Rise("AC", "A", "C", 15.881, 0.012),
                ]
            )
        );
        Height(fit, "B", 448.1087, 0.00230);
        Height(fit, "C", 453.4685, 0.00264);
        Height(fit, "D", 444.9436, 0.00176);
        Assert.Equal(437.596, fit.Point("A").ZMetres);
        Assert.Null(fit.Point("B").XMetres);
        Near(0.651184, fit.Sigma0!.Value, 5e-7);
        Redundancies(fit, 5e-7, 0.654869, 0.329448, 0.509175, 0.187705, 0.432621, 0.886182);
        Residuals(fit, 5e-7, 0.003712, -0.000244, -0.001862, 0.000395, 0.001894, -0.008532);
    }

    // Wolf, Ausgleichungsrechnung II, 1979, p. 87: four distances in space.
    [Fact]
    public void Wolf1979_FourDistancesInSpace()
    {
        NetworkPoint[] points =
        [
            Fixed("1", 1200, 900, 900),
            Fixed("2", 900, 600, 900),
            Fixed("3", 600, 900, 900),
            Fixed("4", 900, 1200, 900),
            Near("P", 900, 900, 1300),
        ];
        double[] lengths = [499.99, 500.00, 500.01, 500.02];
        var fit = Fit(new Network(points, lengths.Select((l, i) => new DirectDistance($"{i + 1}P", $"{i + 1}", "P", l, 0.01))));
        Place(fit, "P", 900.0167, 899.9833, 0.00005);
        Near(1300.0062, fit.Point("P").ZMetres!.Value, 0.00005);
        Deviations(fit, "P", 0.01179, 0.01179, 0.000005);
        Near(0.00625, fit.Sigma0!.Value * fit.Point("P").UzMetres!.Value, 0.000005);
        Near(1.000000, fit.Sigma0!.Value, 5e-7);
    }

    // OSGeoLabBp, tutorials, english/data_processing/level_net.rst: levelling with data snooping; sigma = 0.7 mm for each kilometre.
    [Fact]
    public void LevelNetworkTutorial_HeightsAndStandardisedResiduals()
    {
        (int From, int To, double Rise, double Kilometres)[] lines =
        [
            (1, 2, -0.749, 1.1),
            (1, 3, -1.274, 1.8),
            (1, 4, -2.890, 1.4),
            (2, 3, -0.530, 1.5),
            (2, 4, -2.141, 1.9),
            (3, 4, -1.614, 0.9),
        ];
        var fit = Fit(
            new Network(
                [new("1"), new("2"), new("3"), new("4") { Z = new Coordinate.Fixed(101.345) }],
                lines.Select(l => new Rise($"{l.From}-{l.To}", $"{l.From}", $"{l.To}", l.Rise, 0.0007 * l.Kilometres))
            )
        );
        Height(fit, "1", 104.2350, 0.00113);
        Height(fit, "2", 103.4868, 0.00119);
        Height(fit, "3", 102.9588, 0.00091);
        Near(1.65, fit.Sigma0!.Value, 0.005);
        Near(8.217, fit.WeightedSquares, 0.0005);
        Residuals(fit, 5e-6, 0.00081, -0.00218, 0.00000, 0.00201, -0.00081, 0.00018);
        double[] printed = [1.9, 2.1, 0.0, 2.6, 0.7, 0.6];
        Assert.All(printed.Zip(fit.Readings), p => Near(p.First, Math.Abs(p.Second.Standardised!.Value), 0.05));
    }

    private static void Height(NetworkFit fit, string point, double z, double deviation)
    {
        Near(z, fit.Point(point).ZMetres!.Value, 0.00005);
        Near(deviation, fit.Sigma0!.Value * fit.Point(point).UzMetres!.Value, 0.000005);
    }

    private static void Detectable(NetworkFit fit, double within, params double[] expected) =>
        Assert.All(expected.Zip(fit.Readings), p => Near(p.First, p.Second.MinimalDetectableMetres!.Value, within));

    private static void Place(NetworkFit fit, string point, double x, double y, double within)
    {
        Near(x, fit.Point(point).XMetres!.Value, within);
        Near(y, fit.Point(point).YMetres!.Value, within);
    }

    private static void Deviations(NetworkFit fit, string point, double sx, double sy, double within)
    {
        Near(sx, fit.Sigma0!.Value * fit.Point(point).UxMetres!.Value, within);
        Near(sy, fit.Sigma0!.Value * fit.Point(point).UyMetres!.Value, within);
    }

    private static void Residuals(NetworkFit fit, double within, params double[] expected) =>
        Assert.All(expected.Zip(fit.Readings), p => Near(p.First, p.Second.ResidualMetres, within));

    private static void Redundancies(NetworkFit fit, double within, params double[] expected) =>
        Assert.All(expected.Zip(fit.Readings), p => Near(p.First, p.Second.RedundancyNumber, within));

    private static void Near(double expected, double actual, double within) =>
        Assert.True(Math.Abs(expected - actual) <= within, $"expected {expected} within {within}, found {actual:R}");
}
