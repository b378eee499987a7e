using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>Where the iteration starts must not decide where it ends.</summary>
public class NetworkStartTests
{
    private const double Sigma = 0.0008;

    // Five sigma of a tape: a point on the wrong side of its neighbours is centimetres off.
    private const double Close = 0.006;

    private static NetworkFit Fit(Network network) => Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;

    [Theory]
    [InlineData(1, 4, 3.0)]
    [InlineData(2, 8, 1.6)]
    [InlineData(3, 8, 1.2)]
    [InlineData(4, 15, 1.2)]
    [InlineData(5, 30, 1.2)]
    public void Solve_WithoutAnySketch_FindsTheShapeAndPutsLeftToTheLeft(int seed, int pairs, double reach)
    {
        var random = new Random(seed);
        var truth = Frames.Ladder(pairs, random);
        var readings = Frames.PlanLengths(truth, Sigma, reach, random).ToList();
        var fit = Fit(new Network(Frames.Unsketched(truth), readings, null, Frames.Pairs(truth)));
        var sketched = Fit(new Network(Frames.Sketched(truth), readings));
        Assert.Equal(sketched.WeightedSquares, fit.WeightedSquares, 1e-6 * sketched.WeightedSquares);
        Assert.True(Frames.WorstDistance(fit, truth) < Close, $"{Frames.WorstDistance(fit, truth)}");
        Assert.True(fit.Datum.MirrorIsAssumed);
        Assert.All(Frames.Pairs(truth), p => Assert.True(fit.Point(p.Left).YMetres > fit.Point(p.Right).YMetres));
        Assert.True(fit.Point("A.L").XMetres > fit.Point(truth[^1].Id).XMetres);
    }

    [Theory]
    [InlineData(11, 0.05)]
    [InlineData(12, 0.3)]
    [InlineData(13, 1.0)]
    [InlineData(14, 5.0)]
    public void Solve_FromAPoorSketch_FindsTheShape(int seed, double rough)
    {
        var random = new Random(seed);
        var truth = Frames.Ladder(8, random);
        var fit = Fit(new Network(Frames.Sketched(truth, rough, random), Frames.PlanLengths(truth, Sigma, 1.6, random)));
        Assert.True(Frames.WorstDistance(fit, truth) < Close, $"{Frames.WorstDistance(fit, truth)}");
    }

    [Fact]
    public void Solve_SketchWithAllPointsInOneSpot_FindsTheShape()
    {
        var truth = Frames.Ladder(6, new Random(5));
        var points = truth.Select(p => new NetworkPoint(p.Id) { SketchXMetres = 1, SketchYMetres = 1 });
        var fit = Fit(new Network(points, Frames.PlanLengths(truth, Sigma, 2)));
        Assert.True(Frames.WorstDistance(fit, truth) < Close);
    }

    [Fact]
    public void Solve_SketchSaysWhichOfTwoMirroredPlaces()
    {
        NetworkPoint Held(string id, double x) => new(id) { X = new Coordinate.Fixed(x), Y = new Coordinate.Fixed(0) };
        foreach (var side in (double[])[1, -1])
        {
            var p = new NetworkPoint("P") { SketchXMetres = 0.2, SketchYMetres = 0.1 * side };
            var fit = Fit(
                new Network(
                    [Held("A", 0), Held("B", 1), p],
                    [new PlanDistance("1", "A", "P", 1, Sigma), new PlanDistance("2", "B", "P", 1, Sigma)]
                )
            );
            Assert.Equal(side * Math.Sqrt(0.75), fit.Point("P").YMetres!.Value, 9);
            Assert.False(fit.Datum.MirrorIsAssumed);
        }
    }

    [Fact]
    public void Solve_SignedOffsetSaysWhichOfTwoMirroredPlaces()
    {
        NetworkPoint Held(string id, double x) => new(id) { X = new Coordinate.Fixed(x), Y = new Coordinate.Fixed(0) };
        foreach (var side in (double[])[0.8, -0.8])
        {
            Observation[] readings =
            [
                new PlanDistance("1", "A", "P", 1, Sigma),
                new PlanDistance("2", "B", "P", double.Hypot(0.4, 0.8), Sigma),
                new Offset("3", "P", "A", "B", side, Sigma),
            ];
            var fit = Fit(new Network([Held("A", 0), Held("B", 1), new("P")], readings));
            Assert.Equal(0.6, fit.Point("P").XMetres!.Value, 9);
            Assert.Equal(side, fit.Point("P").YMetres!.Value, 9);
        }
    }

    [Fact]
    public void Solve_DirectLengthsOnlyWithoutSketch_FindsTheShapeInSpace()
    {
        var random = new Random(21);
        var truth = Frames.Ladder(5, random).Select((p, i) => p with { Z = p.Z + 0.5 * (i % 3) }).ToList();
        var readings = Frames.DirectLengths(truth, Sigma, 10, random).ToList();
        var fit = Fit(new Network(Frames.Unsketched(truth), readings));
        Assert.Equal(6, fit.Datum.FreeMotions.Count);
        Assert.True(fit.ChiSquareProbability > 1e-3, $"{fit.ChiSquareProbability}");
    }

    [Fact]
    public void Solve_DirectLengthsAndHeightsWithoutSketch_FindsTheShape()
    {
        var random = new Random(22);
        var truth = Frames.Ladder(8, random);
        Observation[] readings = [.. Frames.DirectLengths(truth, Sigma, 1.6, random), .. Frames.Heights(truth, Sigma, random)];
        var fit = Fit(new Network(Frames.Unsketched(truth), readings, null, Frames.Pairs(truth)));
        Assert.Equal([DatumMotion.ShiftX, DatumMotion.ShiftY, DatumMotion.TurnAboutZ], fit.Datum.FreeMotions);
        Assert.True(Frames.WorstDistance(fit, truth) < Close);
    }

    [Fact]
    public void Solve_LengthsThatContradictByMetres_GivesAFitWithoutNaN()
    {
        var truth = Frames.Ladder(5, new Random(9));
        var readings = Frames.PlanLengths(truth, Sigma, 10).Select((o, i) => i % 3 == 0 ? o with { ValueMetres = o.ValueMetres + 5 } : o);
        var fit = NetworkAdjustment.Solve(new Network(Frames.Sketched(truth), readings)).FitOrNull;
        Assert.NotNull(fit);
        Assert.All(fit.Readings, r => Assert.True(double.IsFinite(r.ResidualMetres)));
        Assert.True(fit.ChiSquareProbability < 1e-9);
    }
}
