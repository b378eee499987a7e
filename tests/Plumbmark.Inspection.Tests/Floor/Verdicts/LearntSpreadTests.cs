using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Tests.Floor.Verdicts;

/// <summary>Where repeats had a say in a spread, Student's t judges and not the normal law.</summary>
/// <remarks>JCGM 100:2008, G.3.2 and G.4.1 (Welch-Satterthwaite); JCGM 106:2012, 7.4.</remarks>
public sealed class LearntSpreadTests
{
    private static readonly CarFile s_demo = DemoCar.File();

    [Fact]
    public void WithoutRepeats_TheSpreadIsAssumed_AndTheNormalLawJudges()
    {
        var once = s_demo with { Readings = [.. s_demo.Readings.Where(r => r is not Reading.Drop)] };
        Assert.All(FloorInspection.Of(once).Checks, c => Assert.Equal(double.PositiveInfinity, c.DegreesOfFreedom));
    }

    [Fact]
    public void WithRepeatedDrops_EachCheckHasItsOwnDegreesOfFreedom_AndTJudges()
    {
        var drops = FrameNetwork.Of(s_demo).DropSpread.DegreesOfFreedom;
        var checks = FloorInspection.Of(s_demo).Checks;
        var shift = checks.Single(c => c.Id == "side-shift:C");

        // Drops are part of what makes it unsure: never worth less than they alone.
        Assert.InRange(shift.DegreesOfFreedom, drops, double.MaxValue);
        Assert.Equal(
            StudentT.Cumulative((shift.LimitMetres!.Value - shift.ValueMetres) / shift.UMetres, shift.DegreesOfFreedom)
                - StudentT.Cumulative((-shift.LimitMetres!.Value - shift.ValueMetres) / shift.UMetres, shift.DegreesOfFreedom),
            shift.ProbabilityWithin!.Value,
            1e-9
        );

        // A height is read above a level line: no drop has part in it.
        Assert.All(checks.Where(c => c.Kind == "heightDifference"), c => Assert.Equal(double.PositiveInfinity, c.DegreesOfFreedom));
    }

    [Fact]
    public void OneLengthReadTwice_MakesItsTapesSpreadALearntOne()
    {
        var first = s_demo.Readings.OfType<Reading.Plan>().First();
        var twice = s_demo with { Readings = [.. s_demo.Readings.Where(r => r is not Reading.Drop), first with { Id = "again" }] };
        var network = FrameNetwork.Of(twice);
        var (_, degrees) = network.LearntSpreadOf(first.Id)!.Value;
        Assert.Equal(network.Spreads.Single(s => s.Repeats is not null).Used.DegreesOfFreedom, degrees);
        Assert.Null(network.LearntSpreadOf(s_demo.Readings.OfType<Reading.Height>().First().Id));
    }

    [Fact]
    public void ALengthReadAgainAnInchApart_TellsOfASlip_AndNotOfTheTape()
    {
        var first = s_demo.Readings.OfType<Reading.Plan>().First();
        var slip = first with { Id = "again", Value = first.Value + Engine.Lengths.Length.FromInches(1) };
        var spreads = FrameNetwork.Of(s_demo with { Readings = [.. s_demo.Readings, slip] }).Spreads;
        Assert.All(spreads, s => Assert.Null(s.Repeats));

        // Read again within its sixteenth: that is the tape.
        var close = slip with
        {
            Value = first.Value + Engine.Lengths.Length.FromFraction(0, 1, 16, Engine.Lengths.LengthUnit.Inch),
        };
        Assert.Contains(FrameNetwork.Of(s_demo with { Readings = [.. s_demo.Readings, close] }).Spreads, s => s.Repeats is not null);
    }
}
