using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Journal;
using Plumbmark.Reliability.Disk;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>A journal in a folder where nothing can be written is shown, and says why nothing can be entered.</summary>
[Collection(nameof(FaultyDisk))]
public sealed class ReadOnlyFaults
{
    [Fact]
    public void AFolderThatCannotBeWritten_IsOpenForReading()
    {
        using var folder = new TemporaryFolder();
        using (var journals = Journals.Open(folder.Journal))
        {
            journals.Add(DemoCar.File());
        }

        var before = File.ReadAllBytes(folder.Journal);
        // File rights do not stop the superuser, whom tests may run as; this does.
        using (new FaultyDisk(DiskFault.Fails, at: 0, seed: 0) { ReadOnlyFolder = folder.Path })
        {
            Assert.Equal(StoreTrouble.NotWritable, Assert.Throws<StoreUnusableException>(() => Journals.Open(folder.Journal)).Trouble);
            using var journals = Journals.OpenOrRead(folder.Journal);
            Assert.Contains("open for reading only", journals.ReadOnlyBecause, StringComparison.Ordinal);
            Assert.NotEmpty(journals.Cars()[0].Entries);
            journals.FillWhenNew(() => throw new InvalidOperationException("It is not new."));
            Assert.Throws<StoreUnusableException>(() => journals.Append(1, Guid.NewGuid(), null, _ => [new Act.ToolRemoved("tape")]));
            Assert.Null(DailyCopies.Keep(journals, TimeProvider.System));
        }

        Assert.Equal(before, File.ReadAllBytes(folder.Journal));
    }

    [Fact]
    public void AFolderThatCannotBeWritten_WithoutAJournal_IsToldInWords()
    {
        using var folder = new TemporaryFolder();
        using var disk = new FaultyDisk(DiskFault.Fails, at: 0, seed: 0) { ReadOnlyFolder = folder.Path };
        var told = Assert.Throws<StoreUnusableException>(() => Journals.OpenOrRead(folder.Journal));
        Assert.Contains("cannot be opened", told.Message, StringComparison.Ordinal);
    }
}
