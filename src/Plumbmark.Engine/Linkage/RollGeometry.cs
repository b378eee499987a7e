namespace Plumbmark.Engine.Linkage;

/// <summary>
/// How one wheel's path leans, from the upright's motion as the wheel rises: instant centres and the roll centre's height. Own-side axes, metres. A wheel that rises straight has its
/// instant centre at infinity; the roll centre's height is finite all the same.
/// </summary>
/// <param name="FrontView">Instant centre in the plane across the car through the wheel centre (x is the wheel centre's); components may be infinite.</param>
/// <param name="SideView">Instant centre in the plane along the car through the wheel centre (y is the wheel centre's); components may be infinite.</param>
/// <param name="RollCentreAboveRoadMetres">
/// Height above the road, at the centre plane y = 0, of the line across the contact's path: the roll centre of a car that is alike on both sides.
/// </param>
public readonly record struct RollGeometry(Vector3 FrontView, Vector3 SideView, double RollCentreAboveRoadMetres)
{
    /// <summary>The figures of a corner in one position.</summary>
    /// <param name="state">The position.</param>
    /// <param name="contact">Where the wheel meets the road (see <see cref="GroundFigures"/>).</param>
    // The contact, as a point of the upright, moves with velocity v; the line through it square to v in the front view meets y = 0 at
    //   h = contact_y * v_y / v_z   above the road (Arnold and Kennedy's three centres, as in any textbook of suspension).
    public static RollGeometry Of(in CornerState state, Vector3 contact)
    {
        var twist = state.PerMetreOfTravel;
        var (v, w) = (twist.VelocityAt(state.WheelCentre), twist.Angular);
        // Front view, r from the wheel centre: v_y - w_x r_z = 0 and v_z + w_x r_y = 0 (r_x = 0); side view likewise with w_y.
        var front = state.WheelCentre + new Vector3(0, -v.Z / w.X, v.Y / w.X);
        var side = state.WheelCentre + new Vector3(v.Z / w.Y, 0, -v.X / w.Y);
        var atRoad = twist.VelocityAt(contact);
        return new(front, side, contact.Y * atRoad.Y / atRoad.Z);
    }

    /// <summary>Where the two wheels' lines cross, for a car that is not alike on both sides.</summary>
    /// <param name="left">The left corner's position, own-side axes.</param>
    /// <param name="leftContact">Its contact, own-side axes.</param>
    /// <param name="right">The right corner's position, own-side axes.</param>
    /// <param name="rightContact">Its contact, own-side axes.</param>
    /// <returns>The roll centre in the car's axes (y to the left), x midway between the contacts; not finite when the lines are parallel.</returns>
    public static Vector3 Centre(in CornerState left, Vector3 leftContact, in CornerState right, Vector3 rightContact)
    {
        // Each line in the car's axes: z = z_c + (y - y_c) * slope. Square to (v_y, v_z), so slope = -v_y / v_z; the right side mirrors y.
        var leftSlope = -SlopeOf(left, leftContact);
        var rightSlope = SlopeOf(right, rightContact);
        var (leftAtZero, rightAtZero) = (leftContact.Z - (leftSlope * leftContact.Y), rightContact.Z + (rightSlope * rightContact.Y));
        var y = (rightAtZero - leftAtZero) / (leftSlope - rightSlope);
        return new(0.5 * (leftContact.X + rightContact.X), y, leftAtZero + (leftSlope * y));
    }

    private static double SlopeOf(in CornerState state, Vector3 contact)
    {
        var v = state.PerMetreOfTravel.VelocityAt(contact);
        return v.Y / v.Z;
    }
}
