using System.Text;
using CsCheck;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Inspection.Journal;
using Plumbmark.Inspection.Road;
using Plumbmark.Inspection.Tests.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Road;

public class RoadSectionLaws
{
    private static readonly Gen<CarFile> s_car = Gen.Select(CarFiles.Any, RoadSections.Any, (car, road) => car with { Road = road });

    [Fact]
    public void WriteThenRead_GivesTheSameBytes() =>
        s_car.Sample(
            car =>
            {
                var bytes = CarFileWriter.Write(car);
                var read = CarFileReader.Read(bytes).Match(f => f, faults => throw new InvalidOperationException(Refusal(faults, bytes)));
                Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(CarFileWriter.Write(read)));
                Assert.Equal(car.Road!.Wheels, read.Road!.Wheels);
                Assert.Equal(car.Road.Front, read.Road.Front);
                Assert.Equal(car.Road.Rear, read.Road.Rear);
                Assert.Equal(car.Road.Book, read.Road.Book);
            },
            iter: 200
        );

    [Fact]
    public void Schema_AcceptsEverySectionThatIsWritten() =>
        s_car.Sample(
            car =>
            {
                var bytes = CarFileWriter.Write(car);
                Assert.True(CarSchemaTests.IsValid(bytes), Encoding.UTF8.GetString(bytes));
            },
            iter: 60
        );

    [Fact]
    public void ImportThenFold_GivesTheSameCarFile() =>
        s_car.Sample(
            car =>
            {
                var entries = Fold.ActsOf(car).Select(a => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, a));
                Assert.Equal(Text(car), Text(Fold.Of(entries)));
            },
            iter: 100
        );

    [Fact]
    public void EveryAct_ReadsBackAsWritten() =>
        s_car.Sample(
            car =>
            {
                foreach (var act in Fold.ActsOf(car))
                {
                    var faults = new Faults();
                    var bytes = ActJson.Write(act, car.Units);
                    var read = ActJson.Read(bytes, faults);
                    Assert.Empty(faults);
                    Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(ActJson.Write(read!, car.Units)));
                }
            },
            iter: 60
        );

    [Fact]
    public void ReadingsTakenBack_StayOnRecordWithTheirReason()
    {
        var reading = new WheelReading.Level("w1", WheelPlace.FrontLeft, Angle.FromDegrees(1));
        Act[] acts =
        [
            new Act.WheelRead(reading),
            new Act.WheelRead(reading with { Camber = Angle.FromDegrees(2) }),
            new Act.WheelReadingWithdrawn("w1", "tyre flat"),
            new Act.RoadDescribed(RoadSection.Empty),
        ];
        var car = Fold.Of(acts.Select(a => new JournalEntry(Guid.NewGuid(), DateTimeOffset.UnixEpoch, null, a)));
        var kept = Assert.IsType<WheelReading.Level>(Assert.Single(car.Road!.Wheels));
        Assert.Equal("tyre flat", kept.Withdrawn);
        Assert.Equal(1, kept.Camber.Degrees);
    }

    private static string Text(CarFile car) => Encoding.UTF8.GetString(CarFileWriter.Write(car));

    private static string Refusal(IReadOnlyList<Fault> faults, byte[] bytes) =>
        string.Join('\n', faults) + "\n" + Encoding.UTF8.GetString(bytes);
}
