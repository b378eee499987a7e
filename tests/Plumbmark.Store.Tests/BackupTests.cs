using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Testing;

namespace Plumbmark.Store.Tests;

/// <summary>A backup holds everything, comes back whole, and never takes anything away.</summary>
public sealed class BackupTests
{
    private static List<(bool, byte[], List<KeptEntry>)> Everything(Journals journals) =>
        [.. journals.Cars().Concat(journals.Bin()).Select(c => (c.IsBinned, CarFileWriter.Write(c.File), c.Entries.ToList()))];

    private static void AssertSame(Journals expected, Journals actual)
    {
        var (one, two) = (Everything(expected), Everything(actual));
        Assert.Equal(one.Count, two.Count);
        for (var i = 0; i < one.Count; i++)
        {
            Assert.Equal(one[i].Item1, two[i].Item1);
            Assert.Equal(one[i].Item2, two[i].Item2);
            Assert.Equal(
                one[i].Item3.Select(e => (e.Sequence, e.Together, e.Entry.Id, e.Entry.At, e.Entry.By)),
                two[i].Item3.Select(e => (e.Sequence, e.Together, e.Entry.Id, e.Entry.At, e.Entry.By))
            );
        }
    }

    [Fact]
    public void AnyShed_BackedUpAndRestored_IsTheSameShed() =>
        CarFiles
            .Any.List[1, 3]
            .Sample(
                files =>
                {
                    using var here = new TemporaryFolder();
                    using var there = new TemporaryFolder();
                    using var from = Journals.Open(here.Journal);
                    files.ForEach(f => from.Add(f, by: "bench"));
                    from.PutInBin(1);
                    from.KeepPhoto(1, "image/jpeg", [1, 2, 3]);
                    using var to = Journals.Open(there.Journal);
                    Assert.Equal(new Restored(files.Count, 0, 0), to.Restore(from.Backup()));
                    AssertSame(from, to);
                    // Twice is once.
                    Assert.Equal(new Restored(0, 0, files.Count), to.Restore(from.Backup()));
                    AssertSame(from, to);
                },
                iter: 8,
                threads: 1
            );

    [Fact]
    public void Photos_ComeAlong()
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        var name = from.KeepPhoto(from.Add(CarFile.Named("One", LengthUnit.Inch)).Id, "image/jpeg", [9, 8, 7])!;
        using var to = Journals.Open(there.Journal);
        to.Restore(from.Backup());
        Assert.Equal([9, 8, 7], to.Photo(1, name)!.Bytes);
    }

    [Fact]
    public void OlderBackup_TakesNothingAway_NewerOne_AddsWhatIsMissing()
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        var car = from.Add(CarFile.Named("One", LengthUnit.Inch)).Id;
        var old = from.Backup();
        using var to = Journals.Open(there.Journal);
        to.Restore(old);
        from.Append(car, Guid.NewGuid(), null, _ => [new Act.CarDescribed(new CarIdentity("One, renamed"), LengthUnit.Inch)]);
        var now = from.Backup();
        Assert.Equal(new Restored(0, 1, 0), to.Restore(now));
        AssertSame(from, to);
        Assert.Equal(new Restored(0, 0, 1), to.Restore(old));
        AssertSame(from, to);
    }

    [Fact]
    public void CarThatWentAnotherWay_ComesInBesideTheOneHere_Once()
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        var car = from.Add(CarFile.Named("One", LengthUnit.Inch)).Id;
        using var to = Journals.Open(there.Journal);
        to.Restore(from.Backup());
        from.Append(car, Guid.NewGuid(), null, _ => [new Act.CarDescribed(new CarIdentity("there"), LengthUnit.Inch)]);
        to.Append(1, Guid.NewGuid(), null, _ => [new Act.CarDescribed(new CarIdentity("here"), LengthUnit.Inch)]);
        Assert.Equal(new Restored(1, 0, 0), to.Restore(from.Backup()));
        Assert.Equal(["here", "there"], to.Cars().Select(c => c.File.Car.Name));
        Assert.Equal(new Restored(0, 0, 1), to.Restore(from.Backup()));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(5000)]
    public void Junk_IsRefusedInWords_AndNothingChanges(int size)
    {
        using var folder = new TemporaryFolder();
        using var journals = Journals.Open(folder.Journal);
        journals.Add(CarFile.Named("One", LengthUnit.Inch));
        var before = Everything(journals).Count;
        var junk = new byte[size];
        new Random(7).NextBytes(junk);
        var refused = Assert.Throws<StoreUnusableException>(() => journals.Restore(junk));
        Assert.DoesNotContain("plumbmark-restore-", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, Everything(journals).Count);
    }

    [Fact]
    public void CutShort_IsRefused_AndNothingChanges()
    {
        using var here = new TemporaryFolder();
        using var from = Journals.Open(here.Journal);
        for (var i = 0; i < 5; i++)
        {
            from.Add(CarFile.Named($"Car {i}", LengthUnit.Inch));
        }

        var backup = from.Backup();
        using var there = new TemporaryFolder();
        using var to = Journals.Open(there.Journal);
        Assert.Throws<StoreUnusableException>(() => to.Restore(backup[..(backup.Length / 2)]));
        Assert.Empty(to.Cars());
    }
}
