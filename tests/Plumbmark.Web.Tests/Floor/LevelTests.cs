using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>Levelling: what the level shows at the stands becomes a shim under each of three, and the fourth is read as twist.</summary>
public sealed class LevelTests
{
    private static readonly CarFile s_ladder = CarFile.Named("Ladder", LengthUnit.Inch) with
    {
        Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)),
    };

    [Fact]
    public async Task FourStands_ThreeAreLevelled_TheFourthIsTwist()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/level");
        page = await app.Submit(
            page,
            $"/cars/{car.Id}/levels",
            ("stand-0-height", "0"),
            ("stand-1-height", "1/4"),
            ("stand-2-height", "0"),
            ("stand-3-height", "5/8")
        );
        Assert.Equal(200, page.Status);
        // Of the two front corners the left asks for less under the three: 1/4 and 1/4, against 5/8 and 3/8 with the right.
        Assert.Contains("Level on three: rear left, rear right and front left.", page.Text, StringComparison.Ordinal);
        Assert.Contains("rear left: put 1/4 in under it", page.Text, StringComparison.Ordinal);
        Assert.Contains("rear right: leave it", page.Text, StringComparison.Ordinal);
        Assert.Contains("front left: put 1/4 in under it", page.Text, StringComparison.Ordinal);
        // The plane of the three rises 1/4 across: 1/4 at the front right, where 5/8 was read.
        Assert.Contains("The frame is 3/8 in high there against the other three: that is twist.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Never wind four stands until all agree", page.Text, StringComparison.Ordinal);
        Assert.Contains("+ 1/4 in", page.Document.QuerySelector(".level-picture")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("5/8", page.Document.QuerySelector("[name=stand-3-height]")!.GetAttribute("value"));
        Assert.Contains("level read at 4 stands", (await app.Get($"/cars/{car.Id}/journal")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AStandNotRead_IsLeftOut_NotTakenAsZero()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/level");
        page = await app.Submit(page, $"/cars/{car.Id}/levels", ("stand-0-height", "0"), ("stand-1-height", "1/4"));
        Assert.Contains("Read the level over three stands at least", page.Text, StringComparison.Ordinal);
        Assert.Equal(2, app.Journals.Car(car.Id)!.File.Level!.Stands.Count);
    }

    [Fact]
    public async Task FloorAndPlumb_AreToldWithWhatTheyMean()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/level");
        page = await app.Submit(
            page,
            $"/cars/{car.Id}/levels",
            ("floor-0-x", "0"),
            ("floor-0-y", "20"),
            ("floor-0-height", "-13"),
            ("floor-1-x", "0"),
            ("floor-1-y", "-20"),
            ("floor-1-height", "-13"),
            ("plumb-length", "24"),
            ("plumb-gap", "1/4")
        );
        Assert.Contains("Three places of the floor that are not on one line are needed", page.Text, StringComparison.Ordinal);
        Assert.Contains("Plumb line and level do not agree: 1 in 96", page.Text, StringComparison.Ordinal);
        page = await app.Submit(page, $"/cars/{car.Id}/levels", ("floor-2-x", "-100"), ("floor-2-y", "0"), ("floor-2-height", "-14"));
        Assert.Contains("The floor falls 1 in 100 toward the rear", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WrongFields_AreToldAllAtOnce_AndNothingIsKept()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/level");
        page = await app.Submit(
            page,
            $"/cars/{car.Id}/levels",
            ("stand-0-height", "47 9/8"),
            ("stand-1-height", "0"),
            ("stand-1-name", "front left"),
            ("stand-2-height", "0"),
            ("plumb-length", "0"),
            ("plumb-gap", "0")
        );
        Assert.Equal(422, page.Status);
        Assert.NotNull(page.Document.QuerySelector("#stand-0-height-fault"));
        Assert.Contains("Two stands are called front left", page.Text, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("#plumb-length-fault"));
        Assert.Null(app.Journals.Car(car.Id)!.File.Level);
    }
}
