using Microsoft.Data.Sqlite;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Store.Tests;

/// <summary>Files that are not as they should be: each is told in words, and left as it was.</summary>
public sealed class JournalFileFaults : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Open_Garbage_IsRefusedAndUntouched()
    {
        File.WriteAllText(_folder.Journal, "A letter to the bank, which must not be harmed.");
        RefusedUntouched("is not a Plumbmark journal");
    }

    [Fact]
    public void Open_HeaderThenGarbage_IsRefusedAndUntouched()
    {
        File.WriteAllBytes(_folder.Journal, [.. "SQLite format 3\0"u8, .. new byte[5000]]);
        RefusedUntouched("not");
    }

    [Fact]
    public void Open_AnotherProgramsDatabase_IsRefusedAndUntouched()
    {
        RunSql("CREATE TABLE recipes (name TEXT)");
        RefusedUntouched("database of another program");
    }

    [Fact]
    public void Open_NewerSchema_IsRefusedAndUntouched()
    {
        Journals.Open(_folder.Journal).Dispose();
        RunSql("PRAGMA user_version = 99");
        RefusedUntouched("newer Plumbmark");
    }

    [Fact]
    public void Open_AFolder_IsRefused()
    {
        Directory.CreateDirectory(_folder.Journal);
        Assert.Throws<StoreUnusableException>(() => Journals.Open(_folder.Journal));
    }

    [Fact]
    public void Open_EmptyFile_IsANewJournal()
    {
        File.WriteAllBytes(_folder.Journal, []);
        using var journals = Journals.Open(_folder.Journal);
        Assert.Empty(journals.Cars());
    }

    [Fact]
    public void Open_ReadOnlyFolder_IsToldInWords()
    {
        // A folder that is read-only even to the owner of everything, whom file modes do not stop.
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Needs /proc.");
        var refused = Assert.Throws<StoreUnusableException>(() => Journals.Open("/proc/self/plumbmark.db"));
        Assert.Contains("cannot be", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_FolderWhereNothingCanBeMade_IsToldInWords()
    {
        var inAFile = Path.Combine(_folder.Path, "file");
        File.WriteAllText(inAFile, "");
        var refused = Assert.Throws<StoreUnusableException>(() => Journals.Open(Path.Combine(inAFile, "plumbmark.db")));
        Assert.Contains("cannot be opened", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Entries_CannotBeChangedOrRemoved_EvenByHand()
    {
        using (var journals = Journals.Open(_folder.Journal))
        {
            journals.Add(CarFile.Named("One", LengthUnit.Inch));
        }

        Assert.Contains(
            "never changed",
            Assert.Throws<SqliteException>(() => RunSql("UPDATE entry SET act = '{}'")).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "never removed",
            Assert.Throws<SqliteException>(() => RunSql("DELETE FROM entry")).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Read_AnActOfANewerProgram_IsToldInWords()
    {
        using (var journals = Journals.Open(_folder.Journal))
        {
            journals.Add(CarFile.Named("One", LengthUnit.Inch));
        }

        RunSql(
            "INSERT INTO entry VALUES (1, 2, 2, '00000000-0000-0000-0000-000000000002', '2030-01-01T00:00:00Z', NULL, '{\"act\":\"teleported\",\"units\":\"in\"}')"
        );
        using var again = Journals.Open(_folder.Journal);
        var told = Assert.Throws<StoreUnusableException>(() => again.Car(1));
        Assert.Contains("newer Plumbmark", told.Message, StringComparison.Ordinal);
    }

    // The write-ahead log is copied and cut at every point a power cut could leave it. What was acknowledged and synced before the cut
    // point is kept; the file always opens; an entry is never half there.
    [Fact]
    public void Open_WriteAheadLogCutAnywhere_GivesAPrefixOfTheJournal()
    {
        var log = _folder.Journal + "-wal";
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(CarFile.Named("One", LengthUnit.Inch));
        for (var i = 0; i < 12; i++)
        {
            journals.Append(
                car.Id,
                Guid.NewGuid(),
                null,
                _ => [new Inspection.Journal.Act.CarDescribed(new CarIdentity($"{i}"), LengthUnit.Inch)]
            );
        }

        var whole = ReadShared(log);
        var seen = new List<int>();
        for (var cut = 0; cut <= whole.Length; cut += 1021)
        {
            var copy = Path.Combine(_folder.Path, $"cut-{cut}.db");
            File.WriteAllBytes(copy, ReadShared(_folder.Journal));
            File.WriteAllBytes(copy + "-wal", whole[..cut]);
            using var cutJournals = Journals.Open(copy);
            var entries = cutJournals.Car(car.Id)?.Entries ?? [];
            Assert.Equal(Enumerable.Range(1, entries.Count).Select(n => (long)n), entries.Select(e => e.Sequence));
            seen.Add(entries.Count);
        }

        Assert.Equal(seen.Order(), seen); // more of the log never shows less
        Assert.True(seen.Distinct().Count() > 3, "The cuts fell between commits.");
    }

    [Fact]
    public void Migration_OfAnOlderFile_KeepsACopyFirst()
    {
        string[] first = [Migrations.BuiltIn[0]];
        using (var connection = JournalFile.Open(_folder.Journal, first))
        {
            connection.Run("INSERT INTO car (created_at) VALUES ('2026-01-01T00:00:00Z')");
        }

        string[] second = [first[0], "ALTER TABLE car ADD COLUMN colour TEXT"];
        using (var connection = JournalFile.Open(_folder.Journal, second))
        {
            Assert.Equal(2, Migrations.VersionOf(connection));
            Assert.Equal(1L, connection.One("SELECT count(*) FROM car"));
        }

        using var copy = JournalFile.Open(_folder.Journal + ".before-schema-2", first);
        Assert.Equal(1L, copy.One("SELECT count(*) FROM car"));
    }

    [Fact]
    public void Migration_ThatFails_LeavesTheFileAtItsVersion()
    {
        string[] first = [Migrations.BuiltIn[0]];
        JournalFile.Open(_folder.Journal, first).Dispose();
        string[] broken = [first[0], "CREATE TABLE half (x INTEGER) STRICT; CREATE TABLE entry (x INTEGER)"];
        Assert.Throws<StoreUnusableException>(() => JournalFile.Open(_folder.Journal, broken));
        using var again = JournalFile.Open(_folder.Journal, first);
        Assert.Null(again.One("SELECT 1 FROM sqlite_schema WHERE name = 'half'"));
    }

    [Fact]
    public void Connection_SyncsEveryCommit()
    {
        using var connection = JournalFile.Open(_folder.Journal, Migrations.BuiltIn);
        Assert.Equal("wal", connection.One("PRAGMA journal_mode"));
        Assert.Equal(2L, connection.One("PRAGMA synchronous")); // 2 is FULL
        Assert.Equal(1L, connection.One("PRAGMA foreign_keys"));
    }

    private void RefusedUntouched(string told)
    {
        var before = File.ReadAllBytes(_folder.Journal);
        var files = Directory.GetFiles(_folder.Path).Length;
        var refused = Assert.Throws<StoreUnusableException>(() => Journals.Open(_folder.Journal));
        Assert.Contains(told, refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_folder.Journal));
        Assert.Equal(files, Directory.GetFiles(_folder.Path).Length);
    }

    private void RunSql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={_folder.Journal};Pooling=False");
        connection.Open();
        connection.Run(sql);
    }

    private static byte[] ReadShared(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
