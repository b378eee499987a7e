namespace Plumbmark.Inspection.Press;

/// <summary>Why a bite ends the job, until somebody has inspected the part or for good.</summary>
public enum StopReason
{
    /// <summary>A tick was heard.</summary>
    Tick,

    /// <summary>Paint or scale flaked.</summary>
    Flaking,

    /// <summary>The load fell, or was lower than before at more travel.</summary>
    LoadFell,

    /// <summary>The part moved out of the plane of the bend.</summary>
    WrongPlane,

    /// <summary>A wall buckled or was marked.</summary>
    Buckled,

    /// <summary>The spring-back is not what the bites before it told.</summary>
    SpringBackShifted,

    /// <summary>As many bites as were allowed.</summary>
    TooManyBites,

    /// <summary>The strain allowed is spent.</summary>
    StrainSpent,

    /// <summary>The part went past straight.</summary>
    PastStraight,
}
