namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>A measurement that tells the shop when a point has arrived: from a point that is not moved, what it is now and what it should become.</summary>
/// <param name="Kind">How it is measured.</param>
/// <param name="From">The point that stays.</param>
/// <param name="NowMetres">What it is by the readings, in metres.</param>
/// <param name="WantedMetres">What it should become, in metres.</param>
public sealed record Guide(GuideKind Kind, string From, double NowMetres, double WantedMetres);
