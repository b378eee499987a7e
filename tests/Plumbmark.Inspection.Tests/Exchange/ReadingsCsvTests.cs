using System.Text;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Exchange;

public sealed class ReadingsCsvTests
{
    private static readonly CarFile s_car = CarFile.Named("Invented", LengthUnit.Inch) with
    {
        Frame = new Frame([new FramePoint("A.L", "A.R"), new FramePoint("A.R", "A.L"), new FramePoint("B.L")]),
        Readings = [new Reading.Plan("r7", "A.L", "A.R", Length.FromInches(22))],
    };

    private static ReadingsCsvOutcome.Accepted Accepted(string csv, CarFile? car = null, bool addsPoints = false) =>
        ReadingsCsv
            .Read(Encoding.UTF8.GetBytes(csv), car ?? s_car, addsPoints: addsPoints)
            .Match(a => a, f => throw new InvalidOperationException(string.Join('\n', f)));

    private static IReadOnlyList<string> Refused(string csv) =>
        ReadingsCsv
            .Read(Encoding.UTF8.GetBytes(csv), s_car)
            .Match(_ => throw new InvalidOperationException("accepted"), f => f.Select(x => x.ToString()).ToList());

    [Fact]
    public void Read_APersonsOwnHeads_AreMatched()
    {
        var csv = "Point A;Point B;Length (mm);Remarks;Weather\r\nA.L;B.L;121,5 cm;by two;rain\r\nA.R;B.L;1215;;\r\n";
        var accepted = Accepted(csv);
        Assert.Equal(["r8", "r9"], accepted.Readings.Select(r => r.Id)); // numbered behind the car's own
        var first = Assert.IsType<Reading.Plan>(accepted.Readings[0]);
        Assert.Equal(Length.FromMillimetres(1215), first.Value);
        Assert.Equal("by two", first.Note);
        Assert.Equal(Length.FromMillimetres(1215), Assert.IsType<Reading.Plan>(accepted.Readings[1]).Value);
        Assert.Null(accepted.Readings[1].Note);
        Assert.Equal(["Weather"], accepted.UnusedColumns);
    }

    [Fact]
    public void Read_OnlyAPoint_IsAHeight() => Assert.IsType<Reading.Height>(Accepted("point,value\nB.L,13 1/16\n").Readings.Single());

    [Fact]
    public void Read_ColumnsChosenByHand_AreFollowed()
    {
        var csv = Encoding.UTF8.GetBytes("x,y,z\n60 1/4,A.L,B.L\n");
        var accepted = ReadingsCsv.Read(csv, s_car, ["value", "from", "to"]).Match(a => a, _ => null!);
        Assert.Equal("A.L", Assert.IsType<Reading.Plan>(Assert.Single(accepted.Readings)).From);
    }

    // Found by the bench: such a row was taken, and the car file with it was refused afterwards.
    [Fact]
    public void Read_AStartBeyondWhatTheTapeShows_IsToldWithItsRow()
    {
        var fault = Assert.Single(Refused("from,to,value,startAt\nA.L,B.L,60,1\nA.R,B.L,60,812\n"));
        Assert.Contains("line 3", fault, StringComparison.Ordinal);
        Assert.Contains("starts at 812 and shows 60", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_EveryFault_IsToldWithItsRow()
    {
        var faults = Refused(
            "from,to,value\r\nA.L,B.L,5/0\r\nA.L,Q.L,60\r\nA.L,A.L,3\r\nA.L,B.L\r\nA.L,B.L,\"60\" in\r\nA.L,B.L,1,2,3\r\n"
        );
        Assert.Equal(6, faults.Count);
        Assert.StartsWith("value (line 2, column 9)", faults[0], StringComparison.Ordinal);
        Assert.Contains("\"Q.L\", which is not among the points", faults[1], StringComparison.Ordinal);
        Assert.StartsWith("line 4", faults[2], StringComparison.Ordinal);
        Assert.Contains("\"value\" is missing", faults[3], StringComparison.Ordinal);
        Assert.Contains("behind a closing quotation mark", faults[4], StringComparison.Ordinal);
        Assert.Contains("The row has 5 cells and the head 3", faults[5], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "The file is empty")]
    [InlineData("from,to\nA.L,B.L\n", "No column holds the length")]
    [InlineData("value\n3\n", "No columns hold the ends")]
    [InlineData("from,to,value\nA.L,B.L,\"60\n", "none closes it")]
    [InlineData("id,from,to,value\nr7,A.L,B.L,60\n", "never overwritten")]
    [InlineData("id,from,to,value\nx,A.L,B.L,60\nx,A.L,B.L,61\n", "already used on line 2")]
    [InlineData("from,to,value,unit\nA.L,B.L,60,miles\n", "in or mm is needed")]
    public void Read_Wrong_SaysWhatIsNeeded(string csv, string sentence) =>
        Assert.Contains(Refused(csv), f => f.Contains(sentence, StringComparison.Ordinal));

    [Fact]
    public void Read_NotUtf8_SaysHowToSaveIt() =>
        Assert.Contains(
            "CSV UTF-8",
            ReadingsCsv.Read([0x66, 0xE9, 0x2C], s_car).Match(_ => "", f => f[0].Sentence),
            StringComparison.Ordinal
        );

    [Fact]
    public void Read_UnknownPoints_AreDrawnWhenAskedFor()
    {
        var accepted = Accepted("from,to,value\nC.L,C.R,30\n", addsPoints: true);
        Assert.Equal([("C.L", "C.R"), ("C.R", "C.L")], accepted.NewPoints.Select(p => (p.Id, p.Mirror)));
    }

    // RFC 4180, section 2, rules 5 to 7: quotes around a cell, separators and line breaks inside, quotes doubled.
    [Fact]
    public void Read_RulesOfRfc4180_AreKept()
    {
        var accepted = Accepted("from,to,value,note\r\n\"A.L\",\"B.L\",\"60 1/4\"\"\",\"two, \"\"quoted\"\"\r\nlines\"\r\nA.R,B.L,61,\r\n");
        Assert.Equal("two, \"quoted\"\r\nlines", accepted.Readings[0].Note);
        Assert.Equal(Length.FromInches(60.25m), Assert.IsType<Reading.Plan>(accepted.Readings[0]).Value);
        Assert.Equal(2, accepted.Readings.Count);
    }
}
