namespace Plumbmark.Store;

/// <summary>What the list of cars shows of a car, without reading its journal.</summary>
/// <param name="Id">Its number in the shed.</param>
/// <param name="Sequence">The last entry of its journal.</param>
/// <param name="Name">Its name.</param>
/// <param name="Serial">Its serial number; null when not told.</param>
/// <param name="Points">Points on its frame.</param>
/// <param name="Readings">Readings that stand.</param>
/// <param name="Verdict">What this version of the program said of it as it stands; null when it has not been asked.</param>
public sealed record CarGlance(long Id, long Sequence, string Name, string? Serial, int Points, int Readings, string? Verdict);
