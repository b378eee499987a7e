namespace Plumbmark.Inspection.Road;

/// <summary>Toe-out on turns: how far the outer wheel turns when the inner one is turned so far. Radians, all positive.</summary>
/// <param name="Inner">The inner wheel's turn.</param>
/// <param name="OuterDrawn">The outer wheel's turn as drawn, the same to both sides; null when the steering does not reach it.</param>
/// <param name="OuterTurningLeft">The right wheel's turn, turning left; null when not reached.</param>
/// <param name="OuterTurningRight">The left wheel's turn, turning right; null when not reached.</param>
public sealed record TurnPoint(double Inner, double? OuterDrawn, double? OuterTurningLeft, double? OuterTurningRight);
