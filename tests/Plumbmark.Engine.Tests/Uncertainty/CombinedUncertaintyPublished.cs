using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

/// <summary>JCGM 100:2008 (GUM), H.1, End-gauge calibration, and G.4.</summary>
public class CombinedUncertaintyPublished
{
    private const double Nano = 1e-9;

    [Fact]
    public void EndGauge_H1_CombinesTo32NanometresWith16DegreesOfFreedom()
    {
        // Inputs as printed in H.1.3; result printed: u_c = 32 nm, ν_eff = 16, t99 = 2.92, U99 = 93 nm (U99 from memory).
        var standard = UncertaintyComponent.Standard("standard", 25 * Nano, 18);
        var difference = CombinedUncertainty.Of(
            UncertaintyComponent.Repeats("repeats", new PooledRepeatability(13 * Nano, 24), readings: 5),
            UncertaintyComponent.Standard("comparator, random", 3.9 * Nano, 5),
            UncertaintyComponent.Standard("comparator, systematic", 6.7 * Nano, 8)
        );
        Assert.Equal(9.7, difference.StandardUncertainty / Nano, tolerance: 0.05);
        Assert.Equal(25.6, difference.DegreesOfFreedom, tolerance: 0.15); // printed from rounded uncertainties

        const double LengthMetres = 50.000623e-3;
        var total = CombinedUncertainty.Of(
            standard,
            difference.AsComponent("difference"),
            UncertaintyComponent.Rectangular("difference in expansion", 1e-6).DoubtedBy(0.10).Times(-0.1 * LengthMetres),
            UncertaintyComponent.Rectangular("difference in temperature", 0.05).DoubtedBy(0.50).Times(-11.5e-6 * LengthMetres)
        );
        Assert.Equal(32, total.StandardUncertainty / Nano, tolerance: 0.5);
        Assert.Equal(16, Math.Floor(total.DegreesOfFreedom));
        Assert.Equal(2.92, total.CoverageFactor(0.99), tolerance: 0.005);
        Assert.Equal(93, total.Expanded(0.99) / Nano, tolerance: 0.6); // printed is 2.92 times the rounded 32 nm

        // H.1.7: the second-order terms 11.7 nm and 1.7 nm raise u_c to 34 nm.
        var second = CombinedUncertainty.Of(
            total.AsComponent("first order"),
            UncertaintyComponent.Standard("expansion, temperature", 11.7 * Nano),
            UncertaintyComponent.Standard("expansion, bath", 1.7 * Nano)
        );
        Assert.Equal(34, second.StandardUncertainty / Nano, tolerance: 0.5);
    }

    [Fact]
    public void DoubtedBy_HalfOrTenPercent_GivesThePrintedDegreesOfFreedom()
    {
        // H.1.6: 10 % gives 50, 50 % gives 2; G.4.2 example: 25 % gives 8.
        Assert.Equal(50, UncertaintyComponent.Standard("", 1).DoubtedBy(0.10).DegreesOfFreedom, tolerance: 1e-9);
        Assert.Equal(2, UncertaintyComponent.Standard("", 1).DoubtedBy(0.50).DegreesOfFreedom, tolerance: 1e-9);
        Assert.Equal(8, UncertaintyComponent.Standard("", 1).DoubtedBy(0.25).DegreesOfFreedom, tolerance: 1e-9);
    }

    [Fact]
    public void WelchSatterthwaite_OneRepeatOneKnown_Gives12Point8()
    {
        // Worked example in the tests of sandialabs/suncal (commit d44c2cc): 0.57 with ν = 9 and 0.25 known: 12.8 (12.7956).
        var components = new[] { UncertaintyComponent.Standard("a", 0.57, 9), UncertaintyComponent.Standard("b", 0.25) };
        Assert.Equal(12.7956, EffectiveDegreesOfFreedom.Of(components), tolerance: 5e-5);
    }

    [Fact]
    public void ShapesOfDoubt_HaveTheGumsDivisors()
    {
        // JCGM 100:2008, 4.3.7 (a/√3), 4.3.9 (a/√6), F.2.2.1 (0.29 δx), 4.3.3 (U/k).
        Assert.Equal(0.5774, UncertaintyComponent.Rectangular("", 1).StandardUncertainty, tolerance: 5e-5);
        Assert.Equal(0.4082, UncertaintyComponent.Triangular("", 1).StandardUncertainty, tolerance: 5e-5);
        Assert.Equal(0.29, UncertaintyComponent.Division("", 1).StandardUncertainty, tolerance: 0.005);
        Assert.Equal(25, UncertaintyComponent.Expanded("", 75, 3).StandardUncertainty);
    }
}
