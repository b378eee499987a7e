using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Reliability.Campaigns;

namespace Plumbmark.Store.Tests;

/// <summary>The list of cars without reading their journals: always what the journals say.</summary>
public sealed class GlancesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void TheList_FollowsTheJournal_FromHereAndFromElsewhere()
    {
        using var one = Journals.Open(_folder.Journal);
        using var two = Journals.Open(_folder.Journal);
        var car = one.Add(Named("One", "QD 417")).Id;
        Assert.Equal(new CarGlance(car, 1, "One", "QD 417", 0, 0, null), Assert.Single(one.Glances("", 0, 10).Cars));
        Rename(two, car, "Two");
        Assert.Equal("Two", Assert.Single(one.Glances("", 0, 10).Cars).Name);
        Rename(one, car, "Three");
        Assert.Equal("Three", Assert.Single(two.Glances("", 0, 10).Cars).Name);
    }

    [Fact]
    public void Search_FindsNamesAndNumbers_AndPagesThem()
    {
        using var journals = Journals.Open(_folder.Journal);
        for (var i = 0; i < 12; i++)
        {
            journals.Add(Named($"Car {i}", i % 2 == 0 ? $"QD {i}" : null));
        }

        Assert.Equal(12, journals.Glances("", 0, 5).Total);
        Assert.Equal([6, 7, 8, 9, 10], journals.Glances("", 5, 5).Cars.Select(c => c.Id));
        Assert.Equal(["Car 1", "Car 10", "Car 11"], journals.Glances("cAR 1", 0, 5).Cars.Select(c => c.Name));
        Assert.Equal(6, journals.Glances("qd", 0, 5).Total);
        Assert.Equal(0, journals.Glances("%", 0, 5).Total);
        journals.PutInBin(3);
        Assert.Equal(11, journals.Glances("", 0, 5).Total);
        Assert.Equal(3, Assert.Single(journals.Glances("", 0, 5, binned: true).Cars).Id);
    }

    [Fact]
    public void AVerdict_IsBelievedForItsStateAndItsVersionAlone()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One")).Id;
        journals.Glances("", 0, 1);
        journals.RememberVerdict(car, 1, "Out", "this");
        Assert.Equal("Out", journals.Glances("", 0, 1, toldBy: "this").Cars[0].Verdict);
        Assert.Null(journals.Glances("", 0, 1, toldBy: "another").Cars[0].Verdict);
        Rename(journals, car, "Two");
        Assert.Null(journals.Glances("", 0, 1, toldBy: "this").Cars[0].Verdict);
        journals.RememberVerdict(car, 1, "Out", "this"); // of the state before
        Assert.Null(journals.Glances("", 0, 1, toldBy: "this").Cars[0].Verdict);
    }

    [Fact]
    public void OneJournalThatCannotBeRead_DoesNotHideTheOthers()
    {
        using var journals = Journals.Open(_folder.Journal);
        var (one, two) = (journals.Add(Named("One")).Id, journals.Add(Named("Two")).Id);
        using (var connection = JournalFile.Connect(_folder.Journal))
        {
            connection.Run("INSERT INTO entry (car, sequence, together, id, at, act) VALUES ($car, 2, 2, 'x', '', '{}')", ("$car", one));
        }

        using var again = Journals.Open(_folder.Journal);
        Assert.Equal(["(a journal that cannot be read)", "Two"], again.Glances("", 0, 5).Cars.Select(c => c.Name));
        Assert.NotNull(again.Car(two));
    }

    [Fact]
    public void RestoredCars_AreListed()
    {
        using var elsewhere = new TemporaryFolder();
        using var from = Journals.Open(elsewhere.Journal);
        from.Add(Named("One"));
        using var journals = Journals.Open(_folder.Journal);
        Assert.Empty(journals.Glances("", 0, 5).Cars);
        journals.Restore(from.Backup());
        Assert.Equal("One", Assert.Single(journals.Glances("", 0, 5).Cars).Name);
    }

    // The long one, of a day and a night, is in bench/reliability.
    [Fact]
    public void Memory_DoesNotGrowWithTheCarsEntered()
    {
        var hour = Assert.Single(LongDay.Run(hours: 1, seed: 1));
        Assert.Equal(1200, hour.Entries);
        Assert.InRange(hour.HeapMegabytes, 0, 100);
    }

    private static CarFile Named(string name, string? serial = null) =>
        CarFile.Named(name, LengthUnit.Inch) with
        {
            Car = new CarIdentity(name, serial),
        };

    private static void Rename(Journals journals, long car, string name) =>
        Assert.IsType<Appended.Kept>(
            journals.Append(car, Guid.NewGuid(), null, _ => [new Act.CarDescribed(new CarIdentity(name), LengthUnit.Inch)])
        );
}
