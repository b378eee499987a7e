using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Adjustment.Blunders;

/// <summary>What a typed length may have been meant to be.</summary>
public class LengthSlipsTests
{
    private static Length Typed(string text, LengthUnit unit) =>
        LengthText.Read(text, unit).Match(l => l, r => throw new InvalidOperationException(r.Sentence));

    private static IEnumerable<(BlunderKind, double)> Slips(string text, LengthUnit unit) =>
        LengthSlips
            .Of(Typed(text, unit))
            .Select(s => (s.Kind, Math.Round(unit == LengthUnit.Inch ? s.Believed.Inches : s.Believed.Millimetres, 6)));

    [Fact]
    public void WholeInchesAndAFraction() =>
        Assert.Equal(
            [
                (BlunderKind.DigitsSwapped, 74.625),
                (BlunderKind.DigitMisread, 41.625),
                (BlunderKind.FractionOtherEnd, 47.375),
                (BlunderKind.UnitConfused, Math.Round(47.625 / 25.4, 6)),
            ],
            Slips("47 5/8", LengthUnit.Inch)
        );

    [Fact]
    public void Millimetres() =>
        Assert.Equal(
            [
                (BlunderKind.DigitsSwapped, 2130),
                (BlunderKind.DigitsSwapped, 1320),
                (BlunderKind.DigitsSwapped, 1203),
                (BlunderKind.DigitMisread, 7230),
                (BlunderKind.DigitMisread, 1280),
                (BlunderKind.UnitConfused, 31242),
            ],
            Slips("1230", LengthUnit.Millimetre)
        );

    [Fact]
    public void AnInchFractionThatASlipMakesNonsense_IsLeftOut() =>
        // 3/16 with its digits exchanged would be 3/61, which no rule is divided in.
        Assert.DoesNotContain(Slips("12 3/16", LengthUnit.Inch), s => s.Item1 == BlunderKind.DigitsSwapped && s.Item2 is > 12 and < 13);

    [Fact]
    public void EachMeaningOnce_AndNeverTheTypedOne()
    {
        foreach (var text in (string[])["33-17/32", "5' 1 3/16\"", "11", "66 6/8", "0.5"])
        {
            var typed = Typed(text, LengthUnit.Inch);
            var slips = LengthSlips.Of(typed);
            Assert.Equal(slips.Count, slips.Select(s => s.Believed).Distinct().Count());
            Assert.DoesNotContain(slips, s => s.Believed == typed);
        }
    }
}
