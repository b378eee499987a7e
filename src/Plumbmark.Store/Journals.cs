using Microsoft.Data.Sqlite;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store;

/// <summary>Every car on this machine with its journal, in one file that several windows and verbs may use at once.</summary>
/// <remarks>
/// One connection behind one lock: an act takes a few milliseconds, most of them the disk's. Other processes are kept apart by SQLite's own
/// locks. When a method returns, what it did is on the disk.
/// </remarks>
public sealed partial class Journals : IDisposable
{
    private readonly SqliteConnection _connection;
    private readonly TimeProvider _clock;
    private readonly Lock _lock = new();
    private readonly CarCache _cache = new();

    private Journals(SqliteConnection connection, TimeProvider clock)
    {
        _connection = connection;
        _clock = clock;
    }

    /// <summary>Opens the journals in a file; the file and its folder are made when missing.</summary>
    /// <exception cref="StoreUnusableException">The file cannot be used as it is; the message says why.</exception>
    public static Journals Open(string path, TimeProvider? clock = null) =>
        new(JournalFile.Open(path, Migrations.BuiltIn), clock ?? TimeProvider.System) { Path = System.IO.Path.GetFullPath(path) };

    /// <summary>The cars that are not in the bin, in the order they came.</summary>
    public IReadOnlyList<OpenCar> Cars() => Listed("SELECT id FROM car WHERE binned_at IS NULL ORDER BY id");

    /// <summary>The cars in the bin, in the order they came. Their journals are kept.</summary>
    public IReadOnlyList<OpenCar> Bin() => Listed("SELECT id FROM car WHERE binned_at IS NOT NULL ORDER BY id");

    /// <summary>The car of that number as its journal stands now, in the bin or not; null when there never was one.</summary>
    public OpenCar? Car(long id) => Do(() => Read(id));

    /// <summary>Puts a car in: all of it or nothing.</summary>
    /// <param name="file">The car, as a car file has it.</param>
    /// <param name="entry">Name of what is sent, when it could be sent twice: then it is kept once. Null for one that cannot.</param>
    /// <param name="by">The device or person; null when not told.</param>
    public OpenCar Add(CarFile file, Guid? entry = null, string? by = null) =>
        InTransaction(() =>
        {
            const string BegunWith = "SELECT car.id FROM car JOIN entry ON entry.car = car.id AND entry.sequence = 1 WHERE entry.id = $id";
            if (entry is { } name && _connection.One(BegunWith, ("$id", name.ToString("D"))) is long known)
            {
                return Read(known)!;
            }

            var id = NewCar();
            WriteAll(id, file, entry, by);
            return Read(id)!;
        });

    /// <summary>Puts cars in when no car has ever been here; otherwise does nothing, so that what was binned stays binned.</summary>
    public void FillWhenNew(Func<IEnumerable<CarFile>> cars)
    {
        var isNew = Do(() => _connection.One("SELECT 1 FROM car LIMIT 1") is null);
        if (!isNew || ReadOnlyBecause is not null)
        {
            return;
        }

        var files = cars().ToList();
        InTransaction(() =>
        {
            if (_connection.One("SELECT 1 FROM car LIMIT 1") is not null)
            {
                return false; // another instance was quicker
            }

            foreach (var file in files)
            {
                WriteAll(NewCar(), file, entry: null, by: null);
            }

            return true;
        });
    }

    /// <summary>Writes the acts that someone decides on seeing the car as it stands: all of them in one transaction, or none.</summary>
    /// <param name="id">The car.</param>
    /// <param name="entry">Name of what is sent; the same name sent again is kept once.</param>
    /// <param name="by">The device or person; null when not told.</param>
    /// <param name="acts">The acts, decided while nobody else can write.</param>
    public Appended Append(long id, Guid entry, string? by, Func<OpenCar, IReadOnlyList<Act>> acts)
    {
        var now = _clock.GetUtcNow();
        return Append(
            id,
            car =>
                car.Entries.Any(e => e.Entry.Id == entry)
                    ? null
                    : [.. acts(car).Select((act, i) => new JournalEntry(i == 0 ? entry : Guid.NewGuid(), now, by, act))]
        );
    }

    /// <summary>Writes entries that have names of their own already, such as those a phone kept while it had no connection.</summary>
    public Appended Append(long id, IReadOnlyList<JournalEntry> entries) =>
        Append(
            id,
            car =>
            {
                var known = car.Entries.Select(e => e.Entry.Id).ToHashSet();
                var fresh = entries.Where(e => known.Add(e.Id)).ToList();
                return fresh.Count == 0 ? null : fresh;
            }
        );

    private Appended Append(long id, Func<OpenCar, IReadOnlyList<JournalEntry>?> decide) =>
        InTransaction<Appended>(() =>
        {
            if (Read(id) is not { } car)
            {
                return new Appended.NoSuchCar();
            }

            if (decide(car) is not { } fresh)
            {
                return new Appended.KeptBefore(car);
            }

            var after = car.After(fresh.Select((e, i) => new KeptEntry(car.Sequence + 1 + i, car.Sequence + 1, e)));
            return CarFileReader
                .Read(CarFileWriter.Write(after.File))
                .Match<Appended>(
                    _ =>
                    {
                        Write(id, car.Sequence, after.File.Units, fresh);
                        _cache.Put(after);
                        PutGlance(after);
                        return new Appended.Kept(after, [.. after.Entries.Skip(car.Entries.Count)]);
                    },
                    faults => new Appended.Refused(faults)
                );
        });

    /// <summary>Puts a car in the bin. Nothing of it is lost.</summary>
    public bool PutInBin(long id) =>
        Changed("UPDATE car SET binned_at = $now WHERE id = $id AND binned_at IS NULL", ("$id", id), ("$now", Text(_clock.GetUtcNow())));

    /// <summary>Takes a car out of the bin.</summary>
    public bool TakeFromBin(long id) => Changed("UPDATE car SET binned_at = NULL WHERE id = $id AND binned_at IS NOT NULL", ("$id", id));

    /// <inheritdoc/>
    public void Dispose()
    {
        _connection.Dispose();
        if (_folderOfCopy is not null)
        {
            Directory.Delete(_folderOfCopy, recursive: true);
        }
    }

    private static string Text(DateTimeOffset at) => at.ToString("O");

    private List<OpenCar> Listed(string sql) => Do(() => _connection.All(sql, row => row.GetInt64(0)).Select(id => Read(id)!).ToList());

    private bool Changed(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var list = values.ToArray();
        return InTransaction(() => _connection.Run(sql, list) == 1);
    }

    private long NewCar() =>
        (long)_connection.One("INSERT INTO car (created_at) VALUES ($now) RETURNING id", ("$now", Text(_clock.GetUtcNow())))!;

    private void WriteAll(long car, CarFile file, Guid? entry, string? by)
    {
        var now = _clock.GetUtcNow();
        Write(
            car,
            0,
            file.Units,
            Fold.ActsOf(file).Select((act, i) => new JournalEntry(i == 0 && entry is { } name ? name : Guid.NewGuid(), now, by, act))
        );
    }

    private void Write(long car, long last, LengthUnit units, IEnumerable<JournalEntry> entries)
    {
        const string Insert =
            "INSERT INTO entry (car, sequence, together, id, at, by, act) VALUES ($car, $sequence, $together, $id, $at, $by, $act)";
        var sequence = last;
        _mayBeBehind = true;
        foreach (var entry in entries)
        {
            _connection.Run(
                Insert,
                ("$car", car),
                ("$sequence", ++sequence),
                ("$together", last + 1),
                ("$id", entry.Id.ToString("D")),
                ("$at", Text(entry.At)),
                ("$by", entry.By),
                ("$act", System.Text.Encoding.UTF8.GetString(ActJson.Write(entry.Act, units)))
            );
        }
    }

    /// <summary>The car from what was read before and the entries that have come since, from here or from another process.</summary>
    private OpenCar? Read(long id)
    {
        if (
            _connection
                .All("SELECT binned_at IS NOT NULL FROM car WHERE id = $id", row => row.GetBoolean(0), ("$id", id))
                .Select(b => (bool?)b)
                .FirstOrDefault()
            is not { } isBinned
        )
        {
            return null;
        }

        var known = _cache.Get(id);
        var since = EntriesAfter(id, known?.Sequence ?? 0);
        if (known is not null && since.Count == 0)
        {
            return known.IsBinned == isBinned ? known : _cache.Put(known with { IsBinned = isBinned });
        }

        return _cache.Put(((known ?? OpenCar.Empty(id)) with { IsBinned = isBinned }).After(since));
    }

    private List<KeptEntry> EntriesAfter(long car, long sequence)
    {
        var last = sequence;
        return _connection.All(
            "SELECT sequence, together, id, at, by, act, car FROM entry WHERE car = $car AND sequence > $sequence ORDER BY sequence",
            row =>
            {
                // Places are given without gaps, so that a row which stands where another belongs is told by its place.
                if (row.GetInt64(0) != ++last || row.GetInt64(6) != car)
                {
                    throw new StoreUnusableException(JournalFile.DamagedSentence(Path), StoreTrouble.Damaged);
                }

                return EntryRow.Read(row, car);
            },
            ("$car", car),
            ("$sequence", sequence)
        );
    }

    private T InTransaction<T>(Func<T> work) =>
        ReadOnlyBecause is { } why
            ? throw new StoreUnusableException($"Nothing was kept. {why}", StoreTrouble.NotWritable)
            : WriteAnyway(work);

    /// <summary>For what is only worked out: on a file opened for reading that is a copy, and may be written.</summary>
    private T WriteAnyway<T>(Func<T> work) =>
        Do(() =>
        {
            using var transaction = _connection.BeginTransaction(deferred: false);
            try
            {
                var result = work();
                transaction.Commit();
                return result;
            }
            catch
            {
                _cache.Clear(); // it may hold entries that are being rolled back
                throw;
            }
        });

    private T Do<T>(Func<T> work)
    {
        lock (_lock)
        {
            try
            {
                return work();
            }
            catch (SqliteException e)
            {
                throw JournalFile.Told(_connection.DataSource, e);
            }
        }
    }
}
