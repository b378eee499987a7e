namespace Plumbmark.Engine.Linkage;

/// <summary>
/// A rear wheel on a semi-trailing arm: hub and arm are one rigid piece that turns about the line through its two bushes on the frame. Own-side axes (y outboard), metres.
/// </summary>
/// <remarks>The rubbers centre the arm between its pivots, so a pivot moved along their line carries the arm half as far.</remarks>
public sealed record TrailingArm
{
    private readonly Vector3 _axis;
    private readonly Vector3 _middle;

    // The arm as a loose part: wheel centre and wheel axis from the middle between the bushes, in the drawn arm's axes (axis a, the wheel's side b, c = a x b).
    private readonly Vector3 _wheel;
    private readonly Vector3 _spin;

    private TrailingArm(Vector3 innerPivot, Vector3 outerPivot, Vector3 wheel, Vector3 spin)
    {
        _axis = (outerPivot - innerPivot).Direction;
        _middle = 0.5 * (innerPivot + outerPivot);
        _wheel = wheel;
        _spin = spin;
    }

    /// <summary>The arm as drawn, hung on pivots that may lie elsewhere.</summary>
    /// <param name="drawnInner">Inner pivot as drawn.</param>
    /// <param name="drawnOuter">Outer pivot as drawn.</param>
    /// <param name="drawnWheel">Wheel centre as drawn, at ride height.</param>
    /// <param name="drawnSpin">Wheel axis as drawn, unit, outboard.</param>
    /// <param name="innerPivot">Inner pivot as it is.</param>
    /// <param name="outerPivot">Outer pivot as it is.</param>
    public static TrailingArm Of(
        Vector3 drawnInner,
        Vector3 drawnOuter,
        Vector3 drawnWheel,
        Vector3 drawnSpin,
        Vector3 innerPivot,
        Vector3 outerPivot
    )
    {
        var a = (drawnOuter - drawnInner).Direction;
        var b = Vector3.Across(drawnWheel - drawnInner, a).Direction;
        var c = Vector3.Cross(a, b);
        Vector3 InArm(Vector3 v) => new(Vector3.Dot(v, a), Vector3.Dot(v, b), Vector3.Dot(v, c));
        return new(innerPivot, outerPivot, InArm(drawnWheel - (0.5 * (drawnInner + drawnOuter))), InArm(drawnSpin));
    }

    /// <summary>The wheel with its centre at a height; own-side axes.</summary>
    /// <param name="wheelCentreHeightMetres">z of the wheel centre, metres.</param>
    /// <param name="stance">Wheel centre, camber and toe-in.</param>
    // The wheel circles the axis with radius r = _wheel.Y at the arm angle t (rearward-level zero):  z = z_c + r (b_z cos t + c_z sin t).
    public Reach Solve(double wheelCentreHeightMetres, out WheelStance stance)
    {
        var rearward = Vector3.Across(-Vector3.Forward, _axis).Direction;
        var across = Vector3.Cross(_axis, rearward);
        var centre = _middle + (_wheel.X * _axis);
        var amplitude = _wheel.Y * Math.Sqrt((rearward.Z * rearward.Z) + (across.Z * across.Z));
        var sine = (wheelCentreHeightMetres - centre.Z) / amplitude;
        if (!(Math.Abs(sine) <= 1))
        {
            stance = default;
            return new(ReachLimit.LowerArm, Math.Abs(wheelCentreHeightMetres - centre.Z) - amplitude);
        }

        // Two angles reach the height; the arm trails, so the one nearer the rearward level is meant.
        var lead = Math.Atan2(rearward.Z, across.Z);
        var near = Math.IEEERemainder(Math.Asin(sine) - lead, 2 * Math.PI);
        var far = Math.IEEERemainder(Math.PI - Math.Asin(sine) - lead, 2 * Math.PI);
        var (sin, cos) = Math.SinCos(Math.Abs(near) <= Math.Abs(far) ? near : far);
        var b = (cos * rearward) + (sin * across);
        var c = Vector3.Cross(_axis, b);
        var spin = (_spin.X * _axis) + (_spin.Y * b) + (_spin.Z * c);
        stance = new(centre + (_wheel.Y * b), Math.Asin(-spin.Z), Math.Atan2(spin.X, spin.Y));
        return default;
    }
}
