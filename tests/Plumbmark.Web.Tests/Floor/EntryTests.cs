using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>Readings are picked, typed, kept, refused, taken back and undone, all without JavaScript.</summary>
public sealed class EntryTests
{
    [Fact]
    public async Task Pick_TwoTaps_FillBothEnds()
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var floor = await app.Get($"/cars/{car.Id}/floor");
        floor = await app.Get(Tap(floor, "B.L"));
        Assert.Contains("Tap the point where it ends", floor.Text, StringComparison.Ordinal);
        floor = await app.Get(Tap(floor, "C.R"));
        Assert.Contains("Picked", floor.Text, StringComparison.Ordinal);
        var sent = floor.Filled($"/cars/{car.Id}/readings");
        Assert.Contains(KeyValuePair.Create("from", "B.L"), sent);
        Assert.Contains(KeyValuePair.Create("to", "C.R"), sent);
    }

    [Theory]
    [InlineData("plan", "47 5/8")]
    [InlineData("direct", "5' 1 3/16\"")]
    [InlineData("rise", "-1/16")]
    public async Task Keep_BetweenTwoPoints_IsInTheJournalAsTyped(string kind, string value)
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var page = await Enter(app, car.Id, kind, ("from", "B.L"), ("to", "C.R"), ("value", value));
        Assert.Equal(200, page.Status);
        Assert.Contains(value, page.Text, StringComparison.Ordinal);
        var reading = Assert.Single(app.Journals.Car(car.Id)!.File.Readings);
        Assert.Equal("r1", reading.Id);
        Assert.Equal(["B.L", "C.R"], reading.Points);
    }

    [Fact]
    public async Task Keep_EveryOtherKind_IsRead()
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        await Enter(app, car.Id, "height", ("point", "A.L"), ("value", "13 1/16"));
        await Enter(app, car.Id, "offset", ("point", "C.L"), ("from", "B.L"), ("to", "D.L"), ("value", "-1/4"));
        await Enter(app, car.Id, "drop", ("point", "A.L"), ("dx", "1/32"), ("dy", "-1/32"));
        await Enter(app, car.Id, "drop", ("point", "A.R"), ("value", "1/16"));
        await Enter(app, car.Id, "plan", ("from", "A.L"), ("to", "B.R"), ("value", "60"), ("startAt", "10"), ("note", "stand in the way"));
        var readings = app.Journals.Car(car.Id)!.File.Readings;
        Assert.Collection(
            readings,
            r => Assert.IsType<Reading.Height>(r),
            r => Assert.Equal(-0.25, Assert.IsType<Reading.Offset>(r).Value.Inches),
            r => Assert.NotNull(Assert.IsType<Reading.Drop>(r).Dx),
            r => Assert.NotNull(Assert.IsType<Reading.Drop>(r).Distance),
            r => Assert.Equal("stand in the way", Assert.IsType<Reading.Plan>(r).Note)
        );
        Assert.Equal(Length.FromInches(10), readings[4].StartAt);
    }

    [Theory]
    [InlineData("plan", "47 9/8", "not less than one")]
    [InlineData("plan", "1,210", "could be 1210 or 1.210")]
    [InlineData("plan", "", "Nothing is written here")]
    [InlineData("plan", "0", "shows more than zero")]
    [InlineData("plan", "-3", "without a sign")]
    [InlineData("direct", "<script>alert(1)</script>", "does not belong in a length")]
    public async Task Keep_WrongValue_IsToldAndNothingKept(string kind, string value, string told)
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var page = await Enter(app, car.Id, kind, ("from", "B.L"), ("to", "C.R"), ("value", value));
        Assert.Equal(422, page.Status);
        Assert.Contains(told, page.Text, StringComparison.Ordinal);
        Assert.Empty(page.Document.QuerySelectorAll("main script"));
        Assert.Contains(KeyValuePair.Create("value", value), page.Filled($"/cars/{car.Id}/readings"));
        Assert.Empty(app.Journals.Car(car.Id)!.File.Readings);
    }

    [Fact]
    public async Task Keep_SeveralFaults_AreToldAtOnce()
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var page = await Enter(app, car.Id, "plan", ("from", ""), ("to", "Z.Z"), ("value", "5/0"), ("startAt", "x"));
        Assert.Contains("No point is picked here", page.Text, StringComparison.Ordinal);
        Assert.Contains("not on the frame any more", page.Text, StringComparison.Ordinal);
        Assert.Contains("divides by zero", page.Text, StringComparison.Ordinal);
        Assert.Equal(4, page.Document.QuerySelectorAll(".fault").Length);
    }

    [Fact]
    public async Task Keep_SameFormTwice_IsOneReading_ButGoneBackAndChanged_IsTwo()
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var form = await app.Get($"/cars/{car.Id}/floor?kind=plan&from=B.L&to=C.R");
        await app.Submit(form, $"/cars/{car.Id}/readings", ("value", "27"));
        var twice = await app.Submit(form, $"/cars/{car.Id}/readings", ("value", "27"));
        Assert.Contains("kept once", twice.Text, StringComparison.Ordinal);
        Assert.Single(app.Journals.Car(car.Id)!.File.Readings);
        await app.Submit(form, $"/cars/{car.Id}/readings", ("value", "27 1/16"));
        Assert.Equal(["r1", "r2"], app.Journals.Car(car.Id)!.File.Readings.Select(r => r.Id));
    }

    [Fact]
    public async Task Undo_TakesTheReadingOut_AndPutBackBringsIt()
    {
        await using var app = await RunningApp.Start();
        var car = Ladder(app);
        var page = await Enter(app, car.Id, "plan", ("from", "B.L"), ("to", "C.R"), ("value", "27"));
        page = await app.Submit(page, $"/cars/{car.Id}/undos");
        Assert.Contains("Undone", page.Text, StringComparison.Ordinal);
        Assert.Empty(app.Journals.Car(car.Id)!.File.Readings);
        page = await app.Submit(page, $"/cars/{car.Id}/undos");
        Assert.Contains("Put back", page.Text, StringComparison.Ordinal);
        Assert.Single(app.Journals.Car(car.Id)!.File.Readings);

        // A name is never given twice, although the first reading was gone for a while.
        await app.Submit(page, $"/cars/{car.Id}/undos");
        await Enter(app, car.Id, "plan", ("from", "B.L"), ("to", "C.R"), ("value", "28"));
        Assert.Equal("r2", Assert.Single(app.Journals.Car(car.Id)!.File.Readings).Id);
    }

    [Fact]
    public async Task TakeBack_NeedsAReason_AndKeepsTheReadingOnRecord()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var action = $"/cars/{car.Id}/readings/r3/withdrawal";
        var page = await app.Submit(await app.Get(action), action, ("reason", ""));
        Assert.Equal(422, page.Status);
        Assert.Contains("a reason is needed", page.Text, StringComparison.Ordinal);
        await app.Submit(page, action, ("reason", "misread the tape"));
        Assert.Equal("misread the tape", app.Journals.Car(car.Id)!.File.Readings.Single(r => r.Id == "r3").Withdrawn);
        Assert.Equal(404, (await app.Get(action)).Status);
    }

    [Fact]
    public async Task Undo_OfAPointWithReadings_IsRefusedInWords()
    {
        await using var app = await RunningApp.Start();
        var empty = app.Journals.Add(CarFile.Named("Empty", LengthUnit.Inch));
        await app.Submit(await app.Get($"/cars/{empty.Id}/points"), $"/cars/{empty.Id}/skeletons", ("skeleton", "5"));
        var together = app.Journals.Car(empty.Id)!.Entries[^1].Together;
        var floor = await Enter(app, empty.Id, "plan", ("from", "B.L"), ("to", "C.R"), ("value", "27"));
        var page = await app.Submit(floor, $"/cars/{empty.Id}/undos", ("together", $"{together}"));
        Assert.Equal(422, page.Status);
        Assert.Contains("not among the points", page.Text, StringComparison.Ordinal);
        Assert.Equal(10, app.Journals.Car(empty.Id)!.File.Frame.Points.Count);
    }

    private static OpenCar Ladder(RunningApp app) =>
        app.Journals.Add(CarFile.Named("Ladder", LengthUnit.Inch) with { Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)) });

    private static string Tap(VisitedPage page, string point) =>
        page
            .Document.QuerySelectorAll(".picker-point")
            .Single(a => a.GetAttribute("aria-label")!.StartsWith(point, StringComparison.Ordinal))
            .GetAttribute("href")!;

    private static async Task<VisitedPage> Enter(RunningApp app, long car, string kind, params (string, string)[] typed) =>
        await app.Submit(await app.Get($"/cars/{car}/floor?kind={kind}"), $"/cars/{car}/readings", typed);
}
