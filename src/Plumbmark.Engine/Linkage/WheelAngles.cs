namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The four angles of one wheel to the car's axes, radians. Not the distances at the ground; those are <see cref="GroundFigures"/>. <c>default</c> is four zeros, a valid wheel.
/// </summary>
/// <param name="CamberRadians">Positive with the top of the wheel outward (ISO 8855:2011, 7.1; the sign is the trade's).</param>
/// <param name="ToeInRadians">Positive with the front of the wheel nearer the centre line (ISO 8855:2011, 7.1.6).</param>
/// <param name="CastorRadians">Seen from the side; positive with the top of the steering axis rearward.</param>
/// <param name="KingPinRadians">King-pin inclination seen from the front; positive with the top of the steering axis inward.</param>
public readonly record struct WheelAngles(double CamberRadians, double ToeInRadians, double CastorRadians, double KingPinRadians)
{
    /// <summary>The angles of a corner in one position (own-side axes).</summary>
    // s - wheel axis, unit, outboard; k - steering axis, upward:
    //   sin camber = -s_z;  tan toe-in = s_x / s_y;  tan castor = -k_x / k_z;  tan KPI = -k_y / k_z.
    public static WheelAngles Of(in CornerState state)
    {
        var (s, k) = (state.SpinAxis, state.SteeringAxis);
        return new(Math.Asin(-s.Z), Math.Atan2(s.X, s.Y), Math.Atan2(-k.X, k.Z), Math.Atan2(-k.Y, k.Z));
    }
}
