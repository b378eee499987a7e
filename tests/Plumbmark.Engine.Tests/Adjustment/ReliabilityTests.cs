using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>What an error would do, and whether it would show.</summary>
public class ReliabilityTests
{
    private const double Sigma = 0.0008;

    private static NetworkFit Fit(Network network) => Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;

    [Fact]
    public void BracedRectangle_OneCheck_ProvesAnErrorAndCannotPlaceIt()
    {
        NetworkPoint At(string id, double x, double y) => new(id) { SketchXMetres = x, SketchYMetres = y };
        NetworkPoint[] points = [At("1", 0, 1), At("2", 1, 1), At("3", 0, 0), At("4", 1, 0)];
        (string, string, double)[] lengths =
        [
            ("1", "2", 1),
            ("1", "3", 1),
            ("1", "4", 1.4142),
            ("2", "3", 1.4242),
            ("2", "4", 1),
            ("3", "4", 1),
        ];
        var fit = Fit(new Network(points, lengths.Select(l => new PlanDistance($"{l.Item1}{l.Item2}", l.Item1, l.Item2, l.Item3, Sigma))));
        Assert.Equal(1, fit.Redundancy);
        Assert.Equal(["12", "13", "14", "23", "24", "34"], Assert.Single(fit.TiedReadings()));
    }

    [Fact]
    public void RepeatedDrop_MovesNoPointOfItsOwn_AndIsNoFault()
    {
        var truth = Frames.Ladder(5, new Random(3));
        List<Observation> readings = [.. Frames.PlanLengths(truth, Sigma, 1.7), new DropShift("again", "C.L", 0.0009, -0.0003)];
        var fit = Fit(new Network(Frames.Sketched(truth, dropSigma: 0.0005), readings));
        Assert.NotNull(fit.Reading("again").MinimalDetectableMetres);
        Assert.Null(fit.MostMoved("again"));
        Assert.NotNull(fit.MostMoved(readings[0].Id));
    }

    [Fact]
    public void WellBracedFrame_HasNoTiedReadings()
    {
        var truth = Frames.Ladder(6, new Random(1));
        Assert.Empty(Fit(new Network(Frames.Sketched(truth), Frames.PlanLengths(truth, Sigma, 1.7))).TiedReadings());
    }

    [Fact]
    public void PointOnThreeLengths_ItsReadingsAreTied()
    {
        var truth = Frames.Ladder(5, new Random(1));
        List<Observation> readings = [.. Frames.PlanLengths(truth, Sigma, 1.7)];
        readings.AddRange(
            (((string, double)[])[("A.L", 2.0), ("A.R", 2.2), ("B.L", 1.6)]).Select(r => new PlanDistance(
                $"X {r.Item1}",
                "X",
                r.Item1,
                r.Item2,
                Sigma
            ))
        );
        var points = Frames.Sketched(truth).Append(new NetworkPoint("X") { SketchXMetres = 3.1, SketchYMetres = 0.5 });
        Assert.Equal(["X A.L", "X A.R", "X B.L"], Assert.Single(Fit(new Network(points, readings)).TiedReadings()));
    }

    [Fact]
    public void Influence_IsWhatAChangedReadingDoes()
    {
        var truth = Frames.Ladder(5, new Random(3));
        List<Observation> readings = [.. Frames.PlanLengths(truth, Sigma, 1.7, new Random(4))];
        var fit = Fit(new Network(Frames.Sketched(truth), readings));
        const double Change = 1e-5;
        var (id, index) = (readings[7].Id, 7);
        readings[index] = readings[index] with { ValueMetres = readings[index].ValueMetres + Change };
        var changed = Fit(new Network(Frames.Sketched(truth), readings));
        var influence = fit.Influence(id);
        for (var i = 0; i < influence.Length; i++)
        {
            Assert.Equal((changed.Covariance.ValuesMetres[i] - fit.Covariance.ValuesMetres[i]) / Change, influence[i], 1e-3);
        }

        var gradient = new double[influence.Length];
        gradient[3] = 1;
        var worst = fit.WorstUndetected(gradient)!.Value;
        Assert.Equal(
            fit.Reading(worst.ReadingId).MinimalDetectableMetres!.Value * Math.Abs(fit.Influence(worst.ReadingId)[3]),
            worst.Change,
            1e-12
        );
        Assert.All(
            fit.Readings.Where(r => r.MinimalDetectableMetres is not null),
            r => Assert.True(Math.Abs(fit.Influence(r.Id)[3]) * r.MinimalDetectableMetres!.Value <= worst.Change * (1 + 1e-9))
        );
    }

    [Fact]
    public void OneMoreReadingFromAFit_EqualsTheFitFromNothing()
    {
        var truth = Frames.Ladder(6, new Random(5));
        List<Observation> readings = [.. Frames.PlanLengths(truth, Sigma, 1.7, new Random(6))];
        var less = Fit(new Network(Frames.Sketched(truth), readings.Skip(1)));
        var network = new Network(Frames.Sketched(truth), readings);
        var near = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network, less)).Fit;
        var fresh = Fit(network);
        Assert.All(fresh.Points, p => Assert.Equal(p.XMetres!.Value, near.Point(p.Id).XMetres!.Value, 1e-10));
        Assert.True(near.Summary.Iterations.Count <= 4);
    }
}
