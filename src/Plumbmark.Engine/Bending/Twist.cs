namespace Plumbmark.Engine.Bending;

/// <summary>How far a part is wound along its length, with standard uncertainty (k = 1).</summary>
/// <param name="AngleRadians">Turn of the last station against the first, rad; positive with the left edge rising.</param>
/// <param name="UncertaintyRadians">Standard uncertainty of it, rad.</param>
public sealed record Twist(double AngleRadians, double UncertaintyRadians)
{
    private const double CoverageFactor = 2; // 95 % of a normal distribution

    /// <summary>Whether the readings show a twist at 95 %.</summary>
    public bool IsSeen => Math.Abs(AngleRadians) > CoverageFactor * UncertaintyRadians;

    /// <summary>The twist from two or more stations, or null with fewer: a straight line through the tilt at each station.</summary>
    public static Twist? From(IReadOnlyList<TwistReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Select(r => r.StationMetres).Distinct().Count() < 2)
        {
            return null;
        }

        // Tilt at each station (L − R)/width with variance 2u²/width²; weighted line through them.
        double weights = 0,
            stations = 0,
            tilts = 0;
        foreach (var r in readings)
        {
            var (tilt, weight) = Tilt(r);
            (weights, stations, tilts) = (weights + weight, stations + (weight * r.StationMetres), tilts + (weight * tilt));
        }

        var (middle, mean) = (stations / weights, tilts / weights);
        double spread = 0,
            slope = 0;
        foreach (var r in readings)
        {
            var (tilt, weight) = Tilt(r);
            var arm = r.StationMetres - middle;
            (spread, slope) = (spread + (weight * arm * arm), slope + (weight * arm * (tilt - mean)));
        }

        var length = readings.Max(r => r.StationMetres) - readings.Min(r => r.StationMetres);
        return new(slope / spread * length, length / Math.Sqrt(spread));
    }

    private static (double Radians, double Weight) Tilt(TwistReading r)
    {
        var u = Math.Sqrt(2) * r.StandardUncertaintyMetres / r.WidthMetres;
        return ((r.LeftMetres - r.RightMetres) / r.WidthMetres, 1 / (u * u));
    }
}
