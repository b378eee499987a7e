using MathNet.Numerics.Distributions;
using Plumbmark.Engine.Uncertainty;
using Library = MathNet.Numerics.Distributions;
using Normal = Plumbmark.Engine.Uncertainty.Normal;
using StudentT = Plumbmark.Engine.Uncertainty.StudentT;

namespace Plumbmark.Engine.Tests.Uncertainty;

/// <summary>Against Math.NET Numerics (whose own incomplete gamma and beta give about ten digits), and at the limits.</summary>
public class DistributionTests
{
    private static readonly double[] s_degrees = [1, 2, 3.5, 7, 20];
    private static readonly double[] s_places = [0.01, 0.3, 1, 2, 5, 12];
    private static readonly double[] s_probabilities = [0.001, 0.05, 0.3, 0.5, 0.8, 0.99];

    [Fact]
    public void CumulativesAndDensities_AgreeWithALibrary()
    {
        foreach (var x in s_places)
        {
            Same(Library.Normal.CDF(0, 1, -x), Normal.Cumulative(-x));
            Same(Library.Normal.PDF(0, 1, x), Normal.Density(x));
            foreach (var nu in s_degrees)
            {
                Same(Library.StudentT.CDF(0, 1, nu, -x), StudentT.Cumulative(-x, nu));
                Same(Library.StudentT.PDF(0, 1, nu, x), StudentT.Density(x, nu));
                Same(ChiSquared.CDF(nu, x), ChiSquare.Cumulative(x, nu));
                Same(ChiSquared.PDF(nu, x), ChiSquare.Density(x, nu));
                Same(FisherSnedecor.CDF(nu, 9, x), FisherF.Cumulative(x, nu, 9));
                Same(FisherSnedecor.PDF(nu, 9, x), FisherF.Density(x, nu, 9));
            }
        }
    }

    [Fact]
    public void Quantiles_AgreeWithALibrary()
    {
        foreach (var p in s_probabilities)
        {
            Same(Library.Normal.InvCDF(0, 1, p), Normal.Quantile(p));
            foreach (var nu in s_degrees)
            {
                Same(Library.StudentT.InvCDF(0, 1, nu, p), StudentT.Quantile(p, nu), within: 1e-6);
                Same(ChiSquared.InvCDF(nu, p), ChiSquare.Quantile(p, nu), within: 1e-6);
                Same(FisherSnedecor.InvCDF(nu, 9, p), FisherF.Quantile(p, nu, 9), within: 1e-6);
            }
        }
    }

    [Fact]
    public void Quantiles_FarInTheTails_ComeBack()
    {
        foreach (var p in new[] { 1e-250, 1e-100, 1e-20 })
        {
            Same(p, Normal.Cumulative(Normal.Quantile(p)), within: 1e-12);
            Same(p, ChiSquare.UpperTail(ChiSquare.UpperQuantile(p, 12), 12), within: 1e-12);
            Same(p, ChiSquare.Cumulative(ChiSquare.Quantile(p, 12), 12), within: 1e-12);
            Same(p, StudentT.UpperTail(StudentT.UpperQuantile(p, 6), 6), within: 1e-12);
            Same(p, FisherF.UpperTail(FisherF.UpperQuantile(p, 4, 7), 4, 7), within: 1e-12);
        }
    }

    [Fact]
    public void InfiniteDegreesOfFreedom_AreTheKnownVariance()
    {
        Assert.Equal(Normal.Cumulative(1.3), StudentT.Cumulative(1.3, double.PositiveInfinity));
        Assert.Equal(Normal.Quantile(0.95), StudentT.Quantile(0.95, double.PositiveInfinity));
        Assert.Equal(Normal.Cumulative(1.3), StudentT.Cumulative(1.3, 1e9), tolerance: 1e-9);
        Assert.Equal(ChiSquare.UpperTail(10, 5), FisherF.UpperTail(2, 5, double.PositiveInfinity));
        Assert.Equal(ChiSquare.UpperQuantile(0.05, 5) / 5, FisherF.UpperQuantile(0.05, 5, double.PositiveInfinity), tolerance: 1e-12);
    }

    [Fact]
    public void Ends_AreExact()
    {
        Assert.Equal(
            (0.0, 0.5, 1.0),
            (Normal.Cumulative(double.NegativeInfinity), Normal.Cumulative(0), Normal.Cumulative(double.PositiveInfinity))
        );
        Assert.Equal(
            (double.NegativeInfinity, 0.0, double.PositiveInfinity),
            (Normal.Quantile(0), Normal.Quantile(0.5), Normal.Quantile(1))
        );
        Assert.Equal((0.0, 1.0), (ChiSquare.Cumulative(0, 3), ChiSquare.UpperTail(0, 3)));
        Assert.Equal((1.0, 0.0), (ChiSquare.Cumulative(double.PositiveInfinity, 3), ChiSquare.UpperTail(double.PositiveInfinity, 3)));
        Assert.Equal((0.0, double.PositiveInfinity), (ChiSquare.Quantile(0, 3), ChiSquare.Quantile(1, 3)));
        Assert.Equal(
            (0.5, 1.0, 0.0),
            (StudentT.Cumulative(0, 3), StudentT.Cumulative(double.PositiveInfinity, 3), StudentT.UpperTail(double.PositiveInfinity, 3))
        );
        Assert.Equal(
            (double.NegativeInfinity, 0.0, double.PositiveInfinity),
            (StudentT.Quantile(0, 3), StudentT.Quantile(0.5, 3), StudentT.Quantile(1, 3))
        );
        Assert.Equal((0.0, 1.0), (FisherF.Cumulative(0, 3, 4), FisherF.UpperTail(0, 3, 4)));
        Assert.Equal((0.0, double.PositiveInfinity), (FisherF.Quantile(0, 3, 4), FisherF.UpperQuantile(0, 3, 4)));
        Assert.Equal(0.5, ChiSquare.Density(0, 2));
        Assert.Equal(double.PositiveInfinity, ChiSquare.Density(0, 1));
    }

    [Fact]
    public void WhatIsNoNumberOrNoProbability_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Cumulative(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantile(1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Cumulative(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(double.NaN, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => ChiSquare.Cumulative(-1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => FisherF.Cumulative(1, double.PositiveInfinity, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => NonCentralChiSquare.Cumulative(1, 3, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => BaardaReliability.Delta0(0.2, 0.9));
    }

    private static void Same(double expected, double actual, double within = 1e-9) =>
        Assert.True(Math.Abs(expected - actual) <= within * Math.Abs(expected) + 1e-15, $"expected {expected:R}, got {actual:R}");

    /// <summary>A sum of uncertainties, one of which is known to all digits and outweighs the rest, has as many degrees of freedom as that.</summary>
    [Theory]
    [InlineData(1e14)]
    [InlineData(1e15)]
    [InlineData(1e18)]
    [InlineData(3.204008355590047e32)]
    [InlineData(1e300)]
    public void StudentT_OfVeryManyDegreesOfFreedom_IsNormal(double degreesOfFreedom)
    {
        foreach (var t in new[] { 0, 1e-12, 1e-9, 1e-3, 1, 2, 5 })
        {
            var normal = Normal.UpperTail(t);
            Assert.Equal(normal, StudentT.UpperTail(t, degreesOfFreedom), 1e-11 * normal); // t^4 / 4 nu at 1e14
            Assert.Equal(1, StudentT.UpperTail(t, degreesOfFreedom) + StudentT.Cumulative(t, degreesOfFreedom), 1e-12);
        }

        // Limits that are next to nothing beside the uncertainty: little is known, and that is a probability too.
        Assert.InRange(ConformityProbability.Between(0.017, 19315, -0.003175, 0.003175, degreesOfFreedom), 0, 1e-6);
    }
}
