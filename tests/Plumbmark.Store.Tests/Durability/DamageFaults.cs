using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Journal;
using Plumbmark.Reliability.Campaigns;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>A damaged file is opened for reading only where it can, says what was saved, and is left as it was.</summary>
public sealed class DamageFaults
{
    [Theory]
    [InlineData("a page overwritten")]
    [InlineData("a page of zeros")]
    [InlineData("cut short")]
    [InlineData("one bit turned")]
    [InlineData("pages exchanged")]
    public void ADamagedFile_IsNeverAnUnhandledError_NorShowsWhatNeverWas(string way)
    {
        var outcome = Damage.Run(way, files: 10, seed: 3);
        Assert.Empty(outcome.Findings);
        Assert.True(outcome.ReadOnly + outcome.Refused > 0, "No damage was noticed: the test did not test.");
    }

    [Fact]
    public void ADamagedFile_SaysWhatWasSaved_TakesNothing_AndIsNotTouched()
    {
        using var folder = new TemporaryFolder();
        using var elsewhere = new TemporaryFolder();
        int entries;
        using (var journals = Journals.Open(folder.Journal))
        {
            journals.Add(DemoCar.File());
            entries = journals.Add(DemoCar.File()).Entries.Count;
            DailyCopies.Keep(journals, TimeProvider.System);
        }

        var bytes = File.ReadAllBytes(folder.Journal);
        // The last page holds the end of the second car's journal.
        bytes.AsSpan(bytes.Length - 4096).Fill(0xA5);
        File.WriteAllBytes(folder.Journal, bytes);
        using (var journals = Journals.OpenOrRead(folder.Journal))
        {
            Assert.Matches("is damaged. 2 cars with [0-9]+ entries and 0 pictures can be read", journals.ReadOnlyBecause);
            Assert.Contains("-daily", journals.ReadOnlyBecause, StringComparison.Ordinal);
            Assert.Equal(entries, journals.Car(1)!.Entries.Count);
            var refused = Assert.Throws<StoreUnusableException>(() =>
                journals.Append(1, Guid.NewGuid(), null, _ => [new Act.ToolRemoved("tape")])
            );
            Assert.StartsWith("Nothing was kept.", refused.Message, StringComparison.Ordinal);
            // What was saved and the daily copy together are everything, each once.
            using var fresh = Journals.Open(elsewhere.Journal);
            fresh.Restore(journals.Backup());
            fresh.Restore(File.ReadAllBytes(DailyCopies.Of(folder.Journal)[0].Path));
            Assert.Equal([entries, entries], fresh.Cars().Select(c => c.Entries.Count));
        }

        Assert.Equal(bytes, File.ReadAllBytes(folder.Journal));
    }
}
