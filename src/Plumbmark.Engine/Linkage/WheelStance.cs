namespace Plumbmark.Engine.Linkage;

/// <summary>One wheel in the car's axes: where its centre is and where it points. <c>default</c> is a wheel at the origin without an axis.</summary>
/// <param name="Centre">Wheel centre, metres, y to the left.</param>
/// <param name="CamberRadians">Positive with the top outward.</param>
/// <param name="ToeInRadians">Positive with the front nearer the centre line.</param>
public readonly record struct WheelStance(Vector3 Centre, double CamberRadians, double ToeInRadians)
{
    /// <summary>The wheel of a corner's position.</summary>
    /// <param name="state">The position, own-side axes.</param>
    /// <param name="isLeft">Whether the corner is the left one.</param>
    public static WheelStance Of(in CornerState state, bool isLeft)
    {
        var angles = WheelAngles.Of(state);
        return new(isLeft ? state.WheelCentre : state.WheelCentre.Mirrored, angles.CamberRadians, angles.ToeInRadians);
    }
}
