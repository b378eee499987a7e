using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Lengths;

public class LengthDisplayTests
{
    [Theory]
    [InlineData("47 5/8", "1/16", "47 5/8 in")]
    [InlineData("47 39/64", "1/16", "47 5/8 in")]
    [InlineData("47 19/32", "1/16", "47 5/8 in")] // a half division goes away from zero
    [InlineData("15 63/64", "1/16", "16 in")] // the carry
    [InlineData("0 1/64", "1/16", "0 in")]
    [InlineData("1/16", "1/64", "1/16 in")]
    [InlineData("33.53", "1/32", "33 17/32 in")]
    [InlineData("33.53", "0.01", "33.53 in")]
    [InlineData("33.5", "0.01", "33.50 in")]
    [InlineData("33.5", "1/10", "33.5 in")]
    [InlineData("5 thou", "0.001", "0.005 in")]
    [InlineData("1209.5 mm", "0.5 mm", "1209.5 mm")]
    [InlineData("1209 mm", "0.5 mm", "1209.0 mm")]
    [InlineData("1209.74 mm", "0.5 mm", "1209.5 mm")]
    [InlineData("1209.75 mm", "0.5 mm", "1210.0 mm")]
    [InlineData("1209.75 mm", "1 mm", "1210 mm")]
    [InlineData("1209.73 mm", "0.02 mm", "1209.74 mm")]
    [InlineData("47 5/8 in", "1 mm", "1210 mm")]
    [InlineData("1210 mm", "1/16 in", "47 5/8 in")]
    [InlineData("1210 mm", "5 mm", "1210 mm")]
    public void Text_NeverShowsMoreThanTheToolsDivision(string length, string division, string shown)
    {
        Assert.Equal(shown, Inches(length).Format(Inches(division)));
    }

    [Theory]
    [InlineData(-0.125, "1/16", "−1/8 in")]
    [InlineData(-1.125, "1/16", "−1 1/8 in")]
    [InlineData(-0.02, "1/16", "0 in")]
    [InlineData(-15.99, "1/16", "−16 in")]
    [InlineData(15.999, "1/32", "16 in")]
    public void Text_OfAComputedLength(double inches, string division, string shown) =>
        Assert.Equal(shown, new LengthDisplay(Inches(division)).Text(inches * 0.0254));

    [Theory]
    [InlineData("61 3/16", "5 ft 1 3/16 in")]
    [InlineData("60", "5 ft 0 in")]
    [InlineData("11 15/16", "11 15/16 in")]
    [InlineData("11 63/64", "1 ft 0 in")] // the carry reaches the feet
    [InlineData("-61 3/16", "−5 ft 1 3/16 in")]
    [InlineData("-1/8", "−1/8 in")]
    public void Text_InFeetAndInches(string length, string shown) =>
        Assert.Equal(shown, new LengthDisplay(Inches("1/16"), feetAndInches: true).Text(Inches(length)));

    [Theory]
    [InlineData(3.0 / 32, "1/32", "±3/32 in")]
    [InlineData(3.0 / 32, "1/16", "±1/8 in")]
    [InlineData(0.001, "1/32", "±1/32 in")] // never shown as none
    [InlineData(0, "1/32", "±0 in")]
    [InlineData(0.51, "1 mm", "±13 mm")]
    public void PlusMinus_RoundsUp(double inches, string division, string shown) =>
        Assert.Equal(shown, new LengthDisplay(Inches(division)).PlusMinus(inches * 0.0254));

    [Theory]
    [InlineData("1/16", LengthUnit.Millimetre, "2 mm")]
    [InlineData("1/32", LengthUnit.Millimetre, "1 mm")]
    [InlineData("1/64", LengthUnit.Millimetre, "0.5 mm")]
    [InlineData("0.001", LengthUnit.Millimetre, "0.05 mm")]
    [InlineData("1 mm", LengthUnit.Inch, "1/16 in")]
    [InlineData("0.5 mm", LengthUnit.Inch, "1/32 in")]
    [InlineData("0.02 mm", LengthUnit.Inch, "0.001 in")]
    [InlineData("1/16", LengthUnit.Inch, "1/16 in")]
    [InlineData("2 m", LengthUnit.Inch, "1 in")]
    public void For_AnotherUnit_IsNotFinerThanTheTool(string division, LengthUnit unit, string step) =>
        Assert.Equal(step, LengthDisplay.For(unit, Inches(division)).Division.ToString());

    [Fact]
    public void Default_ShowsWholeMillimetres() => Assert.Equal("1210 mm", default(LengthDisplay).Text(1.2104));

    [Fact]
    public void Number_LeavesTheUnitToTheColumnHead() => Assert.Equal("47 5/8", new LengthDisplay(Inches("1/16")).Number(1.2097));

    [Fact]
    public void RoundedTo_IsAMultipleInTheDivisionsUnit() =>
        Assert.Equal(Inches("47 5/8"), Length.FromMillimetres(1210).RoundedTo(Inches("1/16")));

    [Fact]
    public void WhatIsMissing_HasNoText()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => default(LengthDisplay).Text(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => default(LengthDisplay).PlusMinus(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => default(LengthDisplay).PlusMinus(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthDisplay(Length.Zero));
    }

    private static Length Inches(string text) => LengthTextTests.Understood(text, LengthUnit.Inch, LengthSign.MayBeNegative);
}
