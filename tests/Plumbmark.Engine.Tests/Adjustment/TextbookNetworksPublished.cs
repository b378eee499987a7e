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
        Assert.All(fit.Readings, r => Near(fit.Sigma0!.Value, Math.Abs(r.Standardised!.Value), 1e-7));
    }

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
