namespace Plumbmark.Engine.Linkage;

/// <summary>
/// A castor check: one wheel's camber read straight ahead and with the wheel turned both ways. Angles in radians; camber positive with the top outward; both turns are given as positive
/// sizes, measured at the wheel, seen from above. Not a measurement of castor itself: the steering axis is worked out from how the wheel leans as it turns about it.
/// </summary>
/// <param name="AheadCamberRadians">Camber straight ahead.</param>
/// <param name="OutTurnRadians">Turn with the front of the wheel swung outboard (toe-out).</param>
/// <param name="OutCamberRadians">Camber there.</param>
/// <param name="InTurnRadians">Turn with the front of the wheel swung inboard.</param>
/// <param name="InCamberRadians">Camber there.</param>
public readonly record struct CastorSwing(
    double AheadCamberRadians,
    double OutTurnRadians,
    double OutCamberRadians,
    double InTurnRadians,
    double InCamberRadians
)
{
    /// <summary>Castor and king-pin inclination, without approximation.</summary>
    /// <returns>Radians; not a number when both turns are zero.</returns>
    // The wheel's axis s keeps its angle to the steering axis k, so k.s is the same in all three positions. With k ~ (-tan c, -tan n, 1) and
    // s = (-cos g sin f, cos g cos f, -sin g) for a turn f outboard and camber g:
    //   tan c cos g sin f - tan n cos g cos f - sin g = -tan n cos g0 - sin g0      - linear in tan c and tan n, one line for each turn.
    public (double CastorRadians, double KingPinRadians) Exact()
    {
        var (a1, b1, r1) = Line(OutTurnRadians, OutCamberRadians);
        var (a2, b2, r2) = Line(-InTurnRadians, InCamberRadians);
        var determinant = (a1 * b2) - (a2 * b1);
        return (Math.Atan(((r1 * b2) - (r2 * b1)) / determinant), Math.Atan(((a1 * r2) - (a2 * r1)) / determinant));
    }

    /// <summary>
    /// Castor by the sines of the cambers, the usual good form: tan c = (sin g_out - sin g_in) / (sin f_out + sin f_in), radians. It takes cos g as one and needs equal turns; it is high by
    /// 0.01 degrees at 10 degrees of castor with 12 of king-pin inclination.
    /// </summary>
    public double BySines() =>
        Math.Atan((Math.Sin(OutCamberRadians) - Math.Sin(InCamberRadians)) / (Math.Sin(OutTurnRadians) + Math.Sin(InTurnRadians)));

    /// <summary>Castor by the difference of the cambers over the sum of the sines of the turns: 1.4619 times the difference at 20 degrees each way. Radians.</summary>
    public double ByDifference() => (OutCamberRadians - InCamberRadians) / (Math.Sin(OutTurnRadians) + Math.Sin(InTurnRadians));

    /// <summary>
    /// Castor by the shortest form, which takes the turns' sines for the turns themselves: 1.4324 times the difference at 20 degrees each way, two per cent low. Radians. Shown only so that a figure found that
    /// way can be recognised.
    /// </summary>
    public double ByShortForm() => (OutCamberRadians - InCamberRadians) / (OutTurnRadians + InTurnRadians);

    /// <summary>
    /// King-pin inclination by the mean of both cambers, the usual short form: ((g_out + g_in) / 2 - g_ahead) / (1 - cos f), radians. It takes the tangent of the inclination for the inclination itself
    /// and the sine of the camber for the camber: high by 0.08 degrees at 8 degrees and by 0.27 at 12.
    /// </summary>
    public double KingPinByMean() =>
        ((0.5 * (OutCamberRadians + InCamberRadians)) - AheadCamberRadians)
        / (1 - (0.5 * (Math.Cos(OutTurnRadians) + Math.Cos(InTurnRadians))));

    private (double Castor, double KingPin, double Right) Line(double turn, double camber)
    {
        var (sine, cosine) = Math.SinCos(turn);
        var flat = Math.Cos(camber);
        return (flat * sine, Math.Cos(AheadCamberRadians) - (flat * cosine), Math.Sin(camber) - Math.Sin(AheadCamberRadians));
    }
}
