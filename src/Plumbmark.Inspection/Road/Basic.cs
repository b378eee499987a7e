namespace Plumbmark.Inspection.Road;

/// <summary>The few numbers of one side from which every figure is made; radians and metres. Values are indices.</summary>
internal enum Basic
{
    Camber,
    ToeIn,
    Castor,
    KingPin,
    WheelForward,
    WheelOutboard,

    /// <summary>Toe-in at full bump.</summary>
    BumpToeIn,

    /// <summary>The other wheel's turn when this side's wheel is the inner one, turned by <see cref="RoadKinematics.InnerTurnRadians"/>.</summary>
    OuterTurn,
    RearCamber,
    RearToeIn,
    RearForward,
    RearOutboard,
}
