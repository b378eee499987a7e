namespace Plumbmark.Engine.Linkage;

/// <summary>
/// What a corner's angles depend on, one number each, in metres (the two wheel-axis turns in radians). Places are in own-side axes (y outboard); a place on the upright is given in the
/// position as drawn. The value is the index into a row of <see cref="CornerSensitivity"/>.
/// </summary>
public enum CornerParameter
{
    /// <summary>Front upper pivot, forward.</summary>
    UpperFrontX,

    /// <summary>Front upper pivot, outboard.</summary>
    UpperFrontY,

    /// <summary>Front upper pivot, up.</summary>
    UpperFrontZ,

    /// <summary>Rear upper pivot, forward.</summary>
    UpperRearX,

    /// <summary>Rear upper pivot, outboard.</summary>
    UpperRearY,

    /// <summary>Rear upper pivot, up.</summary>
    UpperRearZ,

    /// <summary>Front lower pivot, forward.</summary>
    LowerFrontX,

    /// <summary>Front lower pivot, outboard.</summary>
    LowerFrontY,

    /// <summary>Front lower pivot, up.</summary>
    LowerFrontZ,

    /// <summary>Rear lower pivot, forward.</summary>
    LowerRearX,

    /// <summary>Rear lower pivot, outboard.</summary>
    LowerRearY,

    /// <summary>Rear lower pivot, up.</summary>
    LowerRearZ,

    /// <summary>Track rod's inner joint, forward.</summary>
    TrackRodInnerX,

    /// <summary>Track rod's inner joint, outboard.</summary>
    TrackRodInnerY,

    /// <summary>Track rod's inner joint, up.</summary>
    TrackRodInnerZ,

    /// <summary>The upper arm's first size (<see cref="ArmShape.FirstMetres"/>).</summary>
    UpperArmFirst,

    /// <summary>The upper arm's second size (<see cref="ArmShape.SecondMetres"/>).</summary>
    UpperArmSecond,

    /// <summary>The lower arm's first size.</summary>
    LowerArmFirst,

    /// <summary>The lower arm's second size.</summary>
    LowerArmSecond,

    /// <summary>The track rod's length.</summary>
    TrackRodLength,

    /// <summary>The upright's length between its two joints.</summary>
    UprightSpan,

    /// <summary>The lever's joint, forward, with the upright as drawn.</summary>
    LeverX,

    /// <summary>The lever's joint, outboard, with the upright as drawn.</summary>
    LeverY,

    /// <summary>The lever's joint, up, with the upright as drawn.</summary>
    LeverZ,

    /// <summary>The wheel axis turned on the upright toward more camber, radians.</summary>
    StubCamber,

    /// <summary>The wheel axis turned on the upright toward more toe-in, radians.</summary>
    StubToeIn,

    /// <summary>The wheel centre on the upright, up, as drawn: a stub axle set higher or lower.</summary>
    StubHeight,
}
