using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Inspection.Floor.Round;

public sealed class RoundScopeTests
{
    private static readonly CarFile s_demo = DemoCar.File();

    [Fact]
    public void All_DoesNotDependOnWhatIsTaken() =>
        Assert.Equal(MeasuringRound.Of(s_demo with { Readings = [] }, RoundScope.Usual), MeasuringRound.Of(s_demo, RoundScope.All));

    [Fact]
    public void Planned_AsksForADoubtedReadingOnceMore()
    {
        var doubted = FloorInspection.Of(s_demo).Suspects.Select(s => s.Reading).OfType<string>().ToList();
        Assert.NotEmpty(doubted);
        var lines = MeasuringRound.Of(s_demo, RoundScope.Planned);
        Assert.Equal(Enumerable.Range(1, lines.Count), lines.Select(l => l.Number));
        foreach (var reading in s_demo.Readings.OfType<Reading.Plan>().Where(r => doubted.Contains(r.Id)))
        {
            Assert.Contains(lines, l => l.Kind == RoundKind.Plan && (l.From, l.To) == (reading.From, reading.To));
        }
    }

    [Fact]
    public void Answered_FindsReadingsTakenSince_EachOnce()
    {
        var before = s_demo with { Readings = [] };
        var round = MeasuringRound.Of(before, RoundScope.All);
        Assert.Empty(MeasuringRound.Answered(round, s_demo, s_demo)); // nothing since
        var line = round.First(l => l.Kind == RoundKind.Plan);
        // The tape may be laid the other way round, and a second reading of one line answers nothing more.
        Reading[] taken =
        [
            new Reading.Plan("n1", line.To!, line.From, Length.FromInches(20)),
            new Reading.Plan("n2", line.From, line.To!, Length.FromInches(20)),
            new Reading.Height("n3", round.First(l => l.Kind == RoundKind.Height).From, Length.FromInches(13)) { Withdrawn = "slipped" },
        ];
        var answered = Assert.Single(MeasuringRound.Answered(round, before, before with { Readings = taken }));
        Assert.Equal((line.Number, "n1"), (answered.Key, answered.Value.Id));
    }
}
