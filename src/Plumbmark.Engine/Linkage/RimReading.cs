namespace Plumbmark.Engine.Linkage;

/// <summary>Angles of a wheel from distances at its rim: what a plumb line, a string or a bar between the rims gives. Lengths in metres, angles in radians.</summary>
public static class RimReading
{
    /// <summary>Camber from a plumb line hung outboard of the wheel.</summary>
    /// <param name="topGapMetres">Level distance from the line to the rim's top edge.</param>
    /// <param name="bottomGapMetres">Level distance from the line to the rim's bottom edge.</param>
    /// <param name="spanMetres">Distance between the two edges along the rim.</param>
    /// <returns>Positive with the top outward: sin g = (bottom - top) / span.</returns>
    public static double Camber(double topGapMetres, double bottomGapMetres, double spanMetres) =>
        Math.Asin((bottomGapMetres - topGapMetres) / spanMetres);

    /// <summary>Toe-in of one wheel to a string stretched outboard along the car.</summary>
    /// <param name="frontGapMetres">Distance from the string, square to it, to the rim's front edge at hub height.</param>
    /// <param name="rearGapMetres">The same to the rear edge.</param>
    /// <param name="spanMetres">Distance between the two edges along the rim.</param>
    /// <returns>Positive with the front nearer the car: sin t = (front - rear) / span.</returns>
    public static double ToeInToString(double frontGapMetres, double rearGapMetres, double spanMetres) =>
        Math.Asin((frontGapMetres - rearGapMetres) / spanMetres);

    /// <summary>Both wheels' toe-in together, from the rims' (or scribed lines') distance apart behind and ahead.</summary>
    /// <param name="behindMinusAheadMetres">How much wider apart the wheels are behind than ahead.</param>
    /// <param name="diameterMetres">The diameter at which it was measured.</param>
    /// <returns>Total static toe (ISO 8855:2011, 7.1.7), positive toed in, for two wheels toed alike: t = 2 asin(d / 2D).</returns>
    public static double TotalToeIn(double behindMinusAheadMetres, double diameterMetres) =>
        2 * Math.Asin(behindMinusAheadMetres / (2 * diameterMetres));

    /// <summary>The inverse of <see cref="TotalToeIn"/>: how much wider apart behind than ahead, metres.</summary>
    public static double BehindMinusAhead(double totalToeInRadians, double diameterMetres) =>
        2 * diameterMetres * Math.Sin(0.5 * totalToeInRadians);
}
