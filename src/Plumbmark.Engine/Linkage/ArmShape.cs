namespace Plumbmark.Engine.Linkage;

/// <summary>
/// A wishbone as a loose part: what stays the same wherever its pivots are. Not the circle its outer joint travels on; that is <see cref="ArmPath"/>.
/// <c>default</c> has no size and fits nothing.
/// </summary>
public readonly record struct ArmShape
{
    private ArmShape(ArmMake make, double first, double second, double eyeSpacing)
    {
        Make = make;
        FirstMetres = first;
        SecondMetres = second;
        EyeSpacingMetres = eyeSpacing;
    }

    /// <summary>Two halves or one piece.</summary>
    public ArmMake Make { get; }

    /// <summary>
    /// Two halves: front eye to outer joint, metres. One piece: how far forward of the middle between the eyes the outer joint lies, along the line through them, metres.
    /// </summary>
    public double FirstMetres { get; }

    /// <summary>Two halves: rear eye to outer joint, metres. One piece: the outer joint's reach, its distance from the line through the eyes, metres.</summary>
    public double SecondMetres { get; }

    /// <summary>Distance between the two eyes of the part, metres; compared with the pivots' distance to tell whether the arm goes on unforced.</summary>
    public double EyeSpacingMetres { get; }

    /// <summary>The arm that joins three places of the drawing.</summary>
    /// <param name="make">Two halves or one piece.</param>
    /// <param name="frontEye">Centre of the front eye, metres.</param>
    /// <param name="rearEye">Centre of the rear eye, metres.</param>
    /// <param name="outerJoint">Centre of the outer joint, metres.</param>
    public static ArmShape Between(ArmMake make, Vector3 frontEye, Vector3 rearEye, Vector3 outerJoint)
    {
        var spacing = Vector3.Distance(frontEye, rearEye);
        if (make == ArmMake.TwoHalves)
        {
            return new(make, Vector3.Distance(frontEye, outerJoint), Vector3.Distance(rearEye, outerJoint), spacing);
        }

        var axis = (frontEye - rearEye).Direction;
        var fromMiddle = outerJoint - (0.5 * (frontEye + rearEye));
        return new(make, Vector3.Dot(fromMiddle, axis), Vector3.Across(fromMiddle, axis).Norm, spacing);
    }

    /// <summary>The same arm with its two sizes changed: a bent or different part.</summary>
    /// <param name="firstByMetres">Added to <see cref="FirstMetres"/>.</param>
    /// <param name="secondByMetres">Added to <see cref="SecondMetres"/>.</param>
    public ArmShape Changed(double firstByMetres, double secondByMetres) =>
        new(Make, FirstMetres + firstByMetres, SecondMetres + secondByMetres, EyeSpacingMetres);
}
