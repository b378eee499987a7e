using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>Points, tools and limits are set up without JavaScript.</summary>
public sealed class SetUpTests
{
    [Fact]
    public async Task Points_APairIsAdded_Edited_AndRubbedOut()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Empty", LengthUnit.Inch));
        await app.Submit(
            await app.Get($"/cars/{car.Id}/points"),
            $"/cars/{car.Id}/points",
            ("name", "K"),
            ("label", "Kick-up"),
            ("role", "Body"),
            ("x", "40 1/2"),
            ("half", "15")
        );
        var points = app.Journals.Car(car.Id)!.File.Frame.Points;
        Assert.Equal(["K.L", "K.R"], points.Select(p => p.Id));
        Assert.Equal(-15, points[1].Sketch!.Y!.Value.Inches);

        var edit = $"/cars/{car.Id}/points/K.L";
        await app.Submit(
            await app.Get(edit),
            edit,
            ("one-book-y", "15 1/16"),
            ("two-book-y", "-15 1/16"),
            ("role", "Spring"),
            ("drop", "0")
        );
        points = app.Journals.Car(car.Id)!.File.Frame.Points;
        Assert.All(points, p => Assert.Equal(PointRole.Spring, p.Role));
        Assert.Null(points[0].Nominal!.X);
        Assert.Equal(15.0625, points[0].Nominal!.Y!.Value.Inches);
        Assert.Equal(Length.Zero, points[0].DropSigma);
        Assert.Equal(40.5, points[0].Sketch!.X!.Value.Inches);

        await app.Submit(await app.Get(edit), $"{edit}/removal");
        Assert.Empty(app.Journals.Car(car.Id)!.File.Frame.Points);
    }

    [Fact]
    public async Task Points_WithReadings_StayAndNamesAreOnce()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/points/A.L");
        Assert.DoesNotContain(page.Document.Forms, f => f.GetAttribute("action")!.EndsWith("/removal", StringComparison.Ordinal));
        var again = await app.Submit(await app.Get($"/cars/{car.Id}/points"), $"/cars/{car.Id}/points", ("name", "A"));
        Assert.Equal(422, again.Status);
        Assert.Contains("There is a point A.L already", again.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limits_AreChosen_Refused_AndTakenAway()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var action = $"/cars/{car.Id}/limits";
        var page = await app.Submit(await app.Get(action), action, ("mirror", "0"), ("height", "x"));
        Assert.Equal(422, page.Status);
        Assert.Equal(2, page.Document.QuerySelectorAll(".fault").Length);
        await app.Submit(page, action, ("mirror", "1/16"), ("height", ""), ("point", ""), ("source", "Factory"), ("note", "book, page 12"));
        var limits = app.Journals.Car(car.Id)!.File.Frame.Limits!;
        Assert.Equal(0.0625, limits.Mirror!.Value.Inches);
        Assert.Null(limits.Height);
        Assert.Equal(LimitSource.Factory, limits.Source);
        await app.Submit(await app.Get(action), action, ("mirror", ""), ("height", ""), ("point", ""));
        Assert.Null(app.Journals.Car(car.Id)!.File.Frame.Limits);
    }

    [Fact]
    public async Task Tools_AreDescribed_Changed_AndPutAway()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Empty", LengthUnit.Millimetre));
        var action = $"/cars/{car.Id}/tools";
        await app.Submit(await app.Get(action), action, ("name", "long tape"), ("kind", "Tape"), ("class", "II"), ("division", "1"));
        var tool = Assert.Single(app.Journals.Car(car.Id)!.File.Tools);
        Assert.Equal(TapeClass.II, tool.Class);
        Assert.Equal(1, tool.Division!.Value.Millimetres);
        var refused = await app.Submit(await app.Get(action), action, ("name", "level"), ("kind", "Level"), ("class", "II"));
        Assert.Contains("printed on tapes and rules", refused.Text, StringComparison.Ordinal);
        await app.Submit(await app.Get(action), $"{action}/long%20tape/removal");
        Assert.Empty(app.Journals.Car(car.Id)!.File.Tools);
    }
}
