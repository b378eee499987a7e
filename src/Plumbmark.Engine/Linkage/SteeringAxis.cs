namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The direction about which an upright steers. With a ball joint it is the line through the two joints; a trunnion's offset leans it about the trunnion's pin.
/// </summary>
internal static class SteeringAxis
{
    // w - unit from the lower pin to the upper joint; p - the pin, unit, forward; L - lean, sin L = offset / span.
    // across = (p across w) x w points inboard (p = x, w = z gives -y). The axis passes through the upper joint and, for L > 0, outboard of the pin below it:
    //   k = cos L * w + sin L * across,   and at right angles to it in the plane across the pin:  cos L * across - sin L * w.
    public static (Vector3 Axis, Vector3 Across) Of(Vector3 w, Vector3 p, double sineOfLean)
    {
        var across = Vector3.Cross(Vector3.Across(p, w).Direction, w);
        var cosineOfLean = Math.Sqrt(1 - (sineOfLean * sineOfLean));
        return ((cosineOfLean * w) + (sineOfLean * across), (cosineOfLean * across) - (sineOfLean * w));
    }

    // The rate of k when w changes at rate wRate and the pin keeps its direction (it is parallel to the arm's pivot line).
    // With m = p.w and N = sqrt(1 - m^2):  across = (p x w) / N,  across' = (p x w') / N + (p x w) m (p.w') / N^3.
    public static Vector3 RateOf(Vector3 w, Vector3 wRate, Vector3 p, double sineOfLean)
    {
        if (sineOfLean == 0)
        {
            return wRate;
        }

        var m = Vector3.Dot(p, w);
        var n2 = 1 - (m * m);
        var n = Math.Sqrt(n2);
        var acrossRate = ((1 / n) * Vector3.Cross(p, wRate)) + ((m * Vector3.Dot(p, wRate) / (n * n2)) * Vector3.Cross(p, w));
        return (Math.Sqrt(1 - (sineOfLean * sineOfLean)) * wRate) + (sineOfLean * acrossRate);
    }

    // The angle of the lever direction a about k from the direction across the pin, radians in (-pi, pi].
    public static double BearingOf(Vector3 a, Vector3 k, Vector3 across) =>
        Math.Atan2(Vector3.Dot(Vector3.Cross(across, a), k), Vector3.Dot(across, a));
}
