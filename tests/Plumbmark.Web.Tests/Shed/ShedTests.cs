using System.Net.Http.Headers;
using System.Text;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Shed;

/// <summary>Cars come, are named, go out as files and into the bin, all without JavaScript.</summary>
public sealed class ShedTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Create_FromASkeleton_OpensTheFloorWithItsPoints()
    {
        await using var app = await RunningApp.Start();
        var floor = await app.Submit(await app.Get("/"), "/cars", ("name", "Barn find"), ("skeleton", "6"));
        Assert.Equal(200, floor.Status);
        Assert.EndsWith("/floor", floor.Path, StringComparison.Ordinal);
        var car = Assert.Single(app.Journals.Cars());
        Assert.Equal("Barn find", car.File.Car.Name);
        Assert.Equal(12, car.File.Frame.Points.Count);
        Assert.Equal(12, floor.Document.QuerySelectorAll(".picker-point").Length);
        Assert.Equal(LimitSource.Practice, car.File.Frame.Limits!.Source);
    }

    [Fact]
    public async Task Create_SentTwice_IsOneCar()
    {
        await using var app = await RunningApp.Start();
        var shed = await app.Get("/");
        await app.Submit(shed, "/cars", ("name", "Barn find"));
        await app.Submit(shed, "/cars", ("name", "Barn find"));
        Assert.Single(app.Journals.Cars());
    }

    [Fact]
    public async Task Create_WithoutAName_SaysSoAndKeepsNothing()
    {
        await using var app = await RunningApp.Start();
        var again = await app.Submit(await app.Get("/"), "/cars", ("name", "  "), ("units", "mm"));
        Assert.Equal(422, again.Status);
        Assert.Contains("a name is needed", again.Text, StringComparison.Ordinal);
        Assert.Equal("mm", again.Form("/cars").Elements["units"]!.GetAttribute("value") ?? "mm");
        Assert.Empty(app.Journals.Cars());
    }

    [Fact]
    public async Task Describe_IsShownAndCanBeUndone()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        await app.Submit(await app.Get($"/cars/{car.Id}"), $"/cars/{car.Id}/description", ("name", "Mine"), ("serial", "<b>7</b>"));
        Assert.Equal("Mine", app.Journals.Car(car.Id)!.File.Car.Name);
        var shed = await app.Get("/");
        Assert.Contains("<b>7</b>", shed.Text, StringComparison.Ordinal);
        Assert.Empty(shed.Document.QuerySelectorAll("main b"));

        var together = app.Journals.Car(car.Id)!.Entries[^1].Together;
        await app.Submit(await app.Get($"/cars/{car.Id}/floor"), $"/cars/{car.Id}/undos", ("together", $"{together}"));
        Assert.Equal("Quillorne Dipper (demo)", app.Journals.Car(car.Id)!.File.Car.Name);
    }

    [Fact]
    public async Task Bin_KeepsTheCar_AndGivesItBack()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var shed = await app.Submit(await app.Get($"/cars/{car.Id}"), $"/cars/{car.Id}/binning");
        Assert.Contains("Bin (1)", shed.Text, StringComparison.Ordinal);
        Assert.Equal(404, (await app.Get($"/cars/{car.Id}/floor")).Status);
        await app.Submit(shed, $"/bin/{car.Id}/return");
        Assert.Equal(200, (await app.Get($"/cars/{car.Id}/floor")).Status);
    }

    [Fact]
    public async Task File_TakenOutAndBroughtIn_IsTheSameCar()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var bytes = await app.Client.GetByteArrayAsync($"/cars/{car.Id}/file", Stop);
        Assert.Equal(CarFileWriter.Write(DemoCar.File()), bytes);

        var floor = await Upload(app, bytes);
        Assert.Equal(200, floor.Status);
        Assert.Equal(2, app.Journals.Cars().Count);
        Assert.Equal(bytes, CarFileWriter.Write(app.Journals.Cars()[1].File));
    }

    [Theory]
    [InlineData("{ \"format\": \"plumbmark-car\"", "line 1")]
    [InlineData("not a car", "line 1")]
    [InlineData("{\"format\":\"plumbmark-car\",\"version\":1,\"units\":\"in\",\"colour\":\"red\"}", "colour")]
    [InlineData(
        "{\"format\":\"plumbmark-car\",\"version\":1,\"units\":\"in\",\"readings\":[{\"id\":\"r1\",\"kind\":\"plan\",\"from\":\"A\",\"to\":\"B\",\"value\":\"5/0\"}]}",
        "divides by zero"
    )]
    public async Task File_Wrong_ListsTheFaultsAndLeavesTheStoreUntouched(string text, string told)
    {
        await using var app = await RunningApp.Start();
        var page = await Upload(app, Encoding.UTF8.GetBytes(text));
        Assert.Equal(422, page.Status);
        Assert.Contains(told, page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(app.Journals.Cars());
        Assert.Empty(app.Journals.Bin());
    }

    [Fact]
    public async Task File_OfTenMegabytes_IsRefusedInWords()
    {
        await using var app = await RunningApp.Start();
        var page = await Upload(app, new byte[10 * 1024 * 1024]);
        Assert.Equal(422, page.Status);
        Assert.Contains("was not brought in", page.Text, StringComparison.Ordinal);
        Assert.Empty(app.Journals.Cars());
    }

    private static async Task<VisitedPage> Upload(RunningApp app, byte[] bytes)
    {
        var shed = await app.Get("/");
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in shed.Filled("/car-files"))
        {
            form.Add(new StringContent(value), name);
        }

        var file = new ByteArrayContent(bytes);
        file.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        form.Add(file, "file", "car.json");
        return await VisitedPage.Of(await app.Client.PostAsync("/car-files", form, Stop));
    }
}
