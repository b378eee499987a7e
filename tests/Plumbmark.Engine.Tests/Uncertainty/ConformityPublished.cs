using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class ConformityPublished
{
    [Fact]
    public void Jcgm106_Examples_HaveThePrintedProbabilities()
    {
        // JCGM 106:2012, clause 7 (inputs from memory): breakdown voltage of a diode 0.92, bursting strength 0.99, viscosity of an oil 0.66.
        Assert.Equal(0.92, ConformityProbability.AtMost(-5.47, 0.05, -5.40), tolerance: 0.005);
        Assert.Equal(0.99, ConformityProbability.AtLeast(509.7, 8.6, 490), tolerance: 0.005);
        Assert.Equal(0.66, ConformityProbability.Between(13.6, 1.8, 12.5, 16.3), tolerance: 0.005);
        // The same to six digits, own computation.
        Assert.Equal(0.919243, ConformityProbability.AtMost(-5.47, 0.05, -5.40), tolerance: 5e-7);
        Assert.Equal(0.989010, ConformityProbability.AtLeast(509.7, 8.6, 490), tolerance: 5e-7);
        Assert.Equal(0.662630, ConformityProbability.Between(13.6, 1.8, 12.5, 16.3), tolerance: 5e-7);
    }

    [Theory]
    // sandialabs/suncal (commit d44c2cc), example on the risk of one measurement: limits 9 and 11, u = 0.4.
    [InlineData(10, 0.01242)]
    [InlineData(10.5, 0.10574)]
    [InlineData(12, 0.99379)]
    public void Between_AgreesWithAnotherProgramsRisk(double value, double outside) =>
        Assert.Equal(outside, 1 - ConformityProbability.Between(value, 0.4, 9, 11), tolerance: 5e-6);

    [Theory]
    // Own computation, on the scale of a frame: limits ±3 mm, u = 0.8 mm.
    [InlineData(2.0, 0.894350)]
    [InlineData(3.0, 0.500000)]
    [InlineData(-3.5, 0.265986)]
    public void Between_OnTheScaleOfAFrame(double value, double within) =>
        Assert.Equal(within, ConformityProbability.Between(value, 0.8, -3, 3), tolerance: 5e-7);

    [Theory]
    // ISO 14253-1:2017 takes 95 % (from memory: g = 1.65 u); exact two-sided guards inside ±3 by own computation, in units of u.
    [InlineData(0.1, 1.644854)]
    [InlineData(0.5, 1.644854)]
    [InlineData(1.0, 1.644918)]
    [InlineData(1.2, 1.648767)]
    [InlineData(1.5, 1.796213)]
    public void Guard_InsideTwoLimits(double u, double inUnitsOfU)
    {
        var guard = Assert.IsType<GuardBand.Guard>(GuardBand.TwoSided(3, u, 0.95));
        Assert.Equal(inUnitsOfU, guard.Width / u, tolerance: 5.1e-7);
    }

    [Fact]
    public void Guard_BeyondTheBestThereIs_LeavesNoAcceptanceZone()
    {
        // Own computation: 2Φ(3/u) − 1 falls below 0.95 at u = 3/1.959964 = 1.5306.
        Assert.IsType<GuardBand.Guard>(GuardBand.TwoSided(3, 1.5306, 0.95));
        var none = Assert.IsType<GuardBand.NoAcceptanceZone>(GuardBand.TwoSided(3, 1.5307, 0.95));
        Assert.InRange(none.BestProbability, 0.9499, 0.95);
    }

    [Fact]
    public void Jcgm106_Bearing_GlobalConsumerRiskAndAcceptanceLimit()
    {
        // JCGM 106:2012, 9.5.4: run-out of bearings, prior gamma(4, rate 4 per µm), limit 2 µm, u = 0.25 µm.
        // P(Y > 2) = 0.0424, consumer's risk 0.0080 without a guard, and 0.1 % with the acceptance limit 1.67 µm.
        Assert.Equal(0.04238011, ChiSquare.UpperTail(2 * 4 * 2, 2 * 4), tolerance: 5e-9);
        Assert.Equal(0.00801911, ConsumersRisk(2), tolerance: 5e-8);
        Assert.Equal(0.001, ConsumersRisk(1.67182877), tolerance: 5e-9);

        // ∫ from 2 µm up of prior(η) Φ((A − η)/u), by Simpson's rule; the normal factor ends it long before 6 µm.
        static double ConsumersRisk(double acceptanceLimit)
        {
            const int Steps = 4000;
            const double H = (6.0 - 2) / Steps;
            double Integrand(double eta) => 8 * ChiSquare.Density(8 * eta, 8) * Normal.Cumulative((acceptanceLimit - eta) / 0.25);
            return Enumerable
                    .Range(0, Steps + 1)
                    .Sum(i =>
                        Integrand(2 + i * H)
                        * (
                            i is 0 or Steps ? 1
                            : i % 2 == 1 ? 4
                            : 2
                        )
                    )
                * H
                / 3;
        }
    }

    [Fact]
    public void Holm_AgreesWithPublishedAdjustments()
    {
        // dirkschumacher/PValueAdjust.jl, test/runtests.jl and README.
        Near([0.1, 0.09, 0.04, 0.5], HolmStepDown.Adjusted([0.05, 0.03, 0.01, 0.5]));
        Near([1, 1, 0.3, 5e-3, 6e-4, 8e-3], HolmStepDown.Adjusted([1, 0.5, 0.1, 0.001, 0.0001, 0.002]));
        Near([0.15, 0.15, 0.15], HolmStepDown.Adjusted([0.05, 0.05, 0.05]));
        Near([0.5], HolmStepDown.Adjusted([0.5]));

        static void Near(double[] expected, double[] actual)
        {
            Assert.Equal(expected.Length, actual.Length);
            Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, tolerance: 1e-12));
        }
    }
}
