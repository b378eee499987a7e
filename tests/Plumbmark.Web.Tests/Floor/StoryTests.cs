using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using SkiaSharp;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>A point's story, photos on it, two sessions against each other, and the frame in space.</summary>
public sealed class StoryTests
{
    [Fact]
    public async Task Story_TellsPlaceVerdictsReadingsAndHistory()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var floor = await app.Get($"/cars/{car.Id}/floor");
        var link = floor
            .Document.QuerySelectorAll(".floor-drawing a")
            .First(a => a.GetAttribute("data-key") == "A.R")
            .GetAttribute("href")!;
        Assert.Equal($"/cars/{car.Id}/points/A.R/story", link);
        var page = await app.Get(link);
        Assert.Contains("Right of the centre line", page.Text, StringComparison.Ordinal);
        Assert.Contains("The ± holds 95 times in 100", page.Text, StringComparison.Ordinal);
        var expected = car.File.Readings.Where(r => r.Points.Contains("A.R")).Select(r => r.Id).ToHashSet();
        Assert.Equal(expected, page.Document.QuerySelectorAll(".floor-readings .floor-id").Select(e => e.TextContent).ToHashSet());
        Assert.Contains("point A.R drawn", page.Text, StringComparison.Ordinal);
        Assert.Equal(404, (await app.Get($"/cars/{car.Id}/points/Q.R/story")).Status);
    }

    [Fact]
    public async Task Photo_OfAPointAndOfAReading_StandsOnTheStory_AndCanBePutAway()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var address = $"/cars/{car.Id}/points/A.R/story";
        var page = await app.Get(address);
        var reading = car.File.Readings.First(r => r.Points.Contains("A.R")).Id;
        foreach (var subject in new[] { ("point", "A.R"), ("reading", reading) })
        {
            page = await Send(app, page, car.Id, subject);
            Assert.Equal(200, page.Status);
        }

        Assert.Equal(2, page.Document.QuerySelectorAll(".story-photo img").Length);
        var photos = app.Journals.Car(car.Id)!.File.Photos;
        Assert.Equal([new PhotoOf(photos[0].Photo, "A.R"), new PhotoOf(photos[1].Photo, null, reading)], photos);
        var sent = await app.Client.GetAsync(page.Document.QuerySelector(".story-photo img")!.GetAttribute("src"));
        Assert.Equal("image/jpeg", sent.Content.Headers.ContentType!.MediaType);
        var removal = page.Document.Forms.First(f => f.GetAttribute("action")!.EndsWith("/removal", StringComparison.Ordinal));
        page = await app.Submit(page, removal.GetAttribute("action")!);
        Assert.Single(page.Document.QuerySelectorAll(".story-photo img"));
        Assert.Single(app.Journals.Car(car.Id)!.File.Photos);
    }

    [Fact]
    public async Task Sessions_CompareOnlyWhatWasMeasuredAnew()
    {
        await using var app = await RunningApp.Start();
        var demo = DemoCar.File();
        var car = app.Journals.Add(demo with { Readings = [] });
        var page = await app.Get($"/cars/{car.Id}/sessions");
        Assert.Contains("There are not two sessions yet", page.Text, StringComparison.Ordinal);
        // The same frame measured twice: nothing may be called changed.
        foreach (var reading in demo.Readings.Concat(demo.Readings.Select(r => r with { Id = $"{r.Id}b" })))
        {
            app.Journals.Append(car.Id, Guid.NewGuid(), null, _ => [new Inspection.Journal.Act.ReadingTaken(reading)]);
        }

        var last = app
            .Journals.Car(car.Id)!
            .Entries.First(e => e.Entry.Act is Inspection.Journal.Act.ReadingTaken t && t.Reading.Id == demo.Readings[^1].Id);
        page = await app.Get($"/cars/{car.Id}/sessions?after={last.Sequence}");
        Assert.Contains($"Before ({demo.Readings.Count} readings)", page.Text, StringComparison.Ordinal);
        Assert.Contains($"Since ({demo.Readings.Count} readings)", page.Text, StringComparison.Ordinal);
        var rows = page.Document.QuerySelectorAll("tbody tr");
        Assert.NotEmpty(rows);
        Assert.All(rows, r => Assert.EndsWith("could be noise", r.TextContent.Trim(), StringComparison.Ordinal));
        Assert.NotNull(page.Document.QuerySelector(".overlay"));
    }

    [Fact]
    public async Task Turning_HasAStillPicture_AndItsNumbersInThePage()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/turning");
        Assert.NotNull(page.Document.QuerySelector(".turning-still svg"));
        using var frame = System.Text.Json.JsonDocument.Parse(page.Document.QuerySelector("[data-turning]")!.GetAttribute("data-frame")!);
        Assert.Equal(car.File.Frame.Points.Count, frame.RootElement.GetProperty("points").GetArrayLength());
        // The large library is on this page only.
        Assert.DoesNotContain(
            "three.module",
            (await app.Get($"/cars/{car.Id}/floor")).Document.DocumentElement.OuterHtml,
            StringComparison.Ordinal
        );
    }

    private static async Task<VisitedPage> Send(RunningApp app, VisitedPage page, long car, (string Name, string Value) subject)
    {
        var form = page.Document.Forms.First(f =>
            f.GetAttribute("action") == $"/cars/{car}/photos"
            && f.QuerySelector($"input[name={subject.Name}][value='{subject.Value}']") is not null
        );
        using var content = new MultipartFormDataContent();
        foreach (var input in form.QuerySelectorAll("input[type=hidden]"))
        {
            content.Add(new StringContent(input.GetAttribute("value") ?? ""), input.GetAttribute("name")!);
        }

        content.Add(new ByteArrayContent(Picture(subject.Name == "point")), "photo", "photo.jpg");
        return await VisitedPage.Of(await app.Client.PostAsync(form.GetAttribute("action"), content));
    }

    private static byte[] Picture(bool isFirst)
    {
        using var bitmap = new SKBitmap(isFirst ? 40 : 30, 30);
        using var encoded = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        return encoded.ToArray();
    }
}
