using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

public class SerialNumberTests
{
    [Theory]
    [InlineData("QD 1047", "QD", 1047, "")]
    [InlineData("qd01047", "QD", 1047, "")]
    [InlineData("Q.D./1047-L", "QD", 1047, "L")]
    [InlineData("QD3/1047 LO", "QD3", 1047, "LO")]
    [InlineData("Q D 3 - 1047", "QD3", 1047, "")]
    [InlineData("00417", "", 417, "")]
    [InlineData("61-00417", "61", 417, "")]
    [InlineData("6 1/417", "6|1", 417, "")]
    [InlineData("QD 0", "QD", 0, "")]
    [InlineData("QD\u00a01047", "QD", 1047, "")]
    [InlineData("Q_D–1047-l*", "QD", 1047, "L")]
    [InlineData("*QD 1047*", "QD", 1047, "")]
    [InlineData("7", "", 7, "")]
    [InlineData("123456789012345", "", 123456789012345, "")]
    [InlineData("0000123456789012345", "", 123456789012345, "")]
    [InlineData("QD3A/1047", "QD3A", 1047, "")]
    [InlineData("QD 3/4/1047", "QD3|4", 1047, "")]
    public void Read_TakesSeriesNumberAndBuildApart(string text, string series, long number, string build)
    {
        var serial = SerialNumber.Read(text);
        Assert.NotNull(serial);
        Assert.Equal((series, number, build), (serial.Series, serial.Number, serial.Build));
        Assert.Equal(text, serial.AsWritten);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("QD")]
    [InlineData("QD 1047?")]
    [InlineData("QD (1047)")]
    [InlineData("1234567890123456")]
    [InlineData("QD 10ß47, L")]
    [InlineData("QQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQ 12")] // 41 characters
    public void Read_WhatIsNoSerialNumber_IsNull(string? text) => Assert.Null(SerialNumber.Read(text));

    [Fact]
    public void Read_FortyCharactersAreEnough_AndBlanksAroundDoNotStay()
    {
        Assert.Equal(12, SerialNumber.Read("QQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQQ 12")!.Number);
        Assert.Equal("QD 12", SerialNumber.Read(" QD 12 ")!.ToString());
    }

    // The same number however written: what is found once in a list of numbers is not kept twice.
    [Fact]
    public void Equal_IsWhatHasTheSameSeriesNumberAndBuild()
    {
        SerialNumber[] different =
        [
            SerialNumber.Read("QD 12")!,
            SerialNumber.Read("QE 12")!,
            SerialNumber.Read("QD 13")!,
            SerialNumber.Read("QD 12 L")!,
        ];
        Assert.Equal(4, different.Distinct().Count());
        Assert.Equal(different[0], SerialNumber.Read("q.d. 0012"));
        Assert.Equal(different[0].GetHashCode(), SerialNumber.Read("q.d. 0012")!.GetHashCode());
        Assert.False(different[0].Equals(null));
    }

    [Theory]
    [InlineData("QD 999", "QD 1000", SerialOrder.Before)]
    [InlineData("QD 1000", "QD 999", SerialOrder.After)]
    [InlineData("QD 0999", "q.d. 999", SerialOrder.Same)]
    [InlineData("QD 1200 L", "QD 1200", SerialOrder.Same)]
    [InlineData("QD 1200 L", "QD 1201", SerialOrder.Before)]
    [InlineData("QD 1200 L", "QD 1200 R", SerialOrder.CannotBeCompared)]
    [InlineData("QD 1", "QE 2", SerialOrder.CannotBeCompared)]
    [InlineData("1047", "QD 1047", SerialOrder.CannotBeCompared)]
    [InlineData("QD3/1047", "QD31047", SerialOrder.CannotBeCompared)]
    [InlineData("1047-2", "1047", SerialOrder.CannotBeCompared)]
    [InlineData("QD 1200", "QD 1200 L", SerialOrder.Same)]
    [InlineData("QD 1200 L", "QD 1200 l", SerialOrder.Same)]
    public void To_ComparesWithinASeriesOnly(string a, string b, SerialOrder expected) =>
        Assert.Equal(expected, SerialNumber.Read(a)!.To(SerialNumber.Read(b)!));

    [Theory]
    [InlineData("QD 1000", "QD 1199", "QD 1000", SerialFit.Applies)]
    [InlineData("QD 1000", "QD 1199", "QD 1199 L", SerialFit.Applies)]
    [InlineData("QD 1000", "QD 1199", "QD 1200", SerialFit.DoesNotApply)]
    [InlineData(null, "QD 1199", "QD 7", SerialFit.Applies)]
    [InlineData("QD 1200", null, "QD 1199", SerialFit.DoesNotApply)]
    [InlineData("QD 1200", null, "QE 1300", SerialFit.CannotTell)]
    [InlineData("QD 1200", null, null, SerialFit.CannotTell)]
    [InlineData(null, null, null, SerialFit.Applies)]
    [InlineData(null, "QD 1200 A", "QD 1200 B", SerialFit.CannotTell)]
    public void Contains_ACarThatCannotBeCompared_IsNeitherInNorOut(string? from, string? to, string? car, SerialFit expected) =>
        Assert.Equal(expected, new SerialRange(SerialNumber.Read(from), SerialNumber.Read(to)).Contains(SerialNumber.Read(car)));

    [Fact]
    public void Fits_WireWheelsThatChangedAtAnotherNumber_AreJudgedByBoth()
    {
        var wire = new AppliesTo([new SerialRange(SerialNumber.Read("QD 1150"), null)], [new CarAttribute("wheels", "wire")]);
        var car = SerialNumber.Read("QD 1160");
        Assert.Equal(SerialFit.Applies, wire.Fits(car, [new CarAttribute("Wheels", "Wire ")]));
        Assert.Equal(SerialFit.DoesNotApply, wire.Fits(car, [new CarAttribute("wheels", "disc")]));
        Assert.Equal(SerialFit.CannotTell, wire.Fits(car, []));
        Assert.Equal(SerialFit.DoesNotApply, wire.Fits(SerialNumber.Read("QD 3"), []));
    }
}
