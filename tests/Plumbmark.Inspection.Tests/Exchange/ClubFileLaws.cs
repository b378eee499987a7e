using System.Text;
using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Nothing of its owner goes along that was not chosen, and what goes along is a whole car file.</summary>
public sealed class ClubFileLaws
{
    private const string Secret = "Zebedee";

    /// <summary>The car with the owner's words wherever the format lets a person write some, book pages apart.</summary>
    private static CarFile Personal(CarFile car) =>
        car with
        {
            Car = new CarIdentity($"{Secret}'s car", $"{Secret} 1", Secret),
            Tools = [.. car.Tools.Select(t => t with { Id = $"{Secret}'s {t.Id}" })],
            Frame = new Frame(
                [.. car.Frame.Points.Select(p => p with { Label = Secret, NominalDoubt = Secret })],
                car.Frame.Limits is { } limits ? limits with { Note = Secret } : null
            ),
            Readings =
            [
                .. car.Readings.Select(
                    (r, i) =>
                        r with
                        {
                            Id = $"{Secret}{i}",
                            Tool = $"{Secret}'s tape",
                            Note = Secret,
                            Withdrawn = i % 3 == 0 ? Secret : null,
                        }
                ),
            ],
            Parts = new PartsSection(
                [
                    .. car.Parts.Items.Select(p =>
                        p with
                        {
                            Card = new PartCard(Secret, p.Card.Numbers, Secret, [Secret], [Secret]),
                            Measures =
                            [
                                .. p.Measures.Select((m, i) => m with { Id = $"{Secret}{i}", Note = Secret, Tool = $"{Secret}'s tape" }),
                            ],
                            Limits = [.. p.Limits.Select(l => l with { Note = Secret })],
                        }
                    ),
                ],
                car.Parts.Variants
            ),
        };

    [Fact]
    public void AnyCar_GivenAway_HasNoWordOfItsOwner() =>
        CarFiles.Any.Sample(car =>
        {
            var bytes = CarFileWriter.Write(ClubFile.Of(Personal(car)));
            Assert.DoesNotContain(Secret, Encoding.UTF8.GetString(bytes), StringComparison.OrdinalIgnoreCase);
        });

    [Fact]
    public void AnyCar_GivenAway_ReadsBackWithItsMeasures() =>
        CarFiles.Any.Sample(car =>
        {
            var given = CarFileReader
                .Read(CarFileWriter.Write(ClubFile.Of(car)))
                .Match(c => c, f => throw new InvalidOperationException(string.Join('\n', f)));
            Assert.Equal(car.StandingReadings.Count(), given.Readings.Count);
            Assert.Equal(car.StandingReadings.Select(r => r.Points), given.Readings.Select(r => r.Points));
            Assert.Equal(car.Parts.Items.Sum(p => p.StandingMeasures.Count()), given.Parts.Items.Sum(p => p.Measures.Count));
            Assert.Equal(car.Frame.Points.Count, given.Frame.Points.Count);
            Assert.Null(given.Car.Serial);
        });

    [Fact]
    public void Serial_GoesAlongOnlyWhenChosen()
    {
        var car = CarFile.Named("x", LengthUnit.Millimetre) with { Car = new CarIdentity("x", "TX 00417") };
        Assert.Equal("TX 00417", ClubFile.Of(car, keepsSerial: true).Car.Serial);
        Assert.Equal("Tern, late", ClubFile.Of(car, "Tern, late").Car.Name);
        Assert.Equal(ClubFile.UsualName, ClubFile.Of(car).Car.Name);
    }
}
