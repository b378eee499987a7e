using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

public sealed partial class Journals
{
    private sealed record RawEntry(long Sequence, long Together, string Id, string At, string? By, string Act);

    /// <summary>Everything on one file: every car, the binned ones too, with its whole journal and its pictures. It is a journal file itself.</summary>
    public byte[] Backup()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-backup-");
        try
        {
            var path = System.IO.Path.Combine(folder.FullName, "backup.db");
            // A copy in one moment of time, whatever another window is doing; without the free pages.
            Do(() => _connection.Run("VACUUM INTO $path", ("$path", path)));
            return File.ReadAllBytes(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>
    /// Brings a backup back: all of it or nothing. Nothing here is replaced or removed. A car that is here already gets the entries that the backup has
    /// beyond it; one that has gone another way since comes in as a car of its own.
    /// </summary>
    /// <exception cref="StoreUnusableException">The bytes are no backup of this program, or of a newer version of it.</exception>
    public Restored Restore(byte[] backup)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-restore-");
        try
        {
            var path = System.IO.Path.Combine(folder.FullName, "backup.db");
            File.WriteAllBytes(path, backup);
            return RestoreFrom(path);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private Restored RestoreFrom(string path)
    {
        try
        {
            if (new FileInfo(path).Length == 0)
            {
                throw new StoreUnusableException("The backup is empty. Nothing was changed.");
            }

            KnownSchema.RefuseOther(path, Migrations.BuiltIn);
            using var other = Open(path, _clock);
            // Read once as cars: a backup with an entry that cannot be read is refused before anything is written.
            _ = other.Cars().Count + other.Bin().Count;
            return InTransaction(() => Take(other._connection));
        }
        catch (StoreUnusableException e)
        {
            throw new StoreUnusableException(e.Message.Replace($"\"{path}\"", "in the backup", StringComparison.Ordinal), e);
        }
    }

    private Restored Take(SqliteConnection other)
    {
        var (added, extended, there) = (0, 0, 0);
        var cars = other.All(
            "SELECT id, created_at, binned_at FROM car ORDER BY id",
            r => (Id: r.GetInt64(0), Created: r.GetString(1), Binned: r.IsDBNull(2) ? null : r.GetString(2))
        );
        foreach (var car in cars)
        {
            var theirs = RawEntries(other, car.Id);
            var (id, ours) = Twin(theirs);
            if (id is null)
            {
                id = (long)
                    _connection.One(
                        "INSERT INTO car (created_at, binned_at) VALUES ($created, $binned) RETURNING id",
                        ("$created", car.Created),
                        ("$binned", car.Binned)
                    )!;
                added++;
            }
            else if (theirs.Count > ours)
            {
                extended++;
            }
            else
            {
                there++;
            }

            foreach (var entry in theirs.Skip(ours))
            {
                Insert(id.Value, entry);
            }

            TakePhotos(other, car.Id, id.Value);
        }

        _cache.Clear();
        _mayBeBehind = true;
        return new Restored(added, extended, there);
    }

    /// <summary>The car here of whose journal one is the beginning of the other, with how many entries it has; none when there is no such car.</summary>
    private (long? Id, int Entries) Twin(List<RawEntry> theirs)
    {
        if (theirs.Count == 0)
        {
            return (null, 0);
        }

        var candidates = _connection.All(
            "SELECT car FROM entry WHERE sequence = 1 AND id = $id ORDER BY car",
            r => r.GetInt64(0),
            ("$id", theirs[0].Id)
        );
        foreach (var candidate in candidates)
        {
            var ours = RawEntries(_connection, candidate);
            if (ours.Zip(theirs).All(pair => pair.First.Id == pair.Second.Id))
            {
                return (candidate, ours.Count);
            }
        }

        return (null, 0);
    }

    private static List<RawEntry> RawEntries(SqliteConnection connection, long car) =>
        connection.All(
            "SELECT sequence, together, id, at, by, act FROM entry WHERE car = $car ORDER BY sequence",
            r => new RawEntry(
                r.GetInt64(0),
                r.GetInt64(1),
                r.GetString(2),
                r.GetString(3),
                r.IsDBNull(4) ? null : r.GetString(4),
                r.GetString(5)
            ),
            ("$car", car)
        );

    private void Insert(long car, RawEntry entry) =>
        _connection.Run(
            "INSERT INTO entry (car, sequence, together, id, at, by, act) VALUES ($car, $sequence, $together, $id, $at, $by, $act)",
            ("$car", car),
            ("$sequence", entry.Sequence),
            ("$together", entry.Together),
            ("$id", entry.Id),
            ("$at", entry.At),
            ("$by", entry.By),
            ("$act", entry.Act)
        );

    private void TakePhotos(SqliteConnection other, long from, long to)
    {
        var photos = other.All(
            "SELECT name, content_type, added_at, bytes FROM photo WHERE car = $car",
            r => (Name: r.GetString(0), Type: r.GetString(1), Added: r.GetString(2), Bytes: r.GetFieldValue<byte[]>(3)),
            ("$car", from)
        );
        foreach (var photo in photos)
        {
            _connection.Run(
                "INSERT INTO photo (car, name, content_type, added_at, bytes) VALUES ($car, $name, $type, $added, $bytes) ON CONFLICT DO NOTHING",
                ("$car", to),
                ("$name", photo.Name),
                ("$type", photo.Type),
                ("$added", photo.Added),
                ("$bytes", photo.Bytes)
            );
        }
    }
}
