namespace Plumbmark.Engine.Linkage;

/// <summary>
/// The circle on which a wishbone's outer joint travels once the arm hangs on its two pivots. Angles are measured from the outboard horizontal, positive upward,
/// in own-side axes (y outboard). <c>default</c> is no circle: <see cref="Closes"/> is false.
/// </summary>
public readonly struct ArmPath
{
    private ArmPath(Vector3 frontPivot, Vector3 rearPivot, Vector3 centre, Vector3 axis, double radius)
    {
        FrontPivot = frontPivot;
        RearPivot = rearPivot;
        Centre = centre;
        Axis = axis;
        RadiusMetres = radius;
        Outward = Vector3.Across(Vector3.Left, axis).Direction;
        Upward = Vector3.Cross(axis, Outward);
    }

    /// <summary>The front pivot on the frame, metres.</summary>
    public Vector3 FrontPivot { get; }

    /// <summary>The rear pivot on the frame, metres.</summary>
    public Vector3 RearPivot { get; }

    /// <summary>The circle's centre, on the line through the pivots, metres.</summary>
    public Vector3 Centre { get; }

    /// <summary>The pivot line, a unit direction from the rear pivot to the front one.</summary>
    public Vector3 Axis { get; }

    /// <summary>The circle's radius, metres; not a number or not positive when the arm cannot reach.</summary>
    public double RadiusMetres { get; }

    /// <summary>Unit direction at angle zero.</summary>
    public Vector3 Outward { get; }

    /// <summary>Unit direction a quarter turn on from <see cref="Outward"/>.</summary>
    public Vector3 Upward { get; }

    /// <summary>Whether the arm can be hung on these pivots at all.</summary>
    public bool Closes => RadiusMetres > 0 && Outward.IsFinite;

    /// <summary>Hangs an arm on two pivots.</summary>
    /// <param name="arm">The part.</param>
    /// <param name="frontPivot">Front pivot, metres, y outboard.</param>
    /// <param name="rearPivot">Rear pivot, metres, y outboard.</param>
    public static ArmPath Of(in ArmShape arm, Vector3 frontPivot, Vector3 rearPivot)
    {
        var spacing = Vector3.Distance(frontPivot, rearPivot);
        var axis = (frontPivot - rearPivot).Direction;
        var middle = 0.5 * (frontPivot + rearPivot);
        if (arm.Make == ArmMake.OnePiece)
        {
            return new(frontPivot, rearPivot, middle + (arm.FirstMetres * axis), axis, arm.SecondMetres);
        }

        // Two spheres about the pivots meet in the circle: with f, r the halves and d the spacing, the plane lies t = (r^2 - f^2) / (2 d) ahead of the middle.
        var ahead = ((arm.SecondMetres * arm.SecondMetres) - (arm.FirstMetres * arm.FirstMetres)) / (2 * spacing);
        var fromRear = ahead + (0.5 * spacing);
        var radius = Math.Sqrt((arm.SecondMetres * arm.SecondMetres) - (fromRear * fromRear));
        return new(frontPivot, rearPivot, middle + (ahead * axis), axis, radius);
    }

    /// <summary>The outer joint at an arm angle given by its cosine and sine.</summary>
    public Vector3 At(double cosine, double sine) => Centre + (RadiusMetres * cosine * Outward) + (RadiusMetres * sine * Upward);

    /// <summary>The outer joint's velocity for a unit rate of the arm angle, metres per radian.</summary>
    public Vector3 VelocityAt(Vector3 outerJoint) => Vector3.Cross(Axis, outerJoint - Centre);
}
