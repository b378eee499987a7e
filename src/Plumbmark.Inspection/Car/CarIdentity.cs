namespace Plumbmark.Inspection.Car;

/// <summary>Which car this is, in its owner's words. Nothing here is checked against any register.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Serial">The serial or commission number as the maker wrote it; null when unknown.</param>
/// <param name="Note">Anything worth remembering; null when there is none.</param>
public sealed record CarIdentity(string Name, string? Serial = null, string? Note = null);
