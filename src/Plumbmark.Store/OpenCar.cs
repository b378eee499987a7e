using Plumbmark.Inspection.Car;

namespace Plumbmark.Store;

/// <summary>A car as its journal stood at one moment. It does not change; ask the shed again for a later one.</summary>
/// <param name="Id">Its number in the shed, never used again.</param>
/// <param name="Sequence">The place of the last entry: two with the same number are the same.</param>
/// <param name="Entries">Its whole journal.</param>
/// <param name="File">The car that the journal folds into.</param>
/// <param name="IsBinned">Whether it lies in the bin.</param>
public sealed record OpenCar(long Id, long Sequence, IReadOnlyList<KeptEntry> Entries, CarFile File, bool IsBinned);
