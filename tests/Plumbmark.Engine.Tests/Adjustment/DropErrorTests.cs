using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>The drop error belongs to the point: no length between marks shows it, and only another drop makes it smaller.</summary>
public class DropErrorTests
{
    private const double Sigma = 0.0008;
    private const double DropSigma = 0.0005;

    private static NetworkFit Fit(Network network) => Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;

    [Fact]
    public void LengthsBetweenMarks_PointIsMarkPlusDropVariance()
    {
        var truth = Frames.Ladder(5, new Random(1));
        var readings = Frames.PlanLengths(truth, Sigma, 2, new Random(2)).ToList();
        var marks = Fit(new Network(Frames.Sketched(truth), readings));
        var points = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), readings));
        Assert.Equal(marks.WeightedSquares, points.WeightedSquares, 1e-9);
        foreach (var p in marks.Points)
        {
            Assert.Equal(
                Math.Sqrt(p.UxMetres!.Value * p.UxMetres.Value + DropSigma * DropSigma),
                points.Point(p.Id).UxMetres!.Value,
                1e-12
            );
        }
    }

    [Fact]
    public void DropsWithDirection_AverageTheMarks()
    {
        var truth = Frames.Ladder(5, new Random(1));
        Observation[] readings =
        [
            .. Frames.PlanLengths(truth, Sigma, 2),
            new DropShift("d1", "C.L", 0.0009, -0.0003),
            new DropShift("d2", "C.L", 0.0003, 0.0012),
        ];
        var once = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), readings[..^2]));
        var thrice = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), readings));
        Assert.Equal(once.Point("C.L").XMetres!.Value + 0.0004, thrice.Point("C.L").XMetres!.Value, 1e-12);
        Assert.Equal(once.Point("C.L").YMetres!.Value + 0.0003, thrice.Point("C.L").YMetres!.Value, 1e-12);
        var saved = Math.Pow(once.Point("C.L").UxMetres!.Value, 2) - Math.Pow(thrice.Point("C.L").UxMetres!.Value, 2);
        Assert.Equal(DropSigma * DropSigma * (1 - 1.0 / 3), saved, 1e-15);

        // A mark's residual against the mean of three shows two thirds of its error.
        Assert.Equal(2.0 / 3, thrice.Reading("d1").RedundancyNumber, 1e-12);
        Assert.Equal(double.Hypot(0.0004 - 0.0009, 0.0003 + 0.0003), thrice.Reading("d1").ResidualMetres, 1e-12);
    }

    [Fact]
    public void DropsAsDistances_OnAverageTellNothingOfThePlace_AndCloseOnesDo()
    {
        // E d² of two marks is 4 σ².
        Assert.Equal(DropSigma * DropSigma, DropRecord.Of(DropSigma, 2, 0, 0, 4 * DropSigma * DropSigma).Variance, 1e-18);
        Assert.Equal(DropSigma * DropSigma / 2, DropRecord.Of(DropSigma, 2, 0, 0, 0).Variance, 1e-18);
    }

    [Fact]
    public void PlanAndDirectMixed_TheDropErrorShowsInThePlanLengthsOnly()
    {
        // Three holes exactly known in space by direct lengths; one mark fell a millimetre forward.
        var truth = Frames.Ladder(3, new Random(4));
        var plan = Frames.PlanLengths(truth, 0.0002, 5).ToList();
        var moved = truth.Select(p => p.Id == "B.L" ? p with { X = p.X + 0.001 } : p).ToList();
        var marks = Frames.PlanLengths(moved, 0.0002, 5);
        Observation[] readings = [.. marks, .. Frames.DirectLengths(truth, 0.0002, 5), .. Frames.Heights(truth, 0.0002)];
        var fit = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), readings));
        var (a, b) = (fit.Point("A.L"), fit.Point("B.L"));
        var length = double.Hypot(a.XMetres!.Value - b.XMetres!.Value, a.YMetres!.Value - b.YMetres!.Value);
        var expected = double.Hypot(truth[0].X - truth[2].X, truth[0].Y - truth[2].Y);

        // Most of the millimetre is put down to the drop; taken as lengths between the points it would be shared half and half.
        Assert.Equal(expected, length, 0.0002);
        Assert.NotEmpty(plan);
    }

    [Fact]
    public void DropErrorAsUnknown_GivesTheSameAsAddingItAfterwards()
    {
        var truth = Frames.Ladder(5, new Random(6));
        Observation[] readings = [.. Frames.PlanLengths(truth, Sigma, 2, new Random(7)), new DropDistance("d", "B.R", 0.0003)];
        var added = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), readings));

        // A prior on each point that says nothing makes the drop error an unknown.
        var priors = truth.SelectMany(p =>
            (Observation[])
                [new CoordinatePrior($"{p.Id} x", p.Id, Axis.X, p.X, 50), new CoordinatePrior($"{p.Id} y", p.Id, Axis.Y, p.Y, 50)]
        );
        var unknown = Fit(new Network(Frames.Sketched(truth, dropSigma: DropSigma), [.. readings, .. priors]));
        Assert.Equal(added.WeightedSquares, unknown.WeightedSquares, 1e-4);
        for (var i = 1; i < truth.Count; i++)
        {
            FunctionEstimate Length(NetworkFit fit)
            {
                var at = ((int, int, int, int))
                    (
                        fit.Covariance.IndexOf(truth[0].Id, Axis.X)!,
                        fit.Covariance.IndexOf(truth[0].Id, Axis.Y)!,
                        fit.Covariance.IndexOf(truth[i].Id, Axis.X)!,
                        fit.Covariance.IndexOf(truth[i].Id, Axis.Y)!
                    );
                return fit.Covariance.Evaluate(c => double.Hypot(c[at.Item1] - c[at.Item3], c[at.Item2] - c[at.Item4]));
            }

            Assert.Equal(Length(added).Sigma, Length(unknown).Sigma, 1e-8);
            Assert.Equal(Length(added).Value, Length(unknown).Value, 1e-6);
        }
    }

    [Fact]
    public void RepeatedDrops_ArePooledWithTheirDegreesOfFreedom()
    {
        var random = new Random(8);
        double Drop() => DropSigma * Frames.Normal(random);
        var readings = new List<Observation>();
        var points = Enumerable.Range(0, 400).Select(i => new NetworkPoint($"P{i}")).ToList();
        foreach (var point in points)
        {
            var (x, y) = (Drop(), Drop());
            for (var k = 0; k < 3; k++)
            {
                var (dx, dy) = (Drop() - x, Drop() - y);
                readings.Add(
                    readings.Count % 6 < 3
                        ? new DropShift($"{point.Id} {k}", point.Id, dx, dy)
                        : new DropDistance($"{point.Id} {k}", point.Id, double.Hypot(dx, dy))
                );
            }
        }

        var spread = RepeatedDrops.Pool(readings)!;
        Assert.Equal(200 * 6 + 200 * 8 * 3 / 6.0, spread.DegreesOfFreedom, 1e-9);

        // Three standard deviations of an estimate with 2000 degrees of freedom: 3 / √4000.
        Assert.Equal(DropSigma, spread.StandardDeviation, 0.05 * DropSigma);
        Assert.InRange(spread.ProbabilityOfAtLeast(DropSigma), 0.001, 0.999);
        Assert.True(spread.ProbabilityOfAtLeast(0.7 * DropSigma) < 1e-9);
    }
}
