using Plumbmark.Inspection.Book;

namespace Plumbmark.Inspection.Tests.Book;

public class SerialRangeTests
{
    [Theory]
    [InlineData(null, null, true)]
    [InlineData("QD 1000", null, true)]
    [InlineData(null, "QD 1000", true)]
    [InlineData("QD 1000", "QD 1000", true)]
    [InlineData("QD 1000", "QD 1001", true)]
    [InlineData("QD 1001", "QD 1000", false)]
    [InlineData("QD 1000", "QE 2000", false)]
    [InlineData("QD 1000 L", "QD 1000 R", false)]
    public void IsSound_TwoEndsOfOneSeriesInOrder(string? from, string? to, bool expected) =>
        Assert.Equal(expected, Range(from, to).IsSound);

    // The last number of a car that lies in a range is the range's own; one beyond either end does not lie in it.
    [Theory]
    [InlineData("QD 999", SerialFit.DoesNotApply)]
    [InlineData("QD 1000", SerialFit.Applies)]
    [InlineData("QD 1199", SerialFit.Applies)]
    [InlineData("QD 1200", SerialFit.DoesNotApply)]
    [InlineData("QE 1100", SerialFit.CannotTell)]
    [InlineData(null, SerialFit.CannotTell)]
    public void Contains_BothEnds(string? car, SerialFit expected) =>
        Assert.Equal(expected, Range("QD 1000", "QD 1199").Contains(SerialNumber.Read(car)));

    [Theory]
    [InlineData("QD 1", SerialFit.Applies)]
    [InlineData("QD 1000", SerialFit.Applies)]
    [InlineData("QD 1001", SerialFit.DoesNotApply)]
    public void Contains_OpenAtItsBeginning(string car, SerialFit expected) =>
        Assert.Equal(expected, Range(null, "QD 1000").Contains(SerialNumber.Read(car)));

    [Theory]
    [InlineData("QD 999", SerialFit.DoesNotApply)]
    [InlineData("QD 1000", SerialFit.Applies)]
    [InlineData("QD 999999", SerialFit.Applies)]
    public void Contains_OpenAtItsEnd(string car, SerialFit expected) =>
        Assert.Equal(expected, Range("QD 1000", null).Contains(SerialNumber.Read(car)));

    private static SerialRange Range(string? from, string? to) => new(SerialNumber.Read(from), SerialNumber.Read(to));
}
