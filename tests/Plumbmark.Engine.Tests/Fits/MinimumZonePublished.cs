using Plumbmark.Engine.Fits;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>
/// Minimum zones. No printed table of a minimum zone could be read, so these are own checks by linear programming, labelled as such.
/// </summary>
public class MinimumZonePublished
{
    [Fact]
    public void Line2_FivePoints_OwnLinearProgrammingCheck()
    {
        // Own LP check: zone 3.0, least-squares zone 3.1, both measured along y. Drawn a thousandth as high, square to the line and along y are the same.
        const double Flat = 1e-3;
        Point2[] points = [new(0, 0), new(1, 2 * Flat), new(2, 1 * Flat), new(3, 3 * Flat), new(4, 0)];
        Assert.Equal(3.0, MinimumZone.Line2(points).FitOrNull!.ZoneMetres / Flat, 1e-5);
        Assert.Equal(3.1, BestFit.Line2(points).FitOrNull!.Residuals.ZoneMetres / Flat, 1e-5);
    }

    [Fact]
    public void Line2_Rail_OwnLinearProgrammingCheck()
    {
        // Rail, stations 0..3500 by 500; own LP check: zone 3.828571 at slope 8.5714e-5, least-squares zone 3.980952.
        double[] y = [0, 1.2, 2.9, 3.1, 4.0, 2.2, 1.1, .3];
        Point2[] points = [.. y.Select((v, i) => new Point2(500.0 * i, v))];
        var zone = MinimumZone.Line2(points).FitOrNull!;
        var slope = zone.Shape.Direction.Y / zone.Shape.Direction.X;
        Assert.Equal(3.828571, zone.ZoneMetres / Math.Cos(Math.Atan(slope)), 5e-7);
        Assert.Equal(8.5714e-5, slope, 5e-9);
        Assert.Equal([0, 4, 7], zone.Contacts.Order());
        Assert.Equal(3.980952, BestFit.Line2(points).FitOrNull!.Residuals.ZoneMetres, 1e-6);
    }

    [Fact]
    public void Line2_Rail_ZoneAnswersAnErrorAsItsSensitivitySays()
    {
        // Contacts 0, 4, 7 with shares 3/7, 1, 4/7: u = sqrt(1 + (3/7)² + (4/7)²) = 1.2289... by hand.
        double[] y = [0, 1.2, 2.9, 3.1, 4.0, 2.2, 1.1, .3];
        var zone = MinimumZone.Line2([.. y.Select((v, i) => new Point2(500.0 * i, v))]).FitOrNull!;
        Assert.Equal(Math.Sqrt(1 + (9.0 / 49) + (16.0 / 49)), zone.Sensitivity, 1e-6);
    }
}
