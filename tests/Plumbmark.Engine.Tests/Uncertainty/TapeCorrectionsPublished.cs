using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class TapeCorrectionsPublished
{
    private const double KilogramForce = 9.80665;

    [Fact]
    public void GhilaniAndWolf_Example61_GivesEachCorrectionAndTheLength()
    {
        // Ghilani & Wolf, Elementary Surveying, example 6.1; inputs from memory, results recomputed. E = 2 000 000 kg/cm².
        const double Recorded = 114.095;
        var length = TapeCorrections.Length(Recorded, 30.012, 30);
        var temperature = TapeCorrections.Temperature(Recorded, 14, 20);
        var pull = TapeCorrections.Pull(Recorded, 9.09, 5.45, 0.050, 2e6); // kg and cm² as in the book
        var sag = 3 * TapeCorrections.Sag(30, 0.03967, 9.09) + TapeCorrections.Sag(24.095, 0.03967, 9.09);
        Assert.Equal(0.04564, length, tolerance: 5e-6);
        Assert.Equal(-0.00794, temperature, tolerance: 5e-6);
        Assert.Equal(0.00415, pull, tolerance: 5e-6);
        Assert.Equal(-0.07538, sag, tolerance: 5e-6);
        Assert.Equal(114.0615, Recorded + length + temperature + pull + sag, tolerance: 5e-5);
    }

    [Fact]
    public void ThirtyMetreTape_SetOut27Times_AgreesWithTheWorkedQuestion()
    {
        // engineeringcivil.com, numerical question on tape corrections (its pull is printed in kN by mistake).
        const double SectionSquareMetres = 4e-6;
        var temperature = TapeCorrections.Temperature(30, 30, 20, 11.7e-6);
        var pull = TapeCorrections.Pull(30, 120, 75, SectionSquareMetres, 2.1e11);
        var sag = TapeCorrections.Sag(30, 7.8e4 * SectionSquareMetres, 120);
        Assert.Equal((3.510, 1.607, -7.605), (Math.Round(1000 * temperature, 3), Math.Round(1000 * pull, 3), Math.Round(1000 * sag, 3)));
        Assert.Equal(809.93283, 27 * (30 + temperature + pull + sag), tolerance: 5e-6);
    }

    [Fact]
    public void FiftyMetreTape_HeldEveryTenMetres_Shortens53Millimetres()
    {
        // curioustab.com: 50 m tape of 4 kg under 5 kg, supported each 10 m: 0.053 m; hung free from its ends 1.33 m.
        var weight = 4 * KilogramForce / 50;
        Assert.Equal(-0.053, 5 * TapeCorrections.Sag(10, weight, 5 * KilogramForce), tolerance: 5e-4);
        Assert.Equal(-1.33, TapeCorrections.Sag(50, weight, 5 * KilogramForce), tolerance: 5e-3);
    }

    [Fact]
    public void OnTheScaleOfAFrame_CorrectionsAreSmall()
    {
        // Own computation: 3 m of tape, 0.16 N/m.
        Assert.Equal(-0.072000e-3, TapeCorrections.Sag(3, 0.16, 20), tolerance: 5e-10);
        Assert.Equal(-0.071995e-3, TapeCorrections.SagOfCatenary(3, 0.16, 20), tolerance: 1e-9);
        Assert.Equal(-0.01152e-3, TapeCorrections.Sag(3, 0.16, 50), tolerance: 5e-10);
        Assert.Equal(0.348e-3, TapeCorrections.Temperature(3, 30, 20), tolerance: 5e-8);
        Assert.Equal(-0.416696e-3, TapeCorrections.Slope(3, 0.05), tolerance: 5e-10);
    }

    [Fact]
    public void Slope_IsPythagorasAndReachesZero() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[-1, 1])
            .Sample(
                (lengthMetres, share) =>
                {
                    var plan = lengthMetres + TapeCorrections.Slope(lengthMetres, share * lengthMetres);
                    Assert.Equal(lengthMetres * lengthMetres, plan * plan + share * share * lengthMetres * lengthMetres, tolerance: 1e-11);
                }
            );

    [Fact]
    public void Sag_TendsToTheCatenaryAsThePullGrows() =>
        Gen.Select(Gen.Double[1, 10], Gen.Double[0.1, 0.5], Gen.Double[20, 200])
            .Sample(
                (span, weight, pull) =>
                {
                    var (parabola, catenary) = (TapeCorrections.Sag(span, weight, pull), TapeCorrections.SagOfCatenary(span, weight, pull));
                    var load = weight * span / pull;
                    // arsinh: the terms alternate, and the next one is 24 · 3/640 = 9/80 of (wL/P)² times the first.
                    Assert.True(Math.Abs(parabola - catenary) <= Math.Abs(parabola) * load * load * 9 / 80 + 1e-14);
                }
            );

    [Fact]
    public void AtTheLimit()
    {
        Assert.Equal(-2, TapeCorrections.Slope(2, 2));
        Assert.Equal(0, TapeCorrections.Sag(3, 0, 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeCorrections.Slope(2, 2.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeCorrections.Sag(3, 0.16, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeCorrections.Pull(3, 1, 1, 0, 2e11));
    }
}
