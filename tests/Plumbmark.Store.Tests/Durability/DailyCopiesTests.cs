using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>The copies that make themselves: one a day when there is something new, the oldest let go, each good to restore.</summary>
public sealed class DailyCopiesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly SetClock _clock = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void OneADay_AndOnlyWhenSomethingIsNew()
    {
        using var journals = Journals.Open(_folder.Journal, _clock);
        Assert.Null(DailyCopies.Keep(journals, _clock)); // nothing to copy yet
        journals.Add(CarFile.Named("One", LengthUnit.Inch));
        Assert.NotNull(DailyCopies.Keep(journals, _clock));
        Enter(journals);
        Assert.Null(DailyCopies.Keep(journals, _clock)); // today's is made
        _clock.Days(1);
        Assert.NotNull(DailyCopies.Keep(journals, _clock));
        _clock.Days(1);
        Assert.Null(DailyCopies.Keep(journals, _clock)); // nothing new
    }

    [Fact]
    public void TheNewestSevenStay_AndTheFirstOfEachOfSixMonths()
    {
        using var journals = Journals.Open(_folder.Journal, _clock);
        journals.Add(CarFile.Named("One", LengthUnit.Inch));
        var made = new List<string>();
        for (var day = 0; day < 240; day += 3)
        {
            Enter(journals);
            made.Add(DailyCopies.Keep(journals, _clock)!);
            _clock.Days(3);
        }

        var copies = DailyCopies.Of(_folder.Journal);
        Assert.Equal(made.TakeLast(7).Reverse(), copies.Take(7).Select(c => c.Path));
        string MonthOf(string path) => Path.GetFileName(path)[..7];
        Assert.Equal(
            made.GroupBy(MonthOf).TakeLast(6).Select(month => month.First()).Except(made.TakeLast(7)),
            copies.Skip(7).Select(c => c.Path).Reverse()
        );
    }

    [Fact]
    public void EachIsABackup_ThatComesBackWhole()
    {
        using var elsewhere = new TemporaryFolder();
        string copy;
        byte[] car;
        using (var journals = Journals.Open(_folder.Journal, _clock))
        {
            var id = journals.Add(CarFile.Named("One", LengthUnit.Inch)).Id;
            journals.KeepPhoto(id, "image/jpeg", [1, 2, 3]);
            Enter(journals);
            car = CarFileWriter.Write(journals.Car(id)!.File);
            copy = DailyCopies.Keep(journals, _clock)!;
        }

        using var fresh = Journals.Open(elsewhere.Journal);
        Assert.Equal(new Restored(1, 0, 0), fresh.Restore(File.ReadAllBytes(copy)));
        Assert.Equal(car, CarFileWriter.Write(fresh.Cars()[0].File));
        Assert.Equal([1, 2, 3], fresh.Photo(1, Journals.PhotoName([1, 2, 3]))!.Bytes);
    }

    [Fact]
    public void AClockSetBack_LosesNoNewerCopy()
    {
        using var journals = Journals.Open(_folder.Journal, _clock);
        journals.Add(CarFile.Named("One", LengthUnit.Inch));
        for (var day = 0; day < 10; day++)
        {
            Enter(journals);
            DailyCopies.Keep(journals, _clock);
            _clock.Days(1);
        }

        _clock.Days(-20_000); // a machine whose clock battery is flat
        Enter(journals);
        var newest = DailyCopies.Keep(journals, _clock);
        Assert.Equal(newest, DailyCopies.Of(_folder.Journal)[0].Path);
        for (var day = 0; day < 10; day++)
        {
            Enter(journals);
            DailyCopies.Keep(journals, _clock); // the same day each time
        }

        Assert.True(File.Exists(newest));
        for (var entry = 0; entry < 200; entry++)
        {
            Enter(journals);
        }

        Assert.NotNull(DailyCopies.Keep(journals, _clock));
    }

    [Fact]
    public void WhenItCannotBeMade_ThatIsSaid_AndEntryGoesOn()
    {
        using var journals = Journals.Open(_folder.Journal, _clock);
        journals.Add(CarFile.Named("One", LengthUnit.Inch));
        File.WriteAllText(DailyCopies.FolderOf(_folder.Journal), "a file where the folder should be");
        var told = Assert.Throws<StoreUnusableException>(() => DailyCopies.Keep(journals, _clock));
        Assert.Contains("could not be made", told.Message, StringComparison.Ordinal);
        Enter(journals);
    }

    private static void Enter(Journals journals) =>
        Assert.IsType<Appended.Kept>(
            journals.Append(
                1,
                Guid.NewGuid(),
                null,
                car => [new Act.CarDescribed(new CarIdentity($"name {car.Sequence}"), LengthUnit.Inch)]
            )
        );

    private sealed class SetClock : TimeProvider
    {
        private DateTimeOffset _now = new(2026, 3, 14, 21, 0, 0, TimeSpan.Zero);

        public void Days(int days) => _now = _now.AddDays(days);

        public override DateTimeOffset GetUtcNow() => _now;

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
    }
}
