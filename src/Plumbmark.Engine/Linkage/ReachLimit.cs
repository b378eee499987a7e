namespace Plumbmark.Engine.Linkage;

/// <summary>Which part runs out when a corner is asked for a position it cannot take.</summary>
public enum ReachLimit
{
    /// <summary>Nothing runs out: the position exists.</summary>
    None,

    /// <summary>The lower arm does not reach the height asked for.</summary>
    LowerArm,

    /// <summary>The upper arm and the upright cannot meet.</summary>
    UpperArm,

    /// <summary>The track rod and the steering lever cannot meet.</summary>
    TrackRod,

    /// <summary>The centre link does not reach from the drop arm to the idler.</summary>
    CentreLink,

    /// <summary>A number that went in was not a finite number, or an arm has no size.</summary>
    NotANumber,
}
