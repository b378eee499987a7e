namespace Plumbmark.Inspection.Road;

/// <summary>A part or a place of one side that may be off its drawing.</summary>
public enum CornerPart
{
    /// <summary>Front pivot of the upper arm.</summary>
    UpperFront,

    /// <summary>Rear pivot of the upper arm.</summary>
    UpperRear,

    /// <summary>Front pivot of the lower arm.</summary>
    LowerFront,

    /// <summary>Rear pivot of the lower arm.</summary>
    LowerRear,

    /// <summary>The track rod's inner joint.</summary>
    TrackRodInner,

    /// <summary>The upper arm.</summary>
    UpperArm,

    /// <summary>The lower arm.</summary>
    LowerArm,

    /// <summary>The track rod.</summary>
    TrackRod,

    /// <summary>The upright between its joints.</summary>
    Upright,

    /// <summary>The steering lever.</summary>
    Lever,

    /// <summary>The stub axle on the upright.</summary>
    Stub,

    /// <summary>At the rear: the spring's fixed eye, or the arm's inner pivot.</summary>
    RearEye,

    /// <summary>At the rear: the arm's outer pivot.</summary>
    RearOuter,
}
