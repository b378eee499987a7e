namespace Plumbmark.Inspection.Road;

/// <summary>How sure a home reading at a wheel is when its owner does not say. Common practice, no source; each reading may carry its own.</summary>
internal static class WheelCheckNumbers
{
    /// <summary>A rule held against a string or a plumb line, or a tape between scribed lines, metres.</summary>
    public const double GapMetres = 0.5e-3;

    /// <summary>A tape along the car between hubs, metres.</summary>
    public const double WheelbaseMetres = 1.5e-3;

    /// <summary>A digital level against a rim, radians: a tenth of a degree.</summary>
    public const double LevelRadians = 0.1 * Math.PI / 180;

    /// <summary>A turn set by marks on a board, radians: half a degree.</summary>
    public const double TurnRadians = 0.5 * Math.PI / 180;

    /// <summary>The half difference that a rim's run-out leaves between its edges when it was not rolled half a turn, metres.</summary>
    public const double RunOutMetres = 0.5e-3;

    /// <summary>
    /// How far the floor between two wheels may lean when the pads were not read, radians: a floor laid to drain falls up to 1 in 60, and nobody knows which way (rectangular, so over the root of three).
    /// </summary>
    public const double FloorLeanRadians = 1.0 / 60 / 1.7320508075688772;

    /// <summary>A car's track is seldom less, metres: so much may a read pad count for where the track is not told.</summary>
    public const double LeastTrackMetres = 1;

    /// <summary>A usual rim, for a level held against it when its span is not told, metres.</summary>
    public const double RimMetres = 0.38;

    /// <summary>The uncertainty of each length of a reading, metres.</summary>
    public static double Gap(WheelReading reading) => reading.Sigma?.Metres ?? GapMetres;

    /// <summary>The uncertainty of each camber of a reading, radians.</summary>
    public static double Level(WheelReading reading) => reading.SigmaAngle?.Radians ?? LevelRadians;
}
