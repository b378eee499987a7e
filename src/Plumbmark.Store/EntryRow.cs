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
    public static KeptEntry Read(SqliteDataReader row, long car)
    {
        var sequence = row.GetInt64(0);
        var faults = new Faults();
        var act = ActJson.Read(Encoding.UTF8.GetBytes(row.GetString(5)), faults);
        if (
            act is null
            || !Guid.TryParse(row.GetString(2), out var id)
            || !DateTimeOffset.TryParse(row.GetString(3), CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var at)
        )
        {
            var why = faults.Count > 0 ? faults.First().Sentence : "Its name or its time cannot be read.";
            throw new StoreUnusableException(
                $"Entry {sequence} in the journal of car {car} is not understood, so this car cannot be shown. "
                    + $"Perhaps a newer Plumbmark wrote it. {why}"
            );
        }

        return new KeptEntry(sequence, row.GetInt64(1), new JournalEntry(id, at, row.IsDBNull(4) ? null : row.GetString(4), act));
    }
}
