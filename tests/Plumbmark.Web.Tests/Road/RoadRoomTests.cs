using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Web.Tests.Road;

/// <summary>The Road without JavaScript, and never a word that a car is fit for the road.</summary>
public sealed class RoadRoomTests
{
    [Fact]
    public async Task AnEmptyCar_IsToldWhatIsMissing()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Empty", LengthUnit.Inch));
        var page = await app.Get($"/cars/{car.Id}/road");
        Assert.Equal(200, page.Status);
        Assert.Contains("can't tell yet", page.Text, StringComparison.Ordinal);
        Assert.Contains("The front suspension is not drawn yet", page.Text, StringComparison.Ordinal);
        Assert.Contains("checked by a competent person", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ABentMount_IsOut_WithItsDrawingAndWhatMakesIt()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.BentMount));
        var page = await app.Get($"/cars/{car.Id}/road");
        Assert.Contains("The adjusters cannot cure it", page.Text, StringComparison.Ordinal);
        Assert.Contains("right lower arm's rear pivot", page.Text, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector(".road-picture svg"));
        Assert.DoesNotContain("roadworthy", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("is safe", page.Text, StringComparison.OrdinalIgnoreCase);
        var trials = await app.Get($"/cars/{car.Id}/road/trials");
        Assert.Contains("right castor: agree", trials.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheSuspension_IsDrawn_RefusedBesideItsField_AndDrawnAnew()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None) with { Road = null });
        var action = $"/cars/{car.Id}/road/front";
        var page = await app.Submit(
            await app.Get(action),
            action,
            ("upperFront", "K"),
            ("upperJoint", "86 5/8, 23.625"),
            ("camber", "0°70'")
        );
        Assert.Equal(422, page.Status);
        Assert.Contains("three are needed", page.Document.QuerySelector("#f-upperJoint-fault")!.TextContent, StringComparison.Ordinal);
        page = await app.Submit(page, action, ("upperJoint", "86 5/8, 23.625, 17 1/2"));
        Assert.Contains(
            "an angle of -60 to 60 degrees is needed",
            page.Document.QuerySelector("#f-camber-fault")!.TextContent,
            StringComparison.Ordinal
        );
        Assert.Equal("K", ((AngleSharp.Html.Dom.IHtmlInputElement)page.Document.QuerySelector("#f-upperFront")!).Value);
        page = await app.Submit(page, action, ("camber", "0°30'"), ("lowerArm", "one piece"), ("trunnion.offset", "0.7"));
        Assert.Equal(200, page.Status);
        var front = app.Journals.Car(car.Id)!.File.Road!.Front!;
        Assert.Equal("K", Assert.IsType<PickUp.AtPair>(front.UpperFront).Name);
        Assert.Equal(23.625, front.UpperJoint!.Y!.Value.Inches);
        Assert.Equal(0.7, front.TrunnionOffset!.Value.Inches);
        Assert.Equal(30, front.Camber!.Value.Minutes);
        var again = await app.Get(action);
        Assert.Equal("0.7", ((AngleSharp.Html.Dom.IHtmlInputElement)again.Document.QuerySelector("#f-trunnion-offset")!).Value);

        var rear = $"/cars/{car.Id}/road/rear";
        await app.Submit(await app.Get(rear), rear, ("eye", "G"), ("eyeToAxle", "14"), ("track", "50"));
        Assert.Equal(50, Assert.IsType<RearDrawing.LiveAxle>(app.Journals.Car(car.Id)!.File.Road!.Rear).Track!.Value.Inches);
        Assert.NotNull(app.Journals.Car(car.Id)!.File.Road!.Front);
    }

    [Fact]
    public async Task APairThatIsNotThere_IsRefusedWithNothingChanged()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None) with { Road = null });
        var action = $"/cars/{car.Id}/road/front";
        var page = await app.Submit(await app.Get(action), action, ("upperFront", "Z"));
        Assert.Equal(422, page.Status);
        Assert.Contains("The pair \"Z\" needs the points Z.L and Z.R", page.Text, StringComparison.Ordinal);
        Assert.Null(app.Journals.Car(car.Id)!.File.Road);
    }

    [Fact]
    public async Task FiguresAndAdjusters_AreKeptAndStruckOut()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None) with { Road = null });
        var action = $"/cars/{car.Id}/road/figures";
        var page = await app.Submit(
            await app.Get(action),
            action,
            ("figure", "toeIn"),
            ("value", "1/16"),
            ("limit", "1/16"),
            ("diameter", "15"),
            ("source", "factory")
        );
        Assert.Equal(200, page.Status);
        Assert.Equal(FigureKind.ToeIn, Assert.Single(app.Journals.Car(car.Id)!.File.Road!.Book).Kind);
        page = await app.Submit(page, action, ("figure", "camber"), ("limit", "1"), ("least", "0"), ("source", "own"));
        Assert.Contains("not both", page.Text, StringComparison.Ordinal);
        await app.Submit(await app.Get(action), $"{action}/ToeIn/removal");
        Assert.Empty(app.Journals.Car(car.Id)!.File.Road!.Book);

        action = $"/cars/{car.Id}/road/adjusters";
        page = await app.Submit(
            await app.Get(action),
            action,
            ("id", "left shims"),
            ("kind", "shims"),
            ("side", "L"),
            ("at", "upperFront, upperRear"),
            ("most", "1/4"),
            ("step", "1/32")
        );
        Assert.Equal(200, page.Status);
        Assert.Equal(2, Assert.Single(app.Journals.Car(car.Id)!.File.Road!.Adjusters).At.Count);
        await app.Submit(page, action, ("id", "left rod"), ("kind", "trackRod"), ("side", "L"), ("most", "1/2"));
        Assert.Equal(2, app.Journals.Car(car.Id)!.File.Road!.Adjusters.Count);
        await app.Submit(await app.Get(action), $"{action}/left%20shims/removal");
        Assert.Equal("left rod", Assert.Single(app.Journals.Car(car.Id)!.File.Road!.Adjusters).Id);
    }

    [Fact]
    public async Task AFinding_IsKept_AndTakenBackWithItsReason()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None) with { Road = DemoRoad.Section() });
        var action = $"/cars/{car.Id}/road/findings";
        var page = await app.Submit(await app.Get($"{action}?part=Lever"), action, ("side", "L"), ("up", "0.22"));
        Assert.Equal(200, page.Status);
        Assert.Contains("left steering lever: up 0.22", page.Text, StringComparison.Ordinal);
        page = await app.Submit(await app.Get($"{action}?part=Lever"), action, ("side", "L"));
        Assert.Contains("give at least one of forward, out, up", page.Text, StringComparison.Ordinal);
        await app.Submit(await app.Get($"{action}/p1/withdrawal"), $"{action}/p1/withdrawal", ("reason", "measured the other lever"));
        Assert.Equal("measured the other lever", Assert.Single(app.Journals.Car(car.Id)!.File.Road!.Parts).Withdrawn);
        Assert.Equal(404, (await app.Get($"{action}/p1/withdrawal")).Status);
    }

    [Fact]
    public async Task WheelReadings_GiveResults_AndAreTakenBack()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None));
        var action = $"/cars/{car.Id}/road/wheels";
        var page = await app.Submit(
            await app.Get($"{action}?kind=plumbLine"),
            action,
            ("wheel", "FL"),
            ("top", "1 1/8"),
            ("bottom", "1"),
            ("span", "15")
        );
        Assert.Equal(200, page.Status);
        // 1/8 in over 15 in, top further from the line: half a degree the wrong way.
        Assert.Contains("front left camber −0°29'", page.Text, StringComparison.Ordinal);
        Assert.Contains("Read in one position only", page.Text, StringComparison.Ordinal);
        page = await app.Submit(
            await app.Get($"{action}?kind=swing"),
            action,
            ("wheel", "FL"),
            ("ahead", "0"),
            ("outTurn", "20"),
            ("outCamber", "1°30'"),
            ("inTurn", "x"),
            ("inCamber", "-0°30'")
        );
        Assert.Equal(422, page.Status);
        Assert.NotNull(page.Document.QuerySelector("#f-inTurn-fault"));
        await app.Submit(page, action, ("inTurn", "20"));
        Assert.Equal(2, app.Journals.Car(car.Id)!.File.Road!.Wheels.Count);
        await app.Submit(await app.Get($"{action}/w1/withdrawal"), $"{action}/w1/withdrawal", ("reason", "tyre flat"));
        var road = await app.Get($"/cars/{car.Id}/road");
        Assert.DoesNotContain("front left camber", road.Text, StringComparison.Ordinal);
        Assert.Contains("front left castor", road.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PressingTwice_KeepsOneReading()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoRoad.Car(DemoRoad.Fault.None));
        var action = $"/cars/{car.Id}/road/wheels";
        var form = await app.Get($"{action}?kind=wheelbase");
        await app.Submit(form, action, ("side", "L"), ("value", "87"));
        await app.Submit(form, action, ("side", "L"), ("value", "87"));
        Assert.Single(app.Journals.Car(car.Id)!.File.Road!.Wheels);
    }
}
