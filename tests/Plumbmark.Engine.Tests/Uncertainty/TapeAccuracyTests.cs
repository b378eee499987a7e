using CsCheck;
using Plumbmark.Engine.Uncertainty;

namespace Plumbmark.Engine.Tests.Uncertainty;

public class TapeAccuracyTests
{
    [Fact]
    public void NoSuchClass_PromisesNothing() => Assert.Throws<ArgumentOutOfRangeException>(() => TapeAccuracy.OfClass((TapeClass)3));

    [Fact]
    public void Length_JustComputed_IsNotRoundedUpByItsLastDigit()
    {
        var tape = TapeAccuracy.OfClass(TapeClass.II);
        Assert.Equal(tape.MaximumPermissibleErrorMetres(3), tape.MaximumPermissibleErrorMetres(0.1 * 30 + 4e-16));
        Assert.True(tape.MaximumPermissibleErrorMetres(3.001) > tape.MaximumPermissibleErrorMetres(3));
        Assert.Equal(tape.FixedMetres, tape.MaximumPermissibleErrorMetres(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => tape.MaximumPermissibleErrorMetres(double.NaN));
    }

    [Fact]
    public void Priors_AreTheRectangularDeviations()
    {
        // Own computation: 0.3/√3, 0.2/√3, 0.2/√3.
        var tape = TapeAccuracy.OfClass(TapeClass.II);
        Assert.Equal(0.173205e-3, tape.ZeroPriorMetres, tolerance: 1e-9);
        Assert.Equal(0.115470e-3, tape.ScalePriorPerMetre, tolerance: 1e-9);
        Assert.Equal(0.115470e-3, tape.HookPriorMetres, tolerance: 1e-9);
    }

    [Fact]
    public void Priors_NeverPromiseLessDoubtThanHalfTheBoundNorMoreThanIt() =>
        Gen.Select(Gen.Double[0.01, 30], Gen.OneOf(TapeClass.I, TapeClass.II, TapeClass.III))
            .Sample(
                (lengthMetres, tapeClass) =>
                {
                    var tape = TapeAccuracy.OfClass(tapeClass);
                    var prior = double.Hypot(tape.ZeroPriorMetres, tape.ScalePriorPerMetre * lengthMetres);
                    var bound = (tape.FixedMetres + tape.PerMetre * lengthMetres) / Math.Sqrt(3);
                    // √(a² + b²L²) lies between (a + bL)/√2 and a + bL.
                    Assert.InRange(prior, bound / Math.Sqrt(2) * (1 - 1e-12), bound * (1 + 1e-12));
                    Assert.True(
                        tape.MaximumPermissibleErrorMetres(lengthMetres) >= tape.FixedMetres + tape.PerMetre * lengthMetres - 1e-12
                    );
                }
            );

    [Fact]
    public void Reading_CombinesDivisionToolAndRepeatability()
    {
        Assert.Equal(1 / Math.Sqrt(12), new ReadingUncertainty(1, 0, 0).StandardUncertaintyMetres, tolerance: 1e-15);
        Assert.Equal(5, new ReadingUncertainty(0, 3, 4).StandardUncertaintyMetres);
        // 1/16 in, both ends 0.5 mm: √(1.5875²/12 + 0.5) mm; own computation.
        Assert.Equal(0.842623e-3, ReadingUncertainty.BetweenMarks(0.0015875).StandardUncertaintyMetres, tolerance: 1e-9);
        Assert.Equal(0.577350e-3, ReadingUncertainty.FromRest(0.001).StandardUncertaintyMetres, tolerance: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => ReadingUncertainty.BetweenMarks(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReadingUncertainty.BetweenMarks(0.001, -1));
    }
}
