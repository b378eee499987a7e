using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Demo;

/// <summary>The frame of the demo car as it truly is: what the invented owner tries to find out with tape and plumb line.</summary>
/// <remarks>
/// A ladder frame of eight pairs. Inches, axes after ISO 8855, zero on the centre line at the rear axle and on the floor. As built it is
/// symmetrical to a few hundredths; then the right front horn has been pushed in and down.
/// </remarks>
internal static class DemoFrame
{
    /// <summary>How far inward the right front horn has been pushed, inches.</summary>
    public const double HornInInches = 0.31;

    /// <summary>How far down it has been pushed, inches.</summary>
    public const double HornDownInches = 0.19;

    /// <summary>Standard deviation of each coordinate as built, inches: jigs and welds of the time.</summary>
    public const double BuiltWithinInches = 0.015;

    /// <summary>A station: a pair of points as the drawing board had it.</summary>
    internal sealed record Station(string Name, string Label, PointRole Role, double XInches, double HalfWidthInches, double ZInches);

    /// <summary>The stations, front first.</summary>
    public static IReadOnlyList<Station> Stations { get; } =
    [
        new("A", "Front horn", PointRole.Other, 114, 11, 13),
        new("B", "Front wishbone, forward pivot", PointRole.Suspension, 92, 14, 9.5),
        new("C", "Front wishbone, rearward pivot", PointRole.Suspension, 82, 14.5, 9.75),
        new("D", "Engine mount", PointRole.Engine, 72, 10.5, 14),
        new("E", "Front outrigger", PointRole.Body, 56, 21, 11.25),
        new("F", "Rear outrigger", PointRole.Body, 30, 21.5, 11.25),
        new("G", "Rear spring, front eye", PointRole.Spring, 14, 16, 10),
        new("H", "Rear spring, rear eye", PointRole.Spring, -26, 17, 12.5),
    ];

    /// <summary>Where a point truly is, inches.</summary>
    internal readonly record struct Spot(double X, double Y, double Z);

    /// <summary>The true points by name.</summary>
    public static Dictionary<string, Spot> True(DemoNoise noise)
    {
        var points = new Dictionary<string, Spot>(StringComparer.Ordinal);
        double Built() => BuiltWithinInches * noise.Next();
        foreach (var s in Stations)
        {
            points[$"{s.Name}.L"] = new Spot(s.XInches + Built(), s.HalfWidthInches + Built(), s.ZInches + Built());
            points[$"{s.Name}.R"] = new Spot(s.XInches + Built(), -s.HalfWidthInches + Built(), s.ZInches + Built());
        }

        var horn = points["A.R"];
        points["A.R"] = horn with { Y = horn.Y + HornInInches, Z = horn.Z - HornDownInches };
        return points;
    }
}
