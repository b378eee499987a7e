using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Tests.Lengths;

/// <summary>What is refused, at which place and in which words.</summary>
public class LengthRefusalTests
{
    private const string Examples = "47 5/8, 5' 1 3/16\", 33.53 in, 1210 mm or 121.0 cm";

    [Theory]
    [InlineData("1,210", 0, "1,210", "“1,210” could be 1210 or 1.210. Write it with a point for decimals and no mark between thousands.")]
    [InlineData(
        "1,210.5",
        0,
        "1,210.5",
        "“1,210.5” has more than one point or comma. Write one decimal point at most, and no mark between thousands."
    )]
    [InlineData("12,3456", 0, "12,3456", "“12,3456” has more than two decimals behind a comma. Write a decimal point.")]
    [InlineData("1 210", 2, "210", "“210” is a second number. Write one length, and no space between thousands.")]
    [InlineData("5/0", 0, "5/0", "“5/0” divides by zero. Write a fraction such as 5/8.")]
    [InlineData("47 9/8", 3, "9/8", "“9/8” is not less than one. Write the whole number apart from the fraction, such as 47 5/8.")]
    [InlineData("475/8", 0, "475/8", "“475/8” is not less than one. Write the whole number apart from the fraction, such as 47 5/8.")]
    [InlineData("1 1/4 1/4", 6, "1/4", "“1/4” is a second fraction. Write one length with one fraction, such as 47 5/8.")]
    [InlineData("1½¼", 2, "¼", "“¼” is a second fraction. Write one length with one fraction, such as 47 5/8.")]
    [InlineData("1.5 1/2", 0, "1.5 1/2", "“1.5 1/2” has decimals and a fraction. Write either, such as 1.5 or 1 1/2.")]
    [InlineData("1.5/2", 0, "1.5/2", "“1.5/2” has decimals and a fraction. Write either, such as 1.5 or 1 1/2.")]
    [InlineData(
        "3 2/7",
        2,
        "2/7",
        "“2/7” is a fraction no rule is divided in. Use halves, 4ths, 8ths, 16ths, 32nds, 64ths, 128ths, 10ths or 100ths, or a decimal."
    )]
    [InlineData("5/", 0, "5/", "“5/” is half a fraction. Write whole numbers on both sides of the stroke, without spaces, such as 5/8.")]
    [InlineData("5 / 8", 2, "/", "“/” is half a fraction. Write whole numbers on both sides of the stroke, without spaces, such as 5/8.")]
    [InlineData(
        "1/2/4",
        0,
        "1/2",
        "“1/2” is half a fraction. Write whole numbers on both sides of the stroke, without spaces, such as 5/8."
    )]
    [InlineData(
        "47- 5/8",
        2,
        "-",
        "A dash between a whole number and its fraction must stand without spaces, such as 47-5/8. Or write a space alone: 47 5/8."
    )]
    [InlineData("47-5", 2, "-", $"“-” is not expected after a complete length. Write one length such as {Examples}.")]
    [InlineData("-5", 0, "-", "“-” makes no sense for this length. Write it without a sign.")]
    [InlineData("−5", 0, "−", "“−” makes no sense for this length. Write it without a sign.")]
    [InlineData("+5", 0, "+", "“+” makes no sense for this length. Write it without a sign.")]
    [InlineData("NaN", 0, "NaN", $"“NaN” stands where a number is needed. Write a length such as {Examples}.")]
    [InlineData("Infinity", 0, "Infinity", $"“Infinity” stands where a number is needed. Write a length such as {Examples}.")]
    [InlineData("1e5", 0, "1e5", "“1e5” is a power of ten. Write the number out in full.")]
    [InlineData("1E-5", 0, "1E-5", "“1E-5” is a power of ten. Write the number out in full.")]
    [InlineData("", 0, "", $"Nothing is written here. Write a length such as {Examples}.")]
    [InlineData(" \u00A0", 0, "", $"Nothing is written here. Write a length such as {Examples}.")]
    [InlineData("47 furlongs", 3, "furlongs", "“furlongs” is not a unit known here. Use in, ft, thou, mm, cm or m.")]
    [InlineData("47 in mm", 6, "mm", "“mm” is a second unit behind in. Write one unit; only feet and inches go together.")]
    [InlineData("47\" mm", 4, "mm", "“mm” is a second unit behind in. Write one unit; only feet and inches go together.")]
    [InlineData("5 ft in", 5, "in", "“in” is a second unit behind ft. Write one unit; only feet and inches go together.")]
    [InlineData("5 ft 6 mm", 7, "mm", "“mm” cannot follow feet. Feet are followed by inches, such as 5 ft 1 3/16 in.")]
    [InlineData(
        "5 1/2 ft 3 in",
        0,
        "5 1/2",
        "“5 1/2” is not a whole number of feet, yet inches follow. Write whole feet before inches, such as 5 ft 1 3/16 in."
    )]
    [InlineData("5' 13\"", 3, "13", "“13” inches behind feet make another foot. Write less than 12 inches behind feet.")]
    [InlineData("5 in 3", 5, "3", "“3” is a second number. Write one length, and no space between thousands.")]
    [InlineData("4٧", 1, "٧", "“٧” is not one of the digits 0 to 9. Write the number with those.")]
    [InlineData("４7", 0, "４", "“４” is not one of the digits 0 to 9. Write the number with those.")]
    [InlineData("47 ⁵⁄₈", 3, "⁵", "“⁵” is not one of the digits 0 to 9. Write the number with those.")]
    [InlineData("47.", 0, "47.", "“47.” ends in a point or comma. Write the decimals behind it, or leave it out.")]
    [InlineData("in", 0, "in", $"“in” stands where a number is needed. Write a length such as {Examples}.")]
    [InlineData(
        "47 5/8 mm",
        0,
        "47 5/8",
        "“47 5/8” is a fraction of mm, which is divided in halves at most. Write a decimal, or inches if they are meant."
    )]
    [InlineData("4\u00077", 1, "U+0007", $"“U+0007” does not belong in a length. Write it such as {Examples}.")]
    [InlineData("4\u200B7", 1, "U+200B", $"“U+200B” does not belong in a length. Write it such as {Examples}.")]
    [InlineData("47 🔧", 3, "🔧", $"“🔧” does not belong in a length. Write it such as {Examples}.")]
    [InlineData("5'-", 3, "", $"A number is missing here. Write a length such as {Examples}.")]
    public void Read_Unclear_TellsThePlaceWhatWasFoundAndWhatIsAllowed(string text, int position, string found, string sentence)
    {
        var refused = Refused(text, LengthUnit.Inch);
        Assert.Equal((position, found, sentence), (refused.Position, refused.Found, refused.Sentence));
    }

    [Fact]
    public void Read_FractionWhereMillimetresAreMeant_AsksForTheUnit()
    {
        Assert.Equal(
            "“47 5/8” looks like inches, but a number without a unit means mm here. Write in behind it if inches are meant.",
            Refused("47 5/8", LengthUnit.Millimetre).Sentence
        );
    }

    [Fact]
    public void Read_SignWithoutNumber_AsksForTheNumber()
    {
        var refused = Assert.IsType<LengthOutcome.Refused>(LengthText.Read("-", LengthUnit.Inch, LengthSign.MayBeNegative));
        Assert.Equal((1, ""), (refused.Position, refused.Found));
        Assert.StartsWith("A number is missing here.", refused.Sentence, StringComparison.Ordinal);
        Assert.IsType<LengthOutcome.Refused>(LengthText.Read("--5", LengthUnit.Inch, LengthSign.MayBeNegative));
    }

    [Fact]
    public void Read_Null_CountsAsNothingWritten() =>
        Assert.Equal(LengthText.Read("", LengthUnit.Inch), LengthText.Read(null, LengthUnit.Inch));

    [Fact]
    public void Read_SixtyFiveCharacters_IsTooLong()
    {
        Assert.IsType<LengthOutcome.Read>(LengthText.Read(new string('7', 64), LengthUnit.Inch));
        var refused = Refused(new string('7', 65), LengthUnit.Inch);
        Assert.Equal(64, refused.Position);
        Assert.StartsWith("This is 65 characters long, and a length takes at most 64.", refused.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LongAmbiguousNumber_IsRefusedNotFailed() =>
        Assert.Contains("could be", Refused(new string('7', 50) + ",123", LengthUnit.Inch).Sentence, StringComparison.Ordinal);

    private static LengthOutcome.Refused Refused(string text, LengthUnit unit) =>
        Assert.IsType<LengthOutcome.Refused>(LengthText.Read(text, unit));
}
