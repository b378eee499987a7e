using System.Text;
using CsCheck;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Journal;

public class FoldLaws
{
    [Fact]
    public void ImportThenFold_GivesTheSameCarFile() =>
        CarFiles.Any.Sample(car => Assert.Equal(Text(car), Text(Fold.Of(Fold.ActsOf(car).Select(Entry)))), iter: 200);

    [Fact]
    public void EveryAct_ReadsBackAsWritten() =>
        CarFiles.Any.Sample(
            car =>
            {
                foreach (var act in Fold.ActsOf(car))
                {
                    var faults = new Faults();
                    var written = ActJson.Write(act, car.Units);
                    var read = ActJson.Read(written, faults);
                    Assert.Empty(faults);
                    Assert.IsType(act.GetType(), read);
                    Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(ActJson.Write(read, car.Units)));
                }
            },
            iter: 100
        );

    [Fact]
    public void EntriesSentTwice_CountOnce() =>
        CarFiles.Any.Sample(
            car =>
            {
                var entries = Fold.ActsOf(car).Select(Entry).ToList();
                Assert.Equal(Text(Fold.Of(entries)), Text(Fold.Of([.. entries, .. entries])));
            },
            iter: 100
        );

    [Fact]
    public void Undo_ReadsAsIfItHadNotHappened_AndUndoingTheUndoBringsItBack() =>
        CarFiles.Any.Sample(
            car =>
            {
                var entries = Fold.ActsOf(car).Select(Entry).ToList();
                var last = entries[^1];
                var undo = Entry(new Act.Undone(last.Id));
                var redo = Entry(new Act.Undone(undo.Id));
                Assert.Equal(Text(Fold.Of(entries[..^1])), Text(Fold.Of([.. entries, undo])));
                Assert.Equal(Text(Fold.Of(entries)), Text(Fold.Of([.. entries, undo, redo])));
            },
            iter: 100
        );

    [Fact]
    public void ReadingWithdrawn_StaysOnRecordWithItsReason()
    {
        var reading = new Reading.Height("r1", "A.L", Engine.Lengths.Length.FromInches(3));
        Act[] acts = [new Act.ReadingTaken(reading), new Act.ReadingWithdrawn("r1", "bubble in the tube")];
        var car = Fold.Of(acts.Select(Entry));
        Assert.Equal("bubble in the tube", Assert.Single(car.Readings).Withdrawn);
        Assert.Empty(car.StandingReadings);
    }

    private static JournalEntry Entry(Act act) => new(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, act);

    private static string Text(CarFile car) => Encoding.UTF8.GetString(CarFileWriter.Write(car));
}
