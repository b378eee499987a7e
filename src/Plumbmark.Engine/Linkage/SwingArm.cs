namespace Plumbmark.Engine.Linkage;

/// <summary>A drop arm or an idler: a joint that circles a fixed shaft. Car axes, metres.</summary>
/// <param name="Pivot">A place on the shaft.</param>
/// <param name="Axis">The shaft, a unit direction.</param>
/// <param name="Joint">The joint that the centre link hangs on, straight ahead.</param>
public sealed record SwingArm(Vector3 Pivot, Vector3 Axis, Vector3 Joint)
{
    /// <summary>Where a place that is fixed to the arm goes when the arm turns.</summary>
    /// <param name="place">The place, straight ahead.</param>
    /// <param name="radians">Turn about <see cref="Axis"/>, right-handed.</param>
    public Vector3 Turned(Vector3 place, double radians)
    {
        // Rodrigues: v cos t + (n x v) sin t + n (n.v)(1 - cos t).
        var v = place - Pivot;
        var (sine, cosine) = Math.SinCos(radians);
        return Pivot + (cosine * v) + (sine * Vector3.Cross(Axis, v)) + (Vector3.Dot(Axis, v) * (1 - cosine) * Axis);
    }

    // The turn that brings the joint to a distance from a place: of the two, the one on the side where it stands straight ahead.
    internal Reach MeetAt(Vector3 place, double length, out double radians)
    {
        var arm = Vector3.Across(Joint - Pivot, Axis);
        var centre = Joint - arm;
        var r = arm.Norm;
        var (e1, q) = ((1 / r) * arm, place - centre);
        var e2 = Vector3.Cross(Axis, e1);
        var (q1, q2) = (Vector3.Dot(q, e1), Vector3.Dot(q, e2));
        var (spread, middle) = (Math.Sqrt((q1 * q1) + (q2 * q2)), (r * r) + Vector3.Dot(q, q));
        var cosine = (middle - (length * length)) / (2 * r * spread);
        if (!(Math.Abs(cosine) <= 1))
        {
            radians = double.NaN;
            return new(ReachLimit.CentreLink, Math.Abs(Math.Sqrt(Math.Max(0, middle - (Math.Sign(cosine) * 2 * r * spread))) - length));
        }

        var (toward, off) = (Math.Atan2(q2, q1), Math.Acos(cosine));
        var (one, other) = (Math.IEEERemainder(toward + off, 2 * Math.PI), Math.IEEERemainder(toward - off, 2 * Math.PI));
        radians = Math.Abs(one) <= Math.Abs(other) ? one : other;
        return default;
    }
}
