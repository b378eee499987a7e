using System.Buffers.Binary;
using System.Text;
using Microsoft.Data.Sqlite;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store;

/// <summary>Takes out of a damaged journal what can still be read, into a new file: rows from both ends of each table up to the damage, then car by car.</summary>
internal static class Salvage
{
    private const string EntryColumns = "car, sequence, together, id, at, by, act";

    private sealed record Row(long Car, long Sequence, long Together, string Id, string At, string? By, string Act);

    private sealed record CarRow(long Id, string Created, string? Binned);

    private sealed record PhotoRow(long Car, string Name, string Type, string Added, byte[] Bytes);

    /// <summary>Does it. The damaged file may be changed by SQLite while it is read: give it a copy.</summary>
    public static Salvaged Into(string damaged, string into)
    {
        PadToItsPages(damaged);
        using var from = JournalFile.Connect(damaged);
        // SQLite then goes on where it would refuse the whole file for one wrong line of the schema.
        from.Run("PRAGMA writable_schema = ON");
        from.Run("PRAGMA cell_size_check = ON");
        from.Run("PRAGMA trusted_schema = OFF");
        var cars = Cars(from);
        var entries = Entries(from, [.. cars.Keys]);
        var (photos, photosMissing) = Photos(from);
        using var to = JournalFile.Open(into, Migrations.BuiltIn);
        using var transaction = to.BeginTransaction();
        var (kept, missing, shown) = (0, 0, 0);
        foreach (var group in entries.Values.GroupBy(e => e.Car).OrderBy(g => g.Key))
        {
            List<Row> all = [.. group.OrderBy(e => e.Sequence)];
            var sound = all[..LongestThatGoTogether(all)];
            missing += (int)Math.Min(all[^1].Sequence - sound.Count, int.MaxValue / 2);
            if (sound.Count == 0)
            {
                continue;
            }

            Write(to, cars.GetValueOrDefault(group.Key) ?? new CarRow(group.Key, all[0].At, null), sound);
            (kept, shown) = (kept + sound.Count, shown + 1);
        }

        var keptPhotos = photos.Count(p => Write(to, p));
        transaction.Commit();
        return new Salvaged(shown, kept, keptPhotos, missing, photosMissing + photos.Count - keptPhotos);
    }

    /// <summary>A file that was cut short is refused as a whole for what its header says; with zeros where the rest was, its beginning can be read.</summary>
    private static void PadToItsPages(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        Span<byte> header = stackalloc byte[32];
        if (file.ReadAtLeast(header, header.Length, throwOnEndOfStream: false) < header.Length)
        {
            return;
        }

        // sqlite.org/fileformat2.html, section 1.3: page size at 16, pages at 28.
        long pageSize = BinaryPrimitives.ReadUInt16BigEndian(header[16..]);
        var size = (pageSize == 1 ? 65536 : pageSize) * BinaryPrimitives.ReadUInt32BigEndian(header[28..]);
        if (size > file.Length && size <= Math.Max(64 * file.Length, 64 * 1024 * 1024))
        {
            file.SetLength(size);
        }
    }

    private static Dictionary<long, CarRow> Cars(SqliteConnection from)
    {
        var cars = new Dictionary<long, CarRow>();
        foreach (var order in (string[])["", "DESC"])
        {
            Read(
                from,
                $"SELECT id, created_at, binned_at FROM car ORDER BY id {order}",
                r => cars.TryAdd(r.GetInt64(0), new CarRow(r.GetInt64(0), r.GetString(1), r.IsDBNull(2) ? null : r.GetString(2)))
            );
        }

        return cars;
    }

    private static Dictionary<(long, long), Row> Entries(SqliteConnection from, IReadOnlyList<long> cars)
    {
        var entries = new Dictionary<(long, long), Row>();
        void Add(SqliteDataReader r)
        {
            var row = new Row(
                r.GetInt64(0),
                r.GetInt64(1),
                r.GetInt64(2),
                r.GetString(3),
                r.GetString(4),
                r.IsDBNull(5) ? null : r.GetString(5),
                r.GetString(6)
            );
            entries.TryAdd((row.Car, row.Sequence), row);
        }

        var isWhole = Read(from, $"SELECT {EntryColumns} FROM entry ORDER BY car, sequence", Add);
        if (!isWhole)
        {
            Read(from, $"SELECT {EntryColumns} FROM entry ORDER BY car DESC, sequence DESC", Add);
            foreach (var (car, order) in cars.SelectMany(c => new[] { (c, ""), (c, "DESC") }))
            {
                Read(from, $"SELECT {EntryColumns} FROM entry WHERE car = $car ORDER BY sequence {order}", Add, ("$car", car));
            }
        }

        return entries;
    }

    /// <summary>A picture is named after its content: one that is no longer what it was is told by that.</summary>
    private static (List<PhotoRow> Sound, int Missing) Photos(SqliteConnection from)
    {
        var rows = new HashSet<long>();
        foreach (var order in (string[])["", "DESC"])
        {
            Read(from, $"SELECT rowid FROM photo NOT INDEXED ORDER BY rowid {order}", r => rows.Add(r.GetInt64(0)));
        }

        var photos = new List<PhotoRow>();
        foreach (var row in rows.Order())
        {
            Read(
                from,
                "SELECT car, name, content_type, added_at, bytes FROM photo NOT INDEXED WHERE rowid = $row",
                r => photos.Add(new PhotoRow(r.GetInt64(0), r.GetString(1), r.GetString(2), r.GetString(3), r.GetFieldValue<byte[]>(4))),
                ("$row", row)
            );
        }

        var sound = photos.Where(p => p.Name == Journals.PhotoName(p.Bytes)).ToList();
        return (sound, rows.Count - sound.Count);
    }

    /// <summary>How many of a car's entries, from the first, are understood and make a car that can be written as a file.</summary>
    private static int LongestThatGoTogether(List<Row> all)
    {
        var read = new List<KeptEntry>();
        foreach (var row in all)
        {
            // What stands behind a gap may rest on what is missing; a daily copy fills the gap, and nothing is taken from the damaged file.
            if (row.Sequence != read.Count + 1)
            {
                break;
            }

            try
            {
                read.Add(EntryRow.Of(row.Sequence, row.Together, row.Id, row.At, row.By, row.Act, row.Car));
            }
            catch (StoreUnusableException)
            {
                break;
            }
        }

        if (GoTogether(read))
        {
            return read.Count;
        }

        var (fits, not) = (0, read.Count);
        while (not - fits > 1)
        {
            var middle = (fits + not) / 2;
            (fits, not) = GoTogether(read[..middle]) ? (middle, not) : (fits, middle);
        }

        return fits;
    }

    private static bool GoTogether(List<KeptEntry> entries) =>
        CarFileReader.Read(CarFileWriter.Write(Fold.Of(entries.Select(e => e.Entry)))).Match(_ => true, _ => false);

    /// <summary>Reads rows until the end or the damage; whether it was the end.</summary>
    private static bool Read(
        SqliteConnection from,
        string sql,
        Action<SqliteDataReader> row,
        params ReadOnlySpan<(string Name, object? Value)> values
    )
    {
        try
        {
            from.Each(sql, row, values);
            return true;
        }
        catch (Exception e) when (e is SqliteException or InvalidCastException or InvalidOperationException or DecoderFallbackException)
        {
            return false;
        }
    }

    private static void Write(SqliteConnection to, CarRow car, List<Row> entries)
    {
        to.Run(
            "INSERT INTO car (id, created_at, binned_at) VALUES ($id, $created, $binned)",
            ("$id", car.Id),
            ("$created", car.Created),
            ("$binned", car.Binned)
        );
        foreach (var e in entries)
        {
            to.Run(
                $"INSERT OR IGNORE INTO entry ({EntryColumns}) VALUES ($car, $sequence, $together, $id, $at, $by, $act)",
                ("$car", e.Car),
                ("$sequence", e.Sequence),
                ("$together", e.Together),
                ("$id", e.Id),
                ("$at", e.At),
                ("$by", e.By),
                ("$act", e.Act)
            );
        }
    }

    private static bool Write(SqliteConnection to, PhotoRow photo) =>
        to.Run(
            "INSERT OR IGNORE INTO photo (car, name, content_type, added_at, bytes) SELECT $car, $name, $type, $added, $bytes "
                + "WHERE EXISTS (SELECT 1 FROM car WHERE id = $car)",
            ("$car", photo.Car),
            ("$name", photo.Name),
            ("$type", photo.Type),
            ("$added", photo.Added),
            ("$bytes", photo.Bytes)
        ) == 1;
}
