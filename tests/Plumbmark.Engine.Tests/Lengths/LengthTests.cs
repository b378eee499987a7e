using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Lengths;

public class LengthTests
{
    [Fact]
    public void Default_IsZeroMillimetres()
    {
        Length length = default;
        Assert.Equal((0.0, 0.0, 0.0), (length.Metres, length.Millimetres, length.Inches));
        Assert.Equal("0 mm", length.AsTyped);
        Assert.Equal(LengthUnit.Millimetre, length.Unit);
        Assert.Equal(0, default(Rational).Sign);
        Assert.Equal("0", default(Rational).ToString());
    }

    [Fact]
    public void Inch_IsExactlyTwentyFivePointFourMillimetres()
    {
        Assert.Equal(Length.FromMillimetres(25.4m), Length.FromInches(1));
        Assert.Equal(Length.FromMillimetres(25.4m).GetHashCode(), Length.FromInches(1).GetHashCode());
        Assert.Equal(0.0254, Length.FromInches(1).Metres);
    }

    // Published: inch fractions in millimetres, as any engineering table prints them (1 in = 25.4 mm exactly).
    [Theory]
    [InlineData(1, 64, 0.396875)]
    [InlineData(1, 32, 0.79375)]
    [InlineData(1, 16, 1.5875)]
    [InlineData(1, 8, 3.175)]
    [InlineData(3, 16, 4.7625)]
    [InlineData(1, 4, 6.35)]
    [InlineData(5, 16, 7.9375)]
    public void Millimetres_OfAFraction_AgreesWithTheConversionTable(int numerator, int denominator, double millimetres) =>
        Assert.Equal(millimetres, Length.FromFraction(0, numerator, denominator, LengthUnit.Inch).Millimetres);

    [Fact]
    public void Arithmetic_IsExact()
    {
        var sum = Length.FromMillimetres(0.1m) + Length.FromMillimetres(0.2m);
        Assert.Equal(Length.FromMillimetres(0.3m), sum);
        var third = Length.FromInches(1) / 3;
        Assert.Equal(Length.FromInches(1), third * 3);
        Assert.Equal(Length.Zero, third - third);
        Assert.Equal("2 in", (Length.FromInches(1) + Length.FromMillimetres(25.4m)).ToString());
        Assert.Equal(LengthUnit.Millimetre, (Length.FromMillimetres(1) + Length.FromInches(1)).Unit);
    }

    [Theory]
    [InlineData("47 5/8", "47 5/8 in")]
    [InlineData("47.625", "47 5/8 in")]
    [InlineData("33.53", "33.53 in")]
    [InlineData("-1/8", "−1/8 in")]
    [InlineData("-3", "−3 in")]
    [InlineData("47⅓", "47 ⅓ in")]
    [InlineData("121.0cm", "1210 mm")]
    public void ToString_IsExactAndReduced(string typed, string text) =>
        Assert.Equal(text, LengthTextTests.Understood(typed, LengthUnit.Inch, LengthSign.MayBeNegative).ToString());

    [Fact]
    public void ToString_WhatNoRuleShows_IsAPlainFraction() =>
        Assert.Equal("50/127 in", Length.FromMillimetres(10).In(LengthUnit.Inch).ToString());

    [Fact]
    public void FromNumber_KeepsTheNumberAsWritten()
    {
        var length = Length.FromNumber(121.50m, LengthUnit.Millimetre);
        Assert.Equal("121.50", length.AsTyped);
        Assert.Equal("121.5 mm", length.ToString());
        Assert.Equal("121.50", length.In(LengthUnit.Inch).AsTyped);
    }

    [Fact]
    public void Factories_RefuseADivisionByZero() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromFraction(1, 1, 0, LengthUnit.Inch));

    [Fact]
    public void OfExactly_ADouble_IsThatVeryNumber()
    {
        Assert.Equal(Rational.Of(1, 8), Rational.OfExactly(0.125));
        Assert.NotEqual(Rational.Of(1, 10), Rational.OfExactly(0.1));
        Assert.Equal(double.Epsilon, Rational.OfExactly(double.Epsilon).ToDouble());
        Assert.Throws<ArgumentOutOfRangeException>(() => Rational.OfExactly(double.NaN));
    }
}
