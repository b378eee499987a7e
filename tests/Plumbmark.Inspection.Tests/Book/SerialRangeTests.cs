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

    // Build letters do not order (common practice, no source): where two ranges part inside one number, only a person can say how.
    [Theory]
    [InlineData("QD 1", "QD 1200 A", "QD 1200 B", "QD 1300", null)]
    [InlineData("QD 1200 B", "QD 1300", "QD 1", "QD 1200 A", null)]
    [InlineData("QD 1", "QD 1200 A", "QE 1", "QE 9", null)]
    [InlineData("QD 1", "QD 9", "QD 10", "QD 19", "")]
    [InlineData("QD 1", "QD 10", "QD 10", "QD 19", "QD 10 only")]
    [InlineData("QD 1", "QD 12", "QD 10", "QD 19", "QD 10 to QD 12")]
    [InlineData("QD 10", "QD 19", "QD 1", "QD 12", "QD 10 to QD 12")]
    [InlineData("QD 1", null, "QD 10", null, "from QD 10")]
    [InlineData(null, "QD 9", null, "QD 12", "up to QD 9")]
    [InlineData(null, null, "QD 10", "QD 12", "QD 10 to QD 12")]
    [InlineData("QD 10", "QD 12", null, null, "QD 10 to QD 12")]
    [InlineData(null, null, null, null, "every car")]
    [InlineData(null, "QD 12", "QD 10", null, "QD 10 to QD 12")]
    public void With_SaysWhatLiesInBoth(string? from, string? to, string? otherFrom, string? otherTo, string? shared) =>
        Assert.Equal(shared, Range(from, to).With(Range(otherFrom, otherTo)).Match<string?>(_ => "", s => s.Range.ToString(), _ => null));

    [Fact]
    public void Coverage_TellsAGapInTheWordsOfItsSeries()
    {
        var gaps = SerialCoverage
            .Of([
                Range("QD 20", "QD 29"),
                Range("QD 1", "QD 9 L"),
                Range("6 1/417", "6 1/500"),
                Range("6 1/600", null),
                Range("00001", "00009"),
                Range("00011", null),
                Range("QD 22", "QD 24"),
                Range("QD 40", "QD 49"),
            ])
            .Gaps;
        Assert.Equal(["QD 10 to QD 19", "QD 30 to QD 39", "6/1 501 to 6/1 599", "10 only"], gaps.Select(g => g.ToString()));
    }

    // Beyond an open range there is nothing left to be a gap, and a range for every car leaves none at all.
    [Fact]
    public void Coverage_WhatIsOpen_LeavesNoGapAndNoEnd()
    {
        var open = SerialCoverage.Of([Range(null, "QD 9"), Range("QD 5", null), Range("QD 30", "QD 39")]);
        Assert.Empty(open.Gaps);
        Assert.Empty(open.ClosedEnds);
        var everything = SerialCoverage.Of([Range("QD 1", "QD 9"), Range("QD 20", "QD 29"), Range(null, null)]);
        Assert.Empty(everything.Gaps);
        Assert.Empty(everything.ClosedEnds);
        Assert.Equal([(0, 2), (1, 2)], everything.Overlaps.Select(o => (o.First, o.Second)));
    }

    [Fact]
    public void Coverage_ClosedEnds_AreTheLowestAndTheHighestNumber() =>
        Assert.Equal(
            ["Nothing is said of numbers before QD 1.", "Nothing is said of numbers after QD 49."],
            SerialCoverage.Of([Range("QD 40", "QD 49"), Range("QD 1", "QD 9"), Range("QD 10", "QD 39")]).ClosedEnds
        );

    // Two ranges that part inside one number are told, because nobody knows whether they overlap; of two series there is nothing to tell.
    [Fact]
    public void Coverage_TellsWhatCannotBeCompared_WithinASeriesOnly()
    {
        var told = Assert.Single(SerialCoverage.Of([Range("QD 1", "QD 12 A"), Range("QE 1", "QE 9"), Range("QD 12 B", null)]).Overlaps);
        Assert.Equal((0, 2), (told.First, told.Second));
        Assert.IsType<SerialOverlap.CannotBeCompared>(told.Overlap);
    }

    private static SerialRange Range(string? from, string? to) => new(SerialNumber.Read(from), SerialNumber.Read(to));
}
