using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Lengths;

/// <summary>Ways people write a length, each with the exact value meant. Inch = 25.4 mm (agreement of 1959).</summary>
public class LengthTextTests
{
    [Theory]
    [InlineData("47 5/8", 381, 8)]
    [InlineData("47-5/8\"", 381, 8)]
    [InlineData("47⅝", 381, 8)]
    [InlineData("47 ⅝", 381, 8)]
    [InlineData("47-⅝ in", 381, 8)]
    [InlineData("33-17/32", 1073, 32)]
    [InlineData("33‑17/32", 1073, 32)] // non-breaking hyphen
    [InlineData("33–17/32", 1073, 32)] // en dash
    [InlineData("33 17/32", 1073, 32)]
    [InlineData("33.53", 3353, 100)]
    [InlineData("5' 1 3/16\"", 979, 16)]
    [InlineData("5'1 3/16\"", 979, 16)]
    [InlineData("5'-1 3/16\"", 979, 16)]
    [InlineData("5′ 1 3/16″", 979, 16)]
    [InlineData("5’ 1 3/16”", 979, 16)]
    [InlineData("5‘ 1 3/16“", 979, 16)]
    [InlineData("5' 1 3/16''", 979, 16)]
    [InlineData("5' 1 3/16", 979, 16)]
    [InlineData("5 ft 1.25 in", 245, 4)]
    [InlineData("5 feet 1 inch", 61, 1)]
    [InlineData("1 foot", 12, 1)]
    [InlineData("5'", 60, 1)]
    [InlineData("5.5 ft", 66, 1)]
    [InlineData("5 1/2 ft.", 66, 1)]
    [InlineData("5' 0\"", 60, 1)]
    [InlineData("5/8", 5, 8)]
    [InlineData("⅝", 5, 8)]
    [InlineData("5⁄8", 5, 8)] // fraction slash
    [InlineData("0 5/8", 5, 8)]
    [InlineData("10/16", 5, 8)]
    [InlineData("47 0/8", 47, 1)]
    [InlineData(".5", 1, 2)]
    [InlineData("0,5", 1, 2)]
    [InlineData("0,625", 5, 8)]
    [InlineData("6 15/16 in.", 111, 16)]
    [InlineData("6 15/16 IN", 111, 16)]
    [InlineData("6 15/16 Inches", 111, 16)]
    [InlineData("6\u00A015/16\u202Fin", 111, 16)] // non-breaking and narrow spaces
    [InlineData("6\u200915/16", 111, 16)] // thin space
    [InlineData("  6 15/16\t", 111, 16)]
    [InlineData("12 3/100", 1203, 100)]
    [InlineData("12 3/10", 123, 10)]
    [InlineData("1/128", 1, 128)]
    [InlineData("47⅓", 142, 3)]
    [InlineData("4 thou", 1, 250)]
    [InlineData("0", 0, 1)]
    [InlineData("00047.50", 95, 2)]
    public void Read_Inches_GivesTheExactNumber(string text, int numerator, int denominator)
    {
        var length = Understood(text, LengthUnit.Inch);
        Assert.Equal(Rational.Of(numerator, denominator), length.Value);
        Assert.Equal(LengthUnit.Inch, length.Unit);
        Assert.Equal(text, length.AsTyped);
    }

    [Theory]
    [InlineData("1210", "1210")]
    [InlineData("1210 mm", "1210")]
    [InlineData("1210mm.", "1210")]
    [InlineData("1210 MM", "1210")]
    [InlineData("1209.5 millimetres", "1209.5")]
    [InlineData("1209 1/2 mm", "1209.5")]
    [InlineData("1209½", "1209.5")]
    [InlineData("121.0cm", "1210")]
    [InlineData("121,5 cm", "1215")]
    [InlineData("121,55 cm", "1215.5")]
    [InlineData("1.215 m", "1215")]
    [InlineData("1,25 m", "1250")]
    [InlineData("1 1/2 metres", "1500")]
    [InlineData("1.210 mm", "1.21")]
    public void Read_Metric_GivesTheExactMillimetres(string text, string millimetres)
    {
        var length = Understood(text, LengthUnit.Millimetre);
        Assert.Equal(Rational.Of(decimal.Parse(millimetres)), length.Value);
        Assert.Equal(LengthUnit.Millimetre, length.Unit);
    }

    [Theory]
    [InlineData("¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞")]
    public void Read_EveryFractionCharacter_AgreesWithUnicodesOwnTable(string characters)
    {
        foreach (var c in characters)
        {
            // Unicode Character Database, property Numeric_Value, as the framework carries it.
            Assert.Equal(char.GetNumericValue(c), Understood($"{c}", LengthUnit.Inch).Inches, tolerance: 1e-15);
        }
    }

    [Theory]
    [InlineData("-1 5/8", -13, 8)]
    [InlineData("−1 5/8", -13, 8)]
    [InlineData("– 1/8", -1, 8)]
    [InlineData("-5' 1\"", -61, 1)]
    [InlineData("+1/8", 1, 8)]
    [InlineData("-0", 0, 1)]
    public void Read_WhereASideIsMeant_UnderstandsASign(string text, int numerator, int denominator)
    {
        Assert.Equal(Rational.Of(numerator, denominator), Understood(text, LengthUnit.Inch, LengthSign.MayBeNegative).Value);
    }

    [Fact]
    public void Read_OwnUnit_BeatsTheDefaultUnit()
    {
        Assert.Equal(Length.FromMillimetres(1210), Understood("121.0cm", LengthUnit.Inch));
        Assert.Equal(Length.FromInches(47.625m), Understood("47 5/8 in", LengthUnit.Millimetre));
    }

    [Fact]
    public void Read_MachinesLanguage_DoesNotMatter()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            var comma = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NumberGroupSeparator = ".";
            comma.NumberFormat.NegativeSign = "~";
            Thread.CurrentThread.CurrentCulture = comma;
            Assert.Equal(Rational.Of(-1.215m), Understood("-1.215 mm", LengthUnit.Inch, LengthSign.MayBeNegative).Value);
            Assert.Equal("\u22121.215 mm", Length.FromMillimetres(-1.215m).ToString());
            Assert.Equal("-1.215", Length.FromNumber(-1.215m, LengthUnit.Inch).AsTyped);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    internal static Length Understood(string text, LengthUnit unit, LengthSign sign = LengthSign.NeverNegative) =>
        LengthText
            .Read(text, unit, sign)
            .Match(length => length, refused => throw new Xunit.Sdk.XunitException($"{text}: {refused.Sentence}"));
}
