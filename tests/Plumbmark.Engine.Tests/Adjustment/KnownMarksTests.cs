using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>One unknown point beside marks that are known: each way round an obstacle by its plain geometry (own computation).</summary>
public class KnownMarksTests
{
    private const double Sigma = 0.001;

    // Far from zero, so that what belongs to the origin is seen to be put on and taken off.
    private static readonly NetworkPoint[] s_marks = [Known("M", 105, -43), Known("N", 107, -41.5)];

    [Fact]
    public void Midpoint_IsTheMean() => Lies(106, -42.25, new MidpointDrop("d", "P", "M", "N", Sigma));

    [Fact]
    public void Step_IsForwardAndLeftOfItsMark() => Lies(105.07, -43.03, new OffsetDrop("d", "P", "M", 0.07, -0.03, Sigma));

    // The line hangs from the left edge, 120 degrees from forward: the middle lies half a diameter back from there.
    [Fact]
    public void HoleEdge_LiesHalfADiameterFromTheMiddle()
    {
        const double Direction = 2 * Math.PI / 3;
        Lies(
            105 - 0.01 * Math.Cos(Direction),
            -43 - 0.01 * Math.Sin(Direction),
            new HoleEdgeDrop("d", "P", "M", DiameterMetres: 0.02, Direction, Sigma)
        );
    }

    // A bar of 2.5 m from (105, -43) to (107, -41.5): its direction is (0.8, 0.6).
    [Fact]
    public void Bar_LiesItsStandOffInwardFromTheNearEnd() =>
        Lies(105 + 0.8 * 0.3, -43 + 0.6 * 0.3, new BarDrop("d", "P", "M", "N", StandOffMetres: 0.3, Sigma));

    [Fact]
    public void APrior_IsAPlaceInTheNetworksOwnAxes() =>
        Lies(104.5, -44, new CoordinatePrior("x", "P", Axis.X, 104.5, Sigma), new CoordinatePrior("y", "P", Axis.Y, -44, Sigma));

    // The datum is a promise: what was given as fixed comes back to the last digit, whatever origin is used inside.
    [Fact]
    public void AFixedPlace_ComesBackAsItWasGiven()
    {
        const double Given = 12345.678901234567;
        var fit = Fit([Known("M", Given, -Given / 3)], [new OffsetDrop("d", "P", "M", 0.1, 0.2, Sigma)]);
        Assert.Equal((Given, -Given / 3), (fit.Point("M").XMetres, fit.Point("M").YMetres));
    }

    // Two of the same weight for each axis: each of the four equations is checked by half. The number of a reading of two equations is that of either.
    [Fact]
    public void AReadingOfTwoEquations_HasTheRedundancyOfOne()
    {
        var fit = Fit(
            s_marks,
            [
                new MidpointDrop("d", "P", "M", "N", Sigma),
                new CoordinatePrior("x", "P", Axis.X, 106, Sigma),
                new CoordinatePrior("y", "P", Axis.Y, -42.25, Sigma),
            ]
        );
        Assert.Equal(2, fit.Redundancy);
        Assert.All(fit.Readings, r => Assert.Equal(0.5, r.RedundancyNumber, 1e-9));
    }

    [Fact]
    public void AReadingThatNothingChecks_HasNoRedundancy()
    {
        var fit = Fit(s_marks, [new MidpointDrop("d", "P", "M", "N", Sigma)]);
        Assert.Equal(
            (0.0, null, null),
            (fit.Readings[0].RedundancyNumber, fit.Readings[0].Standardised, fit.Readings[0].MinimalDetectableMetres)
        );
    }

    // Over a known 2.5 m the tape shows 2 mm too much. Scale known to 1 in 1,000 and reading to 1 mm: the posterior mean of the scale is
    // L·d/σ² / (L²/σ² + 1/τ²) = 2.5 * 2 / (6.25 + 1) in 1/1,000, its u is 1/√(6.25 + 1) in 1/1,000 (conjugate normal law, own computation).
    [Fact]
    public void ATape_ToldByAKnownLength()
    {
        var tape = new NetworkTool("tape") { ZeroMetres = 0.004, ScaleSigma = 1e-3 };
        var network = new Network(s_marks, [new PlanDistance("l", "M", "N", 2.5 + 0.004 + 0.002, Sigma, "tape")], [tape]);
        var told = Assert.Single(Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit.Tools);
        Assert.Equal(("tape", 0.004, 0.0), (told.Id, told.ZeroMetres, told.ZeroSigmaMetres));
        Assert.Equal(2.5 * 2 / 7.25 * 1e-3, told.Scale, 1e-9);
        Assert.Equal(1e-3 / Math.Sqrt(7.25), told.ScaleSigma, 1e-9);
    }

    // Welch-Satterthwaite of one share alone is the degrees of freedom of that share (JCGM 100:2008, G.4.1).
    [Fact]
    public void OneReadingOfALearntSpread_GivesItsDegreesOfFreedom()
    {
        var fit = Fit(s_marks, [new Height("h", "P", 0.3, Sigma)]);
        var gradient = new double[fit.Covariance.Count];
        gradient[fit.Covariance.IndexOf("P", Axis.Z)!.Value] = 1;
        Assert.Equal(4, fit.DegreesOfFreedomOf(gradient, _ => ("level", 4), _ => null), 1e-9);
        Assert.Equal(double.PositiveInfinity, fit.DegreesOfFreedomOf(gradient, _ => null, _ => null));
    }

    // Five braced points are more than two fixed ones, but it is the fixed ones that say where the rest should be.
    [Fact]
    public void WhatIsFixed_IsTheReference_HoweverFewItIs()
    {
        var apart = Frames.Ladder(3, new Random(4));
        List<Observation> readings =
        [
            .. Frames.PlanLengths(apart, Sigma, 3),
            new PlanDistance("m", "M", "P", 1, Sigma),
            new PlanDistance("n", "N", "P", 2, Sigma),
        ];
        var p = new NetworkPoint("P") { SketchXMetres = 105, SketchYMetres = -42 };
        var outcome = NetworkAdjustment.Solve(new Network([.. Frames.Sketched(apart), .. s_marks, p], readings));
        var loose = Assert.IsType<NetworkOutcome.Loose>(outcome);
        Assert.Equal(apart.Select(a => a.Id), loose.Defect.Floating.Select(f => f.Point));
        Assert.Equal(apart.Select(a => a.Id), Assert.Single(loose.Defect.Groups));
        Assert.Equal(3, loose.Defect.MissingReadings);
    }

    private static NetworkPoint Known(string id, double x, double y) =>
        new(id) { X = new Coordinate.Fixed(x), Y = new Coordinate.Fixed(y) };

    private static NetworkFit Fit(IEnumerable<NetworkPoint> marks, IEnumerable<Observation> readings) =>
        Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(new Network([new NetworkPoint("P"), .. marks], readings))).Fit;

    private static void Lies(double x, double y, params Observation[] readings)
    {
        var point = Fit(s_marks, readings).Point("P");
        Assert.Equal(x, point.XMetres!.Value, 1e-12);
        Assert.Equal(y, point.YMetres!.Value, 1e-12);
        Assert.Equal(Sigma, point.UxMetres!.Value, 1e-12);
        Assert.Equal(Sigma, point.UyMetres!.Value, 1e-12);
    }
}
