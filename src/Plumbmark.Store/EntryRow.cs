using System.Globalization;
using System.Text;
using Microsoft.Data.Sqlite;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store;

/// <summary>A row of the table <c>entry</c> as a journal entry.</summary>
internal static class EntryRow
{
    /// <summary>The entry in a row of sequence, together, id, at, by, act.</summary>
    /// <exception cref="StoreUnusableException">The act is not known to this version, or is not what was once written.</exception>
    public static KeptEntry Read(SqliteDataReader row, long car) =>
        Of(
            row.GetInt64(0),
            row.GetInt64(1),
            row.GetString(2),
            row.GetString(3),
            row.IsDBNull(4) ? null : row.GetString(4),
            row.GetString(5),
            car
        );

    /// <summary>The entry of those values.</summary>
    /// <exception cref="StoreUnusableException">The act is not known to this version, or is not what was once written.</exception>
    public static KeptEntry Of(long sequence, long together, string id, string at, string? by, string act, long car)
    {
        var faults = new Faults();
        var read = ActJson.Read(Encoding.UTF8.GetBytes(act), faults);
        if (
            read is null
            || !Guid.TryParse(id, out var name)
            || !DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var time)
        )
        {
            var why = faults.Count > 0 ? faults.First().Sentence : "Its name or its time cannot be read.";
            throw new StoreUnusableException(
                $"Entry {sequence} in the journal of car {car} is not understood, so this car cannot be shown. "
                    + $"Perhaps a newer Plumbmark wrote it. {why}"
            );
        }

        return new KeptEntry(sequence, together, new JournalEntry(name, time, by, read));
    }
}
