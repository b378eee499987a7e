using Plumbmark.Engine.Bending;

namespace Plumbmark.Engine.Tests.Bending;

/// <summary>What the planner believes after the bites of a bar whose truth is known.</summary>
public class BiteModelTests
{
    private static readonly CrossSection s_section = CrossSection.Rectangle(0.03, 0.012);
    private static readonly BiteNoise s_noise = new(0.1e-3, 0.1e-3);

    [Fact]
    public void AtTheStart_TheBeliefIsTheYieldRange()
    {
        var (start, bend) = Start();
        var yield = start.YieldTravelMetres;
        Assert.Equal(bend.YieldTravelMetres, yield.Middle, 0.02 * bend.YieldTravelMetres);
        Assert.InRange(yield.Low / bend.YieldTravelMetres, 0.6, 0.85);
        Assert.InRange(yield.High / bend.YieldTravelMetres, 1.15, 1.6);
    }

    [Fact]
    public void BitesOfAPlainBar_TeachItsSpringBack()
    {
        var (start, _) = Start();
        var truth = Truth(yieldPascals: 300e6);
        var belief = start;
        foreach (var total in (double[])[0.5e-3, 1.5e-3, 2.5e-3])
        {
            belief = belief.After(Bite(truth, belief.SetSoFarMetres, total));
        }

        var next = truth.BiteForSet(3.0e-3)!;
        var expected = belief.SpringBackMetres(0.5e-3);
        Assert.Equal(next.SpringBackMetres, expected.Middle, 0.15e-3);
        Assert.True(expected.High - expected.Low < 0.8e-3);
        Assert.InRange(belief.SetForTravelMetres(next.TravelMetres - 2.5e-3).Middle, 0.3e-3, 0.7e-3);
    }

    [Fact]
    public void ABiteWithoutSet_MovesTheBeliefUp()
    {
        var (start, bend) = Start();
        var travel = 1.05 * bend.YieldTravelMetres;
        var after = start.After(new(travel, 0, 0));
        Assert.True(after.YieldTravelMetres.Middle > start.YieldTravelMetres.Middle);
        Assert.True(after.TravelForSetMetres(0.5e-3).Low > start.TravelForSetMetres(0.5e-3).Low);
    }

    [Fact]
    public void AnEarlySet_IsBelievedToBeEarlyYield()
    {
        var (start, bend) = Start();
        var d = bend.YieldTravelMetres;

        // Sets long before first yield, then the spring-back climbs: what a part bent the other way does.
        var belief = start
            .After(new(0.72 * d, 0, 0.07 * d))
            .After(new(0.98 * d, 0.07 * d, 0.14 * d))
            .After(new(1.35 * d, 0.21 * d, 0.25 * d));
        Assert.True(belief.EarlyYield > start.EarlyYield + 0.1);
    }

    [Fact]
    public void TravelAndSet_AreEachOthersInverse()
    {
        var (start, _) = Start();
        var belief = start.After(new(9.0e-3, 0, 1.2e-3));
        var travel = belief.TravelForSetMetres(1e-3).Middle;
        Assert.Equal(1e-3, belief.SetForTravelMetres(travel).Middle, 0.05e-3);
    }

    [Fact]
    public void OneMisreadBite_DoesNotWipeOutTheRest()
    {
        var truth = Truth(300e6);
        var belief = Start().Belief;
        foreach (var total in (double[])[0.5e-3, 1.0e-3, 1.5e-3])
        {
            belief = belief.After(Bite(truth, belief.SetSoFarMetres, total));
        }

        var sane = belief.SpringBackMetres(0.5e-3).Middle;
        var shaken = belief.After(new(belief.SpringBackMetres(0).Middle + 3e-3, 1.5e-3, 0.5e-3)).SpringBackMetres(0.5e-3).Middle;
        Assert.Equal(sane, shaken, 0.1 * sane);
    }

    private static (BiteBelief Belief, ThreePointBend Bend) Start()
    {
        var range = new YieldRange(240e6, 360e6);
        var bend = Truth(range.MiddlePascals);
        var prior = BitePrior.From(bend, range, 0.08, readAtPart: true);
        return (new BiteModel(s_section, bend.Curve.Steel.YieldStrain, prior, s_noise).Start, bend);
    }

    private static ThreePointBend Truth(double yieldPascals) =>
        new(new MomentCurvature(s_section, new Steel(205e9, yieldPascals, 0.004)), 0.2, 0.2);

    private static ObservedBite Bite(ThreePointBend truth, double before, double total)
    {
        // After a set the bar is elastic up to the load it has seen, so the curve of the first loading simply goes on.
        var bite = truth.BiteForSet(total)!;
        return new(bite.TravelMetres - before, before, total - before);
    }
}
