using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

/// <summary>JCGM 101:2008, clause 9.2 (the additive model), and the reference outputs of the generator.</summary>
public class MonteCarloPublished
{
    private const int Trials = 200_000;

    [Fact]
    public void AdditiveModel_FourNormals_9_2_2()
    {
        // Printed: y = 0, u = 2.0, 95 % interval ±3.92.
        var result = Propagated(draw => draw.Normal() + draw.Normal() + draw.Normal() + draw.Normal());
        Assert.Equal(0, result.Estimate, tolerance: 0.02); // 4.5 standard deviations of the mean of 200 000
        Assert.Equal(2.0, result.StandardUncertainty, tolerance: 0.02);
        var interval = result.SymmetricInterval(0.95);
        // Clause 8 with two significant digits, δ = 0.05: linear propagation may be trusted here.
        Assert.Equal(0.05, MonteCarloAgreement.Tolerance(2.0, 2), tolerance: 1e-12);
        Assert.True(MonteCarloAgreement.Holds(new CoverageInterval(-3.92, 3.92), interval, 0.05), $"{interval}");
    }

    [Fact]
    public void AdditiveModel_FourRectangulars_9_2_3()
    {
        // Printed: u = 2.0, 95 % interval ±3.88 (the GUM's ±3.92 is not as sharp); each input has standard deviation 1.
        var half = Math.Sqrt(3);
        var result = Propagated(draw => Enumerable.Range(0, 4).Sum(_ => draw.Rectangular(-half, half)));
        Assert.Equal(2.0, result.StandardUncertainty, tolerance: 0.02);
        var interval = result.SymmetricInterval(0.95);
        Assert.Equal(-3.88, interval.Low, tolerance: 0.03);
        Assert.Equal(3.88, interval.High, tolerance: 0.03);
    }

    [Fact]
    public void Logarithm_OfARectangular_AgreesWithTheBestPracticeReport()
    {
        // NPL report DEM-ES-011, 9.2: y = ln x, x even over 0.1 to 1.1: −0.665, u 0.606, shortest 95 % interval [−1.895; 0.095].
        var result = Propagated(draw => Math.Log(draw.Rectangular(0.1, 1.1)));
        Assert.Equal(-0.665, result.Estimate, tolerance: 0.006);
        Assert.Equal(0.606, result.StandardUncertainty, tolerance: 0.005);
        var shortest = result.ShortestInterval(0.95);
        Assert.Equal(-1.895, shortest.Low, tolerance: 0.02);
        Assert.Equal(0.095, shortest.High, tolerance: 0.005);
        // And linear propagation fails there: −0.511 with U = 0.94 (u = 0.481).
        Assert.False(
            MonteCarloAgreement.Holds(
                new CoverageInterval(-0.511 - 0.943, -0.511 + 0.943),
                shortest,
                MonteCarloAgreement.Tolerance(0.481, 1)
            )
        );
    }

    [Fact]
    public void Generator_GivesTheReferenceOutputs()
    {
        // xoshiro256** from the state 1, 2, 3, 4; the same list stands in the tests of several implementations.
        ulong[] reference =
        [
            11520,
            0,
            1509978240,
            1215971899390074240,
            1216172134540287360,
            607988272756665600,
            16172922978634559625,
            8476171486693032832,
            10595114339597558777,
            2904607092377533576,
        ];
        var stream = RandomStream.FromState(1, 2, 3, 4);
        Assert.Equal(reference, reference.Select(_ => stream.Bits()));

        // SplitMix64 from 1234567, which fills the state; from memory of the published list.
        var filled = RandomStream.FromState(6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431);
        Assert.Equal(filled.Bits(), new RandomStream(1234567).Bits());
    }

    [Theory]
    // JCGM 101:2008, 7.9.2, examples: 0.000 35 g with two digits: c = 35, l = −5; 2 K with one digit: c = 2, l = 0.
    [InlineData(0.00035, 2, 0.5e-5)]
    [InlineData(2, 1, 0.5)]
    [InlineData(9.96, 2, 0.5)]
    [InlineData(32, 2, 0.5)]
    [InlineData(32, 1, 5)]
    public void Tolerance_IsHalfTheLastDigit(double u, int digits, double delta) =>
        Assert.Equal(delta, MonteCarloAgreement.Tolerance(u, digits), tolerance: 1e-12 * delta);

    private static OutputDistribution Propagated(Func<RandomStream, double> trial) =>
        Assert.IsType<MonteCarloOutcome.Propagated>(MonteCarlo.Propagate(trial, Trials, seed: 2008)).Distribution;
}
