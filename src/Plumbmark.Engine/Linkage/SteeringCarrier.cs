namespace Plumbmark.Engine.Linkage;

/// <summary>Which member of a steering box's linkage carries a track rod's inner joint.</summary>
public enum SteeringCarrier
{
    /// <summary>The link between the drop arm and the idler.</summary>
    CentreLink,

    /// <summary>The drop arm itself.</summary>
    DropArm,

    /// <summary>The idler itself.</summary>
    Idler,
}
