using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>What the floor page says.</summary>
public sealed class FloorPageTests
{
    [Fact]
    public async Task Floor_BeforeAnyReading_SaysCannotTellYetAndPretendsNothing()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(
            CarFile.Named("New", LengthUnit.Inch) with
            {
                Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)),
            }
        );
        var page = await app.Get($"/cars/{car.Id}/floor");
        Assert.Equal("can't tell yet", page.Document.QuerySelector("h1 .verdict")!.TextContent.Trim());
        Assert.DoesNotContain("residual", page.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Floor_ShowsTheSameAnswerAsTheInspection()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var answer = FloorInspection.Of(car.File);
        var page = await app.Get($"/cars/{car.Id}/floor");
        Assert.Contains(answer.Overall.Headline.TrimEnd('.'), page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.All(answer.Overall.Why, why => Assert.Contains(why, page.Text, StringComparison.Ordinal));
        Assert.All(answer.Suspects, s => Assert.Contains(s.Sentence, page.Text, StringComparison.Ordinal));
        Assert.All(answer.BlindSpots, s => Assert.Contains(s.Sentence, page.Text, StringComparison.Ordinal));
        Assert.Equal(answer.Pairs.Count, page.Document.QuerySelectorAll(".floor-pairs tbody").Length);
    }

    [Fact]
    public async Task FirstScreen_HasNoWordOfTheTextbook()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/floor");
        page.Document.QuerySelector(".floor-working")?.Remove();
        foreach (var word in new[] { "residual", "covariance", "RMS", "sigma", "redundancy" })
        {
            Assert.DoesNotContain(word, page.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("'; DROP TABLE entry; --")]
    public async Task AnyText_IsShownAsTextEverywhere(string nasty)
    {
        await using var app = await RunningApp.Start();
        var file = DemoCar.File();
        var points = FrameSkeleton.Pair(nasty, nasty, PointRole.Body, null, null);
        var car = app.Journals.Add(
            file with
            {
                Car = new CarIdentity(nasty, nasty, nasty),
                Tools = [.. file.Tools, new Tool(nasty, ToolKind.Tape)],
                Frame = file.Frame with { Points = [.. file.Frame.Points, .. points] },
                Readings =
                [
                    .. file.Readings,
                    new Reading.Plan(nasty, points[0].Id, points[1].Id, Length.FromInches(30)) { Note = nasty, Tool = nasty },
                ],
            }
        );
        foreach (
            var address in new[]
            {
                "/",
                $"/cars/{car.Id}",
                $"/cars/{car.Id}/floor",
                $"/cars/{car.Id}/points",
                $"/cars/{car.Id}/tools",
                $"/cars/{car.Id}/journal",
            }
        )
        {
            var page = await app.Get(address);
            Assert.Equal(200, page.Status);
            Assert.Empty(page.Document.QuerySelectorAll("main script, main img, [onerror], [style], main style"));
        }
    }
}
