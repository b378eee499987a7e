namespace Plumbmark.Inspection.Floor.Workshop;

/// <summary>From where a point is to where it belongs, in metres with standard uncertainties; null where nothing tells.</summary>
internal sealed record Wish((double? Amount, double? U) X, (double? Amount, double? U) Y, (double? Amount, double? U) Z);
