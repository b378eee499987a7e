using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>A point that the plumb line does not reach is brought down another way, with exactly the numbers that way needs.</summary>
public sealed class ObstructedTests
{
    private static readonly CarFile s_ladder = CarFile.Named("Ladder", LengthUnit.Inch) with
    {
        Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)),
    };

    [Fact]
    public async Task Ways_AreShownWithWhatTheyAskAndCost()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/points/B.L/drop");
        Assert.Contains("Can't drop B.L", page.Text, StringComparison.Ordinal);
        Assert.Contains("each way, where a plain drop gives ±", page.Text, StringComparison.Ordinal);
        Assert.Contains("how far forward (minus: back) B.L lies from it", page.Text, StringComparison.Ordinal);
        Assert.Contains("Set a trammel", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(3, page.Document.QuerySelectorAll("a[href*='kind=direct&from=']").Length);
        Assert.Equal(4, page.Document.QuerySelectorAll("a[href*='kind=height&point=']").Length);
    }

    [Fact]
    public async Task Offset_DrawsItsMark_AndKeepsTheStepWithItsDirection()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/points/B.L/drop");
        var form = page.Document.Forms.Single(f => f.QuerySelector("input[name=way][value=offset]") is not null);
        Assert.Equal(2, form.QuerySelectorAll("input[type=text]").Length);
        page = await Send(app, page, "offset", ("dx", "-3"), ("dy", "1 1/2"));
        var file = app.Journals.Car(car.Id)!.File;
        var reading = Assert.IsType<Reading.Indirect>(Assert.Single(file.Readings));
        var way = Assert.IsType<IndirectWay.Offset>(reading.Way);
        Assert.Equal("Ba.L", way.Mark);
        Assert.Equal(-3, way.Dx.Inches, 12);
        Assert.Equal(1.5, way.Dy.Inches, 12);
        Assert.True(file.Frame.Point("B.L")!.CannotDrop);
        // The mark lies the step away from the point: forward of it here, and to its right.
        Assert.Equal(file.Frame.Point("B.L")!.Sketch!.X!.Value.Inches + 3, file.Frame.Point("Ba.L")!.Sketch!.X!.Value.Inches, 12);
        Assert.Contains("B.L brought down beside itself: 3 back and 1 1/2 left of mark Ba.L", page.Text, StringComparison.Ordinal);
        Assert.Contains("Measure to mark Ba.L", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Offset_WithoutItsDirection_IsRefusedBesideTheField()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await Send(app, await app.Get($"/cars/{car.Id}/points/B.L/drop"), "offset", ("dx", "-3"));
        Assert.Equal(422, page.Status);
        Assert.NotNull(page.Document.QuerySelector("#dy-fault"));
        Assert.Empty(app.Journals.Car(car.Id)!.File.Readings);
        Assert.Null(app.Journals.Car(car.Id)!.File.Frame.Point("Ba.L"));
    }

    [Fact]
    public async Task Midpoint_DrawsTwoMarks_AndCanBeUndoneAsOne()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        await Send(app, await app.Get($"/cars/{car.Id}/points/C.R/drop"), "midpoint");
        Assert.NotNull(app.Journals.Car(car.Id)!.File.Frame.Point("Ca.R"));
        Assert.NotNull(app.Journals.Car(car.Id)!.File.Frame.Point("Cb.R"));
        var floor = await app.Get($"/cars/{car.Id}/floor");
        await app.Submit(floor, $"/cars/{car.Id}/undos");
        var file = app.Journals.Car(car.Id)!.File;
        Assert.Null(file.Frame.Point("Ca.R"));
        Assert.False(file.Frame.Point("C.R")!.CannotDrop);
        Assert.Empty(file.Readings);
    }

    /// <summary>Every way has a form to the same address; this fills the one of that way.</summary>
    private static async Task<VisitedPage> Send(RunningApp app, VisitedPage page, string way, params (string Name, string Value)[] typed)
    {
        var form = page.Document.Forms.Single(f => f.QuerySelector($"input[name=way][value={way}]") is not null);
        var fields = form.QuerySelectorAll("input")
            .Select(i => KeyValuePair.Create(i.GetAttribute("name")!, i.GetAttribute("value") ?? ""))
            .Where(f => typed.All(t => t.Name != f.Key))
            .Concat(typed.Select(t => KeyValuePair.Create(t.Name, t.Value)));
        return await VisitedPage.Of(await app.Client.PostAsync(form.GetAttribute("action"), new FormUrlEncodedContent(fields)));
    }
}
