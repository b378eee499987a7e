using Plumbmark.Drawing.Exchange;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Sheet;

/// <summary>Data out, and readings in from CSV, by a visitor without script.</summary>
public sealed class ReadingFilesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Extracts_AreLinkedAndCome()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/sheet");
        foreach (var extract in Extract.All)
        {
            var link = Assert.Single(page.Document.QuerySelectorAll($"a[href='/cars/{car.Id}/extracts/{extract.Word}']"));
            var answer = await app.Client.GetAsync(link.GetAttribute("href"), Stop);
            Assert.Equal(extract.ContentType, answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal(
                $"quillorne-dipper-demo-{extract.Word}.{extract.Ending}",
                answer.Content.Headers.ContentDisposition!.FileNameStar ?? answer.Content.Headers.ContentDisposition.FileName
            );
            Assert.NotEmpty(await answer.Content.ReadAsByteArrayAsync(Stop));
        }

        Assert.Equal(404, (await app.Get($"/cars/{car.Id}/extracts/nonsense")).Status);
    }

    [Fact]
    public async Task Readings_Pasted_AreTakenAsOneAct()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(CarFile.Named("Invented", LengthUnit.Inch));
        var page = await app.Get($"/cars/{car.Id}/sheet/readings-in");
        page = await app.Submit(
            page,
            $"/cars/{car.Id}/reading-files",
            ("csv", "from,to,value\nA.L,B.L,60 1/4\nA.R,B.R,60 3/16\n"),
            ("points", "add")
        );
        Assert.Equal(200, page.Status);
        Assert.EndsWith("/floor", page.Path, StringComparison.Ordinal);
        var kept = app.Journals.Car(car.Id)!.File;
        Assert.Equal(["r1", "r2"], kept.Readings.Select(r => r.Id));
        Assert.Equal(4, kept.Frame.Points.Count);
        Assert.Equal("60 1/4", Assert.IsType<Reading.Plan>(kept.Readings[0]).Value.AsTyped);
    }

    [Fact]
    public async Task Readings_Wrong_AreToldByRowAndNothingIsTaken_ThenMatchedByHand()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var before = car.File.Readings.Count;
        var page = await app.Get($"/cars/{car.Id}/sheet/readings-in");
        page = await app.Submit(page, $"/cars/{car.Id}/reading-files", ("csv", "one,two,how far\nA.L,B.L,22 1/4\n"));
        Assert.Equal(422, page.Status);
        Assert.Contains("No column holds the length", page.Text, StringComparison.Ordinal);
        Assert.Equal(before, app.Journals.Car(car.Id)!.File.Readings.Count);
        page = await app.Submit(page, $"/cars/{car.Id}/reading-files", ("column-0", "from"), ("column-1", "to"), ("column-2", "value"));
        Assert.Equal(200, page.Status);
        Assert.Equal(before + 1, app.Journals.Car(car.Id)!.File.Readings.Count);
    }

    [Fact]
    public async Task Readings_NothingSent_IsTold()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Submit(await app.Get($"/cars/{car.Id}/sheet/readings-in"), $"/cars/{car.Id}/reading-files");
        Assert.Equal(422, page.Status);
        Assert.Contains("Choose a file, or paste", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_TakenOutAndBroughtIn_ChangeNothing()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var csv = await app.Client.GetStringAsync($"/cars/{car.Id}/extracts/readings", Stop);
        var page = await app.Submit(await app.Get($"/cars/{car.Id}/sheet/readings-in"), $"/cars/{car.Id}/reading-files", ("csv", csv));
        Assert.Equal(200, page.Status);
        Assert.Equal(car.File.Readings, app.Journals.Car(car.Id)!.File.Readings);
    }

    [Fact]
    public async Task ClubFile_HasNoNameAndNoSerialUnlessChosen()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var given = await app.Client.GetStringAsync($"/cars/{car.Id}/club-file", Stop);
        Assert.DoesNotContain("QD 1047", given, StringComparison.Ordinal);
        Assert.Contains("A car for comparison", given, StringComparison.Ordinal);
        given = await app.Client.GetStringAsync($"/cars/{car.Id}/club-file?serial=yes&name=Ours", Stop);
        Assert.Contains("QD 1047", given, StringComparison.Ordinal);
        Assert.Contains("Ours", given, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_ComesBackInAnotherShed()
    {
        await using var here = await RunningApp.Start();
        here.Journals.Add(DemoCar.File());
        var backup = await here.Client.GetByteArrayAsync("/backup", Stop);
        await using var there = await RunningApp.Start();
        var page = await there.Get("/");
        using var form = new MultipartFormDataContent();
        foreach (var (name, value) in page.Filled("/restores").Where(f => f.Key != "backup"))
        {
            form.Add(new StringContent(value), name);
        }

        form.Add(new ByteArrayContent(backup), "backup", "shed.backup");
        var answer = await VisitedPage.Of(await there.Client.PostAsync("/restores", form, Stop));
        Assert.Equal(200, answer.Status);
        Assert.Contains("Quillorne Dipper", answer.Text, StringComparison.Ordinal);
        Assert.Equal(
            CarFileWriter.Write(here.Journals.Cars()[0].File),
            CarFileWriter.Write(there.Journals.Cars().Single(c => c.File.Car.Serial == "QD 1047").File)
        );
    }
}
