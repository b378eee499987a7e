namespace Plumbmark.Inspection.Road;

/// <summary>Both front wheels with the steering turned. Radians.</summary>
/// <param name="OuterTurn">The outer wheel's turn, positive.</param>
/// <param name="InnerCamber">The inner wheel's camber, positive with the top outward.</param>
/// <param name="OuterCamber">The outer wheel's camber.</param>
public sealed record TurnedWheels(double OuterTurn, double InnerCamber, double OuterCamber);
