namespace Plumbmark.Inspection.Bench;

/// <summary>What a loose part is. It decides what is worth measuring on it and whether it may ever be straightened.</summary>
public enum PartKind
{
    /// <summary>The arm, or half arm, below the axle.</summary>
    LowerWishbone,

    /// <summary>The arm above the axle; with lever dampers the damper's own arm.</summary>
    UpperWishbone,

    /// <summary>The link between the two ball joints or trunnions that carries the wheel. Never straightened.</summary>
    Upright,

    /// <summary>The axle that the hub turns on. Never straightened.</summary>
    StubAxle,

    /// <summary>The arm by which the track rod turns the wheel. Never straightened.</summary>
    SteeringLever,

    /// <summary>The pin that a wishbone swings on.</summary>
    FulcrumPin,

    /// <summary>The pan or plate that the spring stands in.</summary>
    SpringSeat,

    /// <summary>A coil spring.</summary>
    CoilSpring,

    /// <summary>The threaded or plain block at the end of an upright.</summary>
    Trunnion,

    /// <summary>A bush, or a bore by itself.</summary>
    Bush,

    /// <summary>A track rod, a centre link, a drop arm: whatever joins the wheel's lever to the steering. Never straightened.</summary>
    TrackRod,

    /// <summary>A ball joint or the end of a track rod. Never straightened.</summary>
    BallJoint,

    /// <summary>A bracket, horn, stay or mount that neither steers the car nor carries a wheel.</summary>
    Bracket,

    /// <summary>Any other part, built up from the same features. Nobody knows what it does, so it is never straightened.</summary>
    Own,
}
