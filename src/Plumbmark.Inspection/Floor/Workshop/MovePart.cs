namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>One direction of a move.</summary>
/// <param name="Direction">Which way.</param>
/// <param name="AmountMetres">How far, in metres; never negative.</param>
/// <param name="UMetres">Standard uncertainty of the amount, in metres.</param>
public sealed record MovePart(MoveDirection Direction, double AmountMetres, double UMetres);
