using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Web.Tests.Shed;

/// <summary>A shed of many cars: in pages, and searched by name or number.</summary>
public sealed class LongShedTests
{
    [Fact]
    public async Task ManyCars_AreShownInPages_AndFound()
    {
        await using var app = await RunningApp.Start();
        for (var i = 1; i <= 53; i++)
        {
            app.Journals.Add(CarFile.Named($"Car {i}", LengthUnit.Inch) with { Car = new CarIdentity($"Car {i}", $"QD {i:D4}") });
        }

        var first = await app.Get("/");
        Assert.Contains("53 cars, page 1 of 2", first.Text, StringComparison.Ordinal);
        Assert.Equal(50, first.Document.QuerySelectorAll(".shed-car").Length);
        var second = await app.Get("/?q=&page=2");
        Assert.Equal(["Car 51", "Car 52", "Car 53"], second.Document.QuerySelectorAll(".shed-name").Select(n => n.TextContent));
        var found = await app.Get("/?q=qd%200007");
        Assert.Equal("Car 7", Assert.Single(found.Document.QuerySelectorAll(".shed-name")).TextContent);
        Assert.Contains("No car here has", (await app.Get("/?q=%3Cscript%3E")).Text, StringComparison.Ordinal);
        Assert.Equal(200, (await app.Get("/?page=999999")).Status);
    }

    [Fact]
    public async Task ACarThatCannotBeRead_DoesNotHideTheOthers()
    {
        await using var app = await RunningApp.Start();
        app.Journals.Add(CarFile.Named("One", LengthUnit.Inch));
        app.Journals.Add(CarFile.Named("Two", LengthUnit.Inch));
        app.RunSql("INSERT INTO entry (car, sequence, together, id, at, act) VALUES (1, 2, 2, 'x', '', '{}')");
        var shed = await app.Get("/");
        Assert.Equal(200, shed.Status);
        Assert.Contains("Two", shed.Text, StringComparison.Ordinal);
        Assert.Contains("cannot be read", shed.Text, StringComparison.Ordinal);
        Assert.Contains("is not understood", (await app.Get("/cars/1/floor")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ACarThatTakesLong_DoesNotKeepTheListWaiting()
    {
        await using var app = await RunningApp.Start();
        var points = FrameSkeleton.Ladder(5, LengthUnit.Inch);
        var length = Length.FromInches(40);
        app.Journals.Add(
            CarFile.Named("Large", LengthUnit.Inch) with
            {
                Frame = new Frame(points, null),
                Readings = [.. Enumerable.Range(1, 1001).Select(i => new Reading.Plan($"r{i}", points[0].Id, points[1].Id, length))],
            }
        );
        app.Journals.Add(Plumbmark.Inspection.Demo.DemoCar.File());
        var shed = await app.Get("/");
        Assert.Single(shed.Document.QuerySelectorAll(".shed-car .verdict"));
        Assert.Contains("Large", shed.Text, StringComparison.Ordinal);
    }
}
