using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Web.Floor;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>A reading in one line: forgiving in how it is written, never in what is meant.</summary>
public sealed class QuickLineTests
{
    private static readonly CarFile s_car = CarFile.Named("Ladder", LengthUnit.Inch) with
    {
        Frame = new Frame([.. FrameSkeleton.Ladder(8, LengthUnit.Inch), new FramePoint("3")]),
    };

    [Theory]
    [InlineData("BL ER 61", "B.L to E.R, plan, 61")]
    [InlineData("D-E R 48 7/8", "D.R to E.R, plan, 48 7/8")]
    [InlineData("d-e r 48-7/8\"", "D.R to E.R, plan, 48-7/8\"")]
    [InlineData("b.l to e.r = 61 3/16", "B.L to E.R, plan, 61 3/16")]
    [InlineData("B L, E R: 5' 1 3/16\"", "B.L to E.R, plan, 5' 1 3/16\"")]
    [InlineData("BL→CR 27⅜", "B.L to C.R, plan, 27⅜")]
    [InlineData("B E LR 61", "B.L to E.R, plan, 61")]
    [InlineData("B LR 28", "B.L to B.R, plan, 28")]
    [InlineData("B across 28", "B.L to B.R, plan, 28")]
    [InlineData("BL ER 71 3/16 from 10", "B.L to E.R, plan, 71 3/16 started at 10")]
    [InlineData("BL ER 71 3/16 @ 10", "B.L to E.R, plan, 71 3/16 started at 10")]
    [InlineData("BL 13 1/16", "B.L, height, 13 1/16")]
    [InlineData("height bl -1/4", "B.L, height, -1/4")]
    [InlineData("BL ER direct 1551 mm", "B.L to E.R, direct, 1551 mm")]
    [InlineData("rise BL BR -1/8", "B.L to B.R, rise, -1/8")]
    [InlineData("drop CR 1/16", "C.R dropped again, 1/16 from the first mark")]
    [InlineData("CL BL DL -0.1", "C.L from the string B.L to D.L, -0.1")]
    [InlineData("left", "“left” is no point")]
    [InlineData("3 BL 40", "3 to B.L, plan, 40")]
    public void Line_IsReadAsItIsMeant(string line, string expected) => Assert.StartsWith(expected, Told(line), StringComparison.Ordinal);

    [Theory]
    [InlineData("", "Nothing is written here")]
    [InlineData("61 3/16", "Found no point")]
    [InlineData("BL ER", "Found B.L, E.R and no value behind")]
    [InlineData("B E 61", "“B” is a pair")]
    [InlineData("QX ER 61", "“QX” is no point of this frame. There are A.L,")]
    [InlineData("BL ER CL DL 61", "Found 4 points")]
    [InlineData("BL ER 47 9/8", "")]
    [InlineData("BL ER -61", "")]
    [InlineData("BL ER 0", "Found no length at all")]
    [InlineData("BL ER 9 from 10", "The tape started at 10 and shows 9")]
    [InlineData("BL 13 from 10", "Only a tape between two points")]
    [InlineData("B LL 28", "“LL” does not say")]
    public void Line_ThatCannotBeMeant_GetsASentence(string line, string expected)
    {
        var sentence = QuickLine.Read(line, s_car, "r1").Match(_ => "", s => s);
        Assert.NotEqual("", sentence);
        Assert.Contains(expected, sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void AnyLine_IsAReadingOrASentence_AndNeverThrows()
    {
        // Seeded; pieces that a line may be made of, so that many come near to being right.
        var random = new Random(20261125);
        string[] pieces =
        [
            "BL",
            "b.l",
            "ER",
            "E",
            "L",
            "r",
            "LR",
            "to",
            "-",
            "–",
            "61",
            "3/16",
            "48",
            "7/8",
            "1/0",
            "½",
            "from",
            "@",
            "drop",
            "height",
            "rise",
            "across",
            "'",
            "\"",
            "mm",
            ".",
            "1e9",
            "\u0000",
            "\ud800",
            "𝟙",
            "٣",
            ",",
            "(",
            "string",
            "3",
            "NaN",
        ];
        var understood = 0;
        for (var i = 0; i < 20_000; i++)
        {
            var piece = () => pieces[random.Next(pieces.Length)];
            var line =
                random.Next(2) == 0
                    ? $"{pieces[random.Next(7)]} {piece()} {pieces[9 + random.Next(7)]}"
                    : string.Join(random.Next(3) == 0 ? "" : " ", Enumerable.Range(0, random.Next(8)).Select(_ => piece()));
            var reading = QuickLine
                .Read(line, s_car, "r1")
                .Match(
                    r => r,
                    sentence =>
                    {
                        Assert.False(string.IsNullOrWhiteSpace(sentence), line);
                        return (Reading?)null;
                    }
                );
            if (reading is not null)
            {
                understood++;
                Assert.All(reading.Points, p => Assert.NotNull(s_car.Frame.Point(p)));
                Assert.Equal(reading.Points.Count(), reading.Points.Distinct().Count());
            }
        }

        Assert.True(understood > 200, $"only {understood} lines understood: the law would prove little");
    }

    [Fact]
    public void EveryPairOfPoints_InEveryWriting_IsTheSameReading()
    {
        foreach (var (a, b) in s_car.Frame.Points.SkipLast(1).Zip(s_car.Frame.Points.Skip(3)).Where(p => p.Second.Id.Contains('.')))
        {
            foreach (
                var line in new[]
                {
                    $"{a.Id} {b.Id} 40",
                    $"{a.Id} to {b.Id} 40",
                    $"{a.Id.Replace(".", "")}-{b.Id.Replace(".", "")} 40".ToLowerInvariant(),
                }
            )
            {
                Assert.Equal($"{a.Id} to {b.Id}, plan, 40", Told(line));
            }
        }
    }

    [Fact]
    public async Task Line_OnThePage_IsKept_OrComesBackWithItsSentence()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_car);
        var page = await app.Get($"/cars/{car.Id}/floor");
        page = await app.Submit(page, $"/cars/{car.Id}/quick-readings", ("line", "D-E R 48 7/8"));
        Assert.Contains("r1: D.R to E.R, plan, 48 7/8", page.Text, StringComparison.Ordinal);
        page = await app.Submit(page, $"/cars/{car.Id}/quick-readings", ("line", "QX ER 61"));
        Assert.Equal(422, page.Status);
        Assert.Contains("“QX” is no point", page.Document.QuerySelector("#line-fault")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("QX ER 61", page.Document.QuerySelector("#line")!.GetAttribute("value"));
    }

    private static string Told(string line) => QuickLine.Read(line, s_car, "r1").Match(Web.Layout.ActWords.For, sentence => sentence);
}
