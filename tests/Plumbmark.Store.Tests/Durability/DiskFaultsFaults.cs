using Microsoft.Data.Sqlite;
using Plumbmark.Reliability.Campaigns;
using Plumbmark.Reliability.Disk;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>
/// Each step on the disk fails in turn; the file opens and holds what was acknowledged. bench/reliability does every step with many seeds; here a part of them.
/// The way of testing is SQLite's own: "How SQLite Is Tested", sqlite.org/testing.html, sections 3.2 and 3.3.
/// </summary>
[Collection(nameof(FaultyDisk))]
public sealed class DiskFaultsFaults
{
    [Theory]
    [InlineData(DiskFault.Fails)]
    [InlineData(DiskFault.FullOnce)]
    [InlineData(DiskFault.FullFromHere)]
    [InlineData(DiskFault.Unplugged)]
    [InlineData(DiskFault.PowerCut)]
    [InlineData(DiskFault.Killed)]
    public void AnEvening_WithOneFaultAtAStep_LosesNothingAcknowledged(DiskFault fault)
    {
        var outcome = DiskFaults.Run(fault, every: 5, seed: 20260);
        Assert.Empty(outcome.Findings);
        Assert.True(outcome.Injected > 25, $"Only {outcome.Injected} faults struck.");
        Assert.True(outcome.Told > 10, "The faults did not reach the program.");
    }

    // Found by the bench: the disk fills up while the first page is carried from the log to the file. The file then has its id in the log alone.
    [Fact]
    public void FirstPageTorn_WhileTheLogHoldsIt_IsStillOurs()
    {
        var broken = Enumerable.Range(0, 6).SelectMany(i => DiskFaults.RunOne(DiskFault.FullFromHere, 48, 20308 + i));
        Assert.Empty(broken);
    }

    // The campaign would be worth nothing if it could not see a loss: this is one.
    [Fact]
    public void PowerCut_WithoutSyncs_LosesWhatWasWritten()
    {
        using var folder = new TemporaryFolder();
        using var left = new TemporaryFolder();
        using (var disk = new FaultyDisk(DiskFault.PowerCut, at: 60, seed: 1))
        {
            using var connection = new SqliteConnection($"Data Source={folder.Journal};Pooling=False");
            connection.Open();
            connection.Run("PRAGMA synchronous = OFF");
            connection.Run("CREATE TABLE t (x INTEGER)");
            Assert.Throws<SqliteException>(() =>
            {
                for (var i = 0; i < 1000; i++)
                {
                    connection.Run("INSERT INTO t VALUES (1)");
                }
            });
            disk.SaveWhatIsLeft(left.Path);
        }

        using var found = new SqliteConnection($"Data Source={left.Journal};Pooling=False");
        found.Open();
        Assert.Throws<SqliteException>(() => found.One("SELECT count(*) FROM t"));
    }
}
