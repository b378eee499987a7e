using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store.Tests;

/// <summary>Cars and their journals in a real file.</summary>
public sealed class JournalsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Add_ThenOpenAgain_IsTheSameCar()
    {
        using (var journals = Journals.Open(_folder.Journal))
        {
            journals.Add(DemoCar.File());
        }

        using var again = Journals.Open(_folder.Journal);
        Assert.Equal(CarFileWriter.Write(DemoCar.File()), CarFileWriter.Write(Assert.Single(again.Cars()).File));
    }

    [Fact]
    public void Append_IsOrderedBySequence_NotByClock()
    {
        using var journals = Journals.Open(_folder.Journal, new BackwardClock());
        var car = journals.Add(Named("One"));
        for (var i = 1; i <= 3; i++)
        {
            Kept(journals.Append(car.Id, Guid.NewGuid(), null, _ => [Describe($"name {i}")]));
        }

        var now = journals.Car(car.Id)!;
        Assert.Equal("name 3", now.File.Car.Name);
        Assert.Equal([1, 2, 3, 4], now.Entries.Select(e => e.Sequence));
        Assert.True(now.Entries[^1].Entry.At < now.Entries[0].Entry.At);
    }

    [Fact]
    public void Append_SameNameTwice_IsKeptOnce()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One"));
        var name = Guid.NewGuid();
        Kept(journals.Append(car.Id, name, null, _ => [Describe("two")]));
        Assert.IsType<Appended.KeptBefore>(journals.Append(car.Id, name, null, _ => [Describe("three")]));
        Assert.Equal("two", journals.Car(car.Id)!.File.Car.Name);
        Assert.Equal(2, journals.Car(car.Id)!.Entries.Count);
    }

    [Fact]
    public void Append_EntriesOfAPhone_AreKeptOnceEach_InTheirOrder()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One"));
        var entries = Enumerable
            .Range(1, 3)
            .Select(i => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, "phone", Describe($"{i}")))
            .ToList();
        Kept(journals.Append(car.Id, entries[..2]));
        var rest = Kept(journals.Append(car.Id, entries));
        Assert.Equal(entries[2].Id, Assert.Single(rest.Entries).Entry.Id);
        Assert.Equal("phone", rest.Entries[0].Entry.By);
        Assert.Equal(4, journals.Car(car.Id)!.Entries.Count);
    }

    [Fact]
    public void Append_SeveralActs_AreTogether()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One"));
        Kept(journals.Append(car.Id, Guid.NewGuid(), null, _ => [Describe("a"), Describe("b")]));
        Assert.Equal([1, 2, 2], journals.Car(car.Id)!.Entries.Select(e => e.Together));
    }

    [Fact]
    public void Append_WhatContradictsTheCar_IsRefusedAndNothingWritten()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One"));
        var lost = new Act.ReadingTaken(new Reading.Height("r1", "nowhere", Length.FromInches(3)));
        var refused = Assert.IsType<Appended.Refused>(journals.Append(car.Id, Guid.NewGuid(), null, _ => [Describe("two"), lost]));
        Assert.Contains("nowhere", Assert.Single(refused.Faults).Sentence, StringComparison.Ordinal);
        Assert.Equal("One", journals.Car(car.Id)!.File.Car.Name);
        Assert.Single(journals.Car(car.Id)!.Entries);
    }

    [Fact]
    public void Append_ActThatThrows_LeavesTheJournalAsItWas()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(Named("One"));
        Assert.Throws<InvalidOperationException>(() =>
            journals.Append(car.Id, Guid.NewGuid(), null, _ => throw new InvalidOperationException())
        );
        Assert.Single(journals.Car(car.Id)!.Entries);
        Kept(journals.Append(car.Id, Guid.NewGuid(), null, _ => [Describe("two")]));
    }

    [Fact]
    public void Append_ToNoCar_SaysSo()
    {
        using var journals = Journals.Open(_folder.Journal);
        Assert.IsType<Appended.NoSuchCar>(journals.Append(7, Guid.NewGuid(), null, _ => [Describe("x")]));
    }

    [Fact]
    public void Bin_HidesTheCarAndKeepsItsJournal()
    {
        using var journals = Journals.Open(_folder.Journal);
        var car = journals.Add(DemoCar.File());
        Assert.True(journals.PutInBin(car.Id));
        Assert.False(journals.PutInBin(car.Id));
        Assert.Empty(journals.Cars());
        Assert.Equal(car.Entries.Count, Assert.Single(journals.Bin()).Entries.Count);
        Assert.True(journals.TakeFromBin(car.Id));
        Assert.False(Assert.Single(journals.Cars()).IsBinned);
    }

    [Fact]
    public void FillWhenNew_FillsOnce_AndWhatIsBinnedStaysBinned()
    {
        using var journals = Journals.Open(_folder.Journal);
        journals.FillWhenNew(() => [Named("demo")]);
        journals.FillWhenNew(() => [Named("demo")]);
        var car = Assert.Single(journals.Cars());
        journals.PutInBin(car.Id);
        journals.FillWhenNew(() => [Named("demo")]);
        Assert.Empty(journals.Cars());
    }

    [Fact]
    public void TwoInstances_OnOneFile_SeeEachOthersEntries()
    {
        using var one = Journals.Open(_folder.Journal);
        using var two = Journals.Open(_folder.Journal);
        var car = one.Add(Named("One"));
        Assert.Equal("One", two.Car(car.Id)!.File.Car.Name);
        Kept(two.Append(car.Id, Guid.NewGuid(), null, _ => [Describe("from two")]));
        Assert.Equal("from two", one.Car(car.Id)!.File.Car.Name);
        Kept(one.Append(car.Id, Guid.NewGuid(), null, _ => [Describe("from one")]));
        Assert.Equal([1, 2, 3], two.Car(car.Id)!.Entries.Select(e => e.Sequence));
    }

    [Fact]
    public async Task TwoInstances_WritingAtOnce_LoseNothing()
    {
        using var one = Journals.Open(_folder.Journal);
        using var two = Journals.Open(_folder.Journal);
        var car = one.Add(Named("One"));
        await Task.WhenAll(
            new[] { one, two }.Select(journals =>
                Task.Run(() =>
                {
                    for (var i = 0; i < 25; i++)
                    {
                        Kept(journals.Append(car.Id, Guid.NewGuid(), null, _ => [Describe($"{i}")]));
                    }
                })
            )
        );
        Assert.Equal(Enumerable.Range(1, 51).Select(i => (long)i), one.Car(car.Id)!.Entries.Select(e => e.Sequence));
    }

    private static CarFile Named(string name) => CarFile.Named(name, LengthUnit.Inch);

    private static Act.CarDescribed Describe(string name) => new(new CarIdentity(name), LengthUnit.Inch);

    private static Appended.Kept Kept(Appended outcome) => Assert.IsType<Appended.Kept>(outcome);

    /// <summary>A clock that somebody keeps setting back.</summary>
    private sealed class BackwardClock : TimeProvider
    {
        private DateTimeOffset _now = DateTimeOffset.UnixEpoch.AddYears(50);

        public override DateTimeOffset GetUtcNow() => _now -= TimeSpan.FromHours(1);
    }
}
