using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class DistributionLaws
{
    private static readonly Gen<double> s_degrees = Gen.Double[0.0, 4.0].Select(e => Math.Pow(10, e));
    private static readonly Gen<double> s_tails = Gen.Double[-12.0, -1e-9].Select(e => Math.Pow(10, e));

    [Fact]
    public void Quantile_TurnsTheCumulativeRound() =>
        Gen.Select(s_tails, s_degrees, s_degrees)
            .Sample(
                (p, a, b) =>
                {
                    Near(p, Normal.Cumulative(Normal.Quantile(p)));
                    Near(p, StudentT.UpperTail(StudentT.UpperQuantile(p, a), a));
                    Near(p, ChiSquare.Cumulative(ChiSquare.Quantile(p, a), a));
                    Near(p, ChiSquare.UpperTail(ChiSquare.UpperQuantile(p, a), a));
                    Near(p, FisherF.Cumulative(FisherF.Quantile(p, a, b), a, b));
                    Near(p, FisherF.UpperTail(FisherF.UpperQuantile(p, a, b), a, b));
                },
                iter: 300
            );

    [Fact]
    public void TwoTails_AddToOne() =>
        Gen.Select(Gen.Double[0, 60], s_degrees, s_degrees, Gen.Double[0, 100])
            .Sample(
                (x, a, b, lambda) =>
                {
                    Assert.Equal(1, Normal.Cumulative(x) + Normal.UpperTail(x), tolerance: 1e-14);
                    Assert.Equal(1, StudentT.Cumulative(x, a) + StudentT.UpperTail(x, a), tolerance: 1e-14);
                    Assert.Equal(1, ChiSquare.Cumulative(x, a) + ChiSquare.UpperTail(x, a), tolerance: 1e-13);
                    Assert.Equal(1, FisherF.Cumulative(x, a, b) + FisherF.UpperTail(x, a, b), tolerance: 1e-12);
                    Assert.Equal(
                        1,
                        NonCentralChiSquare.Cumulative(x, a, lambda) + NonCentralChiSquare.UpperTail(x, a, lambda),
                        tolerance: 1e-12
                    );
                },
                iter: 300
            );

    [Fact]
    public void SquaredT_IsF_AndSquaredNormalIsChiSquare() =>
        Gen.Select(Gen.Double[0.001, 20], s_degrees)
            .Sample(
                (t, nu) =>
                {
                    Near(2 * StudentT.UpperTail(t, nu), FisherF.UpperTail(t * t, 1, nu));
                    Near(2 * Normal.UpperTail(t), ChiSquare.UpperTail(t * t, 1));
                    Near(StudentT.Density(t, nu), t * FisherF.Density(t * t, 1, nu));
                    Near(Normal.Density(t), t * ChiSquare.Density(t * t, 1));
                }
            );

    [Fact]
    public void FullerTurnedOver_IsFWithDegreesExchanged() =>
        Gen.Select(Gen.Double[0.01, 50], s_degrees, s_degrees)
            .Sample((x, a, b) => Near(FisherF.Cumulative(x, a, b), FisherF.UpperTail(1 / x, b, a)));

    [Fact]
    public void Density_IsTheSlopeOfTheCumulative() =>
        Gen.Select(Gen.Double[0.2, 8], s_degrees)
            .Sample(
                (x, nu) =>
                {
                    const double H = 1e-5; // central difference: error about h² f'' ~ 1e-10, rounding 1e-16/h ~ 1e-11
                    Assert.Equal((Normal.Cumulative(x + H) - Normal.Cumulative(x - H)) / (2 * H), Normal.Density(x), tolerance: 1e-8);
                    Assert.Equal(
                        (StudentT.Cumulative(x + H, nu) - StudentT.Cumulative(x - H, nu)) / (2 * H),
                        StudentT.Density(x, nu),
                        tolerance: 1e-8
                    );
                    Assert.Equal(
                        (ChiSquare.Cumulative(x + H, nu) - ChiSquare.Cumulative(x - H, nu)) / (2 * H),
                        ChiSquare.Density(x, nu),
                        tolerance: 1e-8
                    );
                    Assert.Equal(
                        (FisherF.Cumulative(x + H, nu, 6) - FisherF.Cumulative(x - H, nu, 6)) / (2 * H),
                        FisherF.Density(x, nu, 6),
                        tolerance: 1e-7
                    );
                }
            );

    [Fact]
    public void NonCentral_WithOneDegree_IsAShiftedNormalSquared() =>
        Gen.Select(Gen.Double[0.01, 8], Gen.Double[0, 8])
            .Sample(
                (k, delta) =>
                    Near(
                        Normal.UpperTail(k - delta) + Normal.Cumulative(-k - delta),
                        NonCentralChiSquare.UpperTail(k * k, 1, delta * delta)
                    )
            );

    [Fact]
    public void Lambda0_GivesThePowerAskedFor() =>
        Gen.Select(Gen.Double[0.0005, 0.1], Gen.Double[0.02, 0.5], Gen.Int[1, 60])
            .Sample(
                (alpha, beta, nu) =>
                    Near(
                        1 - beta,
                        NonCentralChiSquare.UpperTail(ChiSquare.UpperQuantile(alpha, nu), nu, BaardaReliability.Lambda0(alpha, beta, nu))
                    ),
                iter: 200
            );

    private static void Near(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= 2e-12 * Math.Abs(expected), $"expected {expected:R}, got {actual:R}");
}
