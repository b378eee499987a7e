namespace Plumbmark.Inspection.Road;

/// <summary>Toe-out on turns: how far the outer wheel turns when the inner one is turned so far, and how both lean then. Radians; turns are positive.</summary>
/// <param name="Inner">The inner wheel's turn.</param>
/// <param name="Drawn">Both wheels as drawn, the same to both sides; null when the steering does not reach it.</param>
/// <param name="ToTheLeft">As found, turning left; null when not reached.</param>
/// <param name="ToTheRight">As found, turning right; null when not reached.</param>
public sealed record TurnPoint(double Inner, TurnedWheels? Drawn, TurnedWheels? ToTheLeft, TurnedWheels? ToTheRight);
