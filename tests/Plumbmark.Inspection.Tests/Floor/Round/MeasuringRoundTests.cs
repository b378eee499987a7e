using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Floor.Round;

public sealed class MeasuringRoundTests
{
    private static FramePoint Point(string id, double x, double y, PointRole role = PointRole.Body) =>
        new(
            id,
            id[..^1] + (id[^1] == 'L' ? "R" : "L"),
            role,
            new Place(Length.FromInches((decimal)x), Length.FromInches((decimal)y), null)
        );

    private static readonly CarFile s_car = new(
        LengthUnit.Inch,
        new CarIdentity("Invented"),
        [],
        // The list is not in walking order: places decide.
        new Frame([
            Point("C.R", 0, -15),
            Point("C.L", 0, 15),
            Point("A.L", 60, 11, PointRole.Suspension),
            Point("A.R", 60, -11, PointRole.Suspension),
            Point("B.L", 30, 14),
            Point("B.R", 30, -14),
        ]),
        []
    );

    [Fact]
    public void Usual_Heights_GoDownTheLeftAndUpTheRight() =>
        Assert.Equal(
            ["A.L", "B.L", "C.L", "C.R", "B.R", "A.R"],
            MeasuringRound.Usual(s_car).Where(l => l.Kind == RoundKind.Height).Select(l => l.From)
        );

    [Fact]
    public void Usual_Lengths_CoverEachBayFromFrontToRear()
    {
        var lengths = MeasuringRound.Usual(s_car).Where(l => l.Kind == RoundKind.Plan).ToList();
        // Three widths, two bays of two sides and two diagonals, two long diagonals.
        Assert.Equal(3 + (2 * 4) + 2, lengths.Count);
        Assert.Equal(("A.L", "A.R"), (lengths[0].From, lengths[0].To));
        Assert.Equal(("C.L", "C.R"), (lengths[^1].From, lengths[^1].To));
        Assert.Contains(lengths, l => (l.From, l.To) == ("A.R", "B.L"));
    }

    [Fact]
    public void Usual_ReadingTaken_IsNotAskedAgain()
    {
        var some = s_car with
        {
            Readings =
            [
                new Reading.Plan("r1", "B.L", "A.L", Length.FromInches(30)),
                new Reading.Height("r2", "C.R", Length.FromInches(13)),
            ],
        };
        var round = MeasuringRound.Usual(some);
        Assert.Equal(MeasuringRound.Usual(s_car).Count - 2, round.Count);
        Assert.DoesNotContain(round, l => l.Kind == RoundKind.Plan && (l.From, l.To) == ("A.L", "B.L"));
        var takenBack = some with { Readings = [.. some.Readings.Select(r => r with { Withdrawn = "rubbed" })] };
        Assert.Equal(MeasuringRound.Usual(s_car).Count, MeasuringRound.Usual(takenBack).Count);
    }

    [Fact]
    public void Of_PlannedReadings_AreNumberedInWalkingOrder()
    {
        NextReading[] planned =
        [
            new("plan", "B.L", "C.R", null, [], 1.5, ""),
            new("drop", null, null, "A.R", [], 1.5, ""),
            new("plan", "A.L", "B.R", null, [], 1.5, ""),
            new("height", null, null, "C.L", [], 1.5, ""),
            new("drop", null, null, "A.R", [], 1.5, ""),
        ];
        var round = MeasuringRound.Of(s_car, planned);
        Assert.Equal([1, 2, 3, 4, 5], round.Select(l => l.Number)); // what is planned twice is asked for twice
        Assert.Equal([RoundKind.Height, RoundKind.Drop, RoundKind.Drop, RoundKind.Plan, RoundKind.Plan], round.Select(l => l.Kind));
        Assert.Equal("A.L", round[3].From);
    }

    [Fact]
    public void Usual_AnyCar_AsksForKnownPointsOnceEach() =>
        CarFiles.Any.Sample(car =>
        {
            var round = MeasuringRound.Usual(car);
            var ids = car.Frame.Points.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
            Assert.All(round, l => Assert.True(ids.Contains(l.From) && (l.To is null || ids.Contains(l.To))));
            Assert.Equal(round.Count, round.Select(l => (l.Kind, l.From, l.To)).Distinct().Count());
            Assert.Equal(Enumerable.Range(1, round.Count), round.Select(l => l.Number));
        });
}
