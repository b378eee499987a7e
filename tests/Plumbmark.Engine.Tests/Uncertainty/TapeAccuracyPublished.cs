using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class TapeAccuracyPublished
{
    // Directive 2014/32/EU, Annex X (MI-008) = UK SI 2016/1153 Schedule 1I chapter 1: ±(a + bL) mm, L rounded up to the next whole metre.
    // The columns 2, 3, 5, 8 and 10 m are also printed so in trade guides to tapes; the others are own computation.
    [Theory]
    [InlineData(TapeClass.I, new[] { 0.20, 0.20, 0.30, 0.30, 0.40, 0.60, 0.90, 1.10, 2.10, 3.10 })]
    [InlineData(TapeClass.II, new[] { 0.50, 0.50, 0.70, 0.70, 0.90, 1.30, 1.90, 2.30, 4.30, 6.30 })]
    [InlineData(TapeClass.III, new[] { 1.00, 1.00, 1.40, 1.40, 1.80, 2.60, 3.80, 4.60, 8.60, 12.60 })]
    public void MaximumPermissibleError_AgreesWithTheTable(TapeClass tapeClass, double[] millimetres)
    {
        double[] lengthsMetres = [0.3, 1, 1.5, 2, 3, 5, 8, 10, 20, 30];
        var tape = TapeAccuracy.OfClass(tapeClass);
        var computed = lengthsMetres.Select(l => Math.Round(1000 * tape.MaximumPermissibleErrorMetres(l), 9));
        Assert.Equal(millimetres, computed);
    }

    [Theory]
    [InlineData(3, 1.10)]
    [InlineData(5, 1.50)]
    public void MaximumPermissibleError_FromTheHook_AddsC(double lengthMetres, double millimetres) =>
        Assert.Equal(
            millimetres,
            1000 * TapeAccuracy.OfClass(TapeClass.II).MaximumPermissibleErrorMetres(lengthMetres, fromHook: true),
            tolerance: 1e-9
        );

    [Fact]
    public void UkImperial1986_TenFeet_Is85Thou()
    {
        // UK SI 1986/1682, regulation 24: 0.025 in + 0.015 in for each yard or part; 10 ft are four yards begun.
        Assert.Equal(0.085, TapeAccuracy.UkImperial1986.MaximumPermissibleErrorMetres(10 * 0.3048) / 0.0254, tolerance: 1e-12);
        Assert.Equal(1.8, 1000 * TapeAccuracy.UkMetric1986.MaximumPermissibleErrorMetres(3), tolerance: 1e-12);
    }
}
