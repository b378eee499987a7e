using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store;

/// <summary>A car as its journal stood at one moment. It does not change; ask the journals again for a later one.</summary>
/// <param name="Id">Its number in the shed, never used again.</param>
/// <param name="Sequence">The place of the last entry: two with the same number are the same.</param>
/// <param name="Entries">Its whole journal.</param>
/// <param name="File">The car that the journal folds into.</param>
/// <param name="IsBinned">Whether it lies in the bin.</param>
public sealed record OpenCar(long Id, long Sequence, IReadOnlyList<KeptEntry> Entries, CarFile File, bool IsBinned)
{
    /// <summary>A car about which nothing has been written.</summary>
    internal static OpenCar Empty(long id) => new(id, 0, [], CarFile.Named("", LengthUnit.Inch), IsBinned: false);

    /// <summary>The car after more entries.</summary>
    internal OpenCar After(IEnumerable<KeptEntry> more)
    {
        List<KeptEntry> entries = [.. Entries, .. more];
        return this with
        {
            Sequence = entries.Count == 0 ? 0 : entries[^1].Sequence,
            Entries = entries,
            File = Fold.Of(entries.Select(e => e.Entry)),
        };
    }
}
