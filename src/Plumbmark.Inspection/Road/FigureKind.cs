namespace Plumbmark.Inspection.Road;

/// <summary>What a book figure or a result is about.</summary>
public enum FigureKind
{
    /// <summary>Camber of each front wheel.</summary>
    Camber,

    /// <summary>Castor of each front wheel.</summary>
    Castor,

    /// <summary>King-pin inclination of each front wheel.</summary>
    KingPin,

    /// <summary>Toe-in of both front wheels together.</summary>
    ToeIn,

    /// <summary>Front camber, left minus right.</summary>
    CamberSplit,

    /// <summary>Castor, left minus right.</summary>
    CastorSplit,

    /// <summary>Toe change of one front wheel from ride height to full bump.</summary>
    BumpSteer,

    /// <summary>The outer wheel's turn when the inner one is turned 20 degrees.</summary>
    ToeOutOnTurns,

    /// <summary>Camber of each rear wheel.</summary>
    RearCamber,

    /// <summary>Toe-in of both rear wheels together.</summary>
    RearToeIn,

    /// <summary>The rear wheels' common direction from the centre line.</summary>
    Thrust,

    /// <summary>The front wheel centres' line from square.</summary>
    SetBack,

    /// <summary>Wheelbase of each side.</summary>
    Wheelbase,

    /// <summary>Wheelbase, left minus right.</summary>
    WheelbaseSplit,

    /// <summary>Front track.</summary>
    FrontTrack,

    /// <summary>Rear track.</summary>
    RearTrack,

    /// <summary>How far left of the frame's centre line the middle between the rear wheels lies.</summary>
    RearOffset,

    /// <summary>Dog-tracking: rolling straight along the thrust line, how far left of the front wheels' tracks the rear ones run, middles compared.</summary>
    DogTrack,

    /// <summary>Ride height, left minus right, front and rear.</summary>
    RideHeightSplit,
}
