namespace Plumbmark.Inspection.Floor;

/// <summary>A form of damage fitted to the frame.</summary>
/// <param name="Form">sidesway, sag, mash, diamond, twist, point or pair.</param>
/// <param name="AmountMetres">Its amount as the design defines it for the form.</param>
/// <param name="UMetres">Standard uncertainty of the amount.</param>
/// <param name="From">The station or point where it begins or sits; null when it concerns the whole frame.</param>
/// <param name="Odds">How many times likelier than the next best explanation.</param>
/// <param name="Sentence">What it looks like, in trade words.</param>
public sealed record DamageEstimate(string Form, double AmountMetres, double UMetres, string? From, double Odds, string Sentence);
