using System.Diagnostics;
using Microsoft.Data.Sqlite;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Store.Tests;

/// <summary>A backup that somebody has built to do something when it is read: refused in a sentence, before anything in it is asked for.</summary>
public sealed class StrangeBackupFaults
{
    private const string Endless = "WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n)";

    [Theory]
    [InlineData(
        "ALTER TABLE entry RENAME TO kept; CREATE VIEW entry AS "
            + Endless
            + " SELECT 1 AS car, x AS sequence, x AS together, 'a' AS id, 'b' AS at, NULL AS by, 'c' AS act FROM n"
    )]
    [InlineData(
        "ALTER TABLE car RENAME TO kept; CREATE VIEW car AS " + Endless + " SELECT x AS id, 'now' AS created_at, NULL AS binned_at FROM n"
    )]
    [InlineData(
        "ALTER TABLE photo RENAME TO kept; CREATE VIEW photo AS SELECT 1 AS car, 'x' AS name, 'y' AS content_type, 'z' AS added_at, randomblob(1000000000) AS bytes"
    )]
    [InlineData("CREATE VIEW more AS SELECT 1")]
    [InlineData("CREATE TABLE more (x)")]
    [InlineData("CREATE TRIGGER more AFTER INSERT ON entry BEGIN DELETE FROM photo; END")]
    [InlineData("CREATE INDEX more ON entry (printf('%.*c', 100000000, 'x'))")]
    [InlineData("ALTER TABLE entry ADD COLUMN more TEXT AS (printf('%.*c', 100000000, 'x'))")]
    [InlineData("CREATE VIRTUAL TABLE more USING fts5(x)")]
    public void Backup_WithPartsOfAnotherHand_IsRefused_AtOnce_AndNothingIsChanged(string sql)
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        from.Add(CarFile.Named("One", LengthUnit.Inch));
        using var to = Journals.Open(there.Journal);
        to.Add(CarFile.Named("Mine", LengthUnit.Inch));
        var backup = Changed(from.Backup(), sql, there);
        var began = Stopwatch.GetTimestamp();
        var told = Assert.Throws<StoreUnusableException>(() => to.Restore(backup));
        Assert.Contains("parts that Plumbmark does not make", told.Message, StringComparison.Ordinal);
        Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(5), "It was asked for what never ends.");
        Assert.Equal("Mine", Assert.Single(to.Cars()).File.Car.Name);
    }

    [Fact]
    public void Backup_ThatSqliteKeptNotesFor_IsStillTaken()
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        from.Add(CarFile.Named("One", LengthUnit.Inch));
        using var to = Journals.Open(there.Journal);
        Assert.Equal(new Restored(1, 0, 0), to.Restore(Changed(from.Backup(), "ANALYZE", there)));
    }

    private static byte[] Changed(byte[] backup, string sql, TemporaryFolder folder)
    {
        var path = Path.Combine(Path.GetDirectoryName(folder.Journal)!, "changed.db");
        File.WriteAllBytes(path, backup);
        using (var connection = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }

        return File.ReadAllBytes(path);
    }
}
