using System.Net.Http.Headers;
using System.Text;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Web.Tests.Book;

/// <summary>Pages are pasted, read, doubted, corrected, shared and put on the frame, all without JavaScript.</summary>
public sealed class BookRoomTests
{
    [Fact]
    public async Task Demo_PointsOutTheMisprint_AndCorrectingItSettlesThePage()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/book/page?id=frame");
        Assert.Contains("29 printed for 26", page.Text, StringComparison.Ordinal);
        Assert.Contains("51.68 printed for 51.86", page.Text, StringComparison.Ordinal);
        foreach (var (figure, value) in new[] { (DemoBook.MisprintInChain, "26"), (DemoBook.MisprintInDiagonal, "51.86") })
        {
            var form = await app.Get($"/cars/{car.Id}/book/figure?page=frame&figure={Uri.EscapeDataString(figure)}");
            page = await app.Submit(
                form,
                $"/cars/{car.Id}/book-judgements",
                ("judgement", "corrected"),
                ("value", value),
                ("reason", "the rest of the page says so")
            );
        }

        Assert.Contains("Nothing was found. That does not prove the figures right.", page.Text, StringComparison.Ordinal);
        Assert.Contains("Corrected to 26: the rest of the page says so.", page.Text, StringComparison.Ordinal);
        var book = await app.Get($"/cars/{car.Id}/book");
        var points = await app.Submit(book, $"/cars/{car.Id}/book-nominals");
        Assert.Equal(200, points.Status);
        Assert.All(app.Journals.Car(car.Id)!.File.Frame.Points, p => Assert.Contains("page 12", p.NominalSource, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Paste_ABlock_IsOneAct_AndAWrongOneKeepsWhatWasTyped()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File() with { Book = BookSection.Empty });
        var page = await app.Get($"/cars/{car.Id}/book");
        var wrong = "from\tto\tvalue\nA.L\tB.R\t33 B\nA.L\t\t9";
        page = await app.Submit(page, $"/cars/{car.Id}/book-pages", ("title", "Frame"), ("block", wrong));
        Assert.Equal(422, page.Status);
        Assert.Contains("Row 2, value: Found “33 B”; a scan often makes B or 8 of 1/8", page.Text, StringComparison.Ordinal);
        Assert.Contains("33 B", page.Document.QuerySelector("textarea")!.TextContent, StringComparison.Ordinal);
        var before = app.Journals.Car(car.Id)!.Entries.Count;
        page = await app.Submit(page, $"/cars/{car.Id}/book-pages", ("title", "Frame"), ("block", "from\tto\tvalue\nA.L\tB.R\t33 1/8"));
        Assert.Contains("no source", page.Text, StringComparison.Ordinal);
        Assert.Equal(before + 1, app.Journals.Car(car.Id)!.Entries.Count);
    }

    [Fact]
    public async Task ExportThenImportOnAnotherCar_ExportsTheSameBytes()
    {
        await using var app = await RunningApp.Start();
        var (one, two) = (app.Journals.Add(DemoCar.File()), app.Journals.Add(DemoCar.File() with { Book = BookSection.Empty }));
        var bytes = await app.Client.GetByteArrayAsync($"/cars/{one.Id}/book/file");
        var page = await app.Get($"/cars/{two.Id}/book");
        Assert.Equal(200, (await Upload(app, page, two.Id, bytes)).Status);
        Assert.Equal(bytes, await app.Client.GetByteArrayAsync($"/cars/{two.Id}/book/file"));
        var refused = await Upload(app, page, two.Id, Encoding.UTF8.GetBytes("{ \"format\": \"plumbmark-book\" }"));
        Assert.Equal(422, refused.Status);
        Assert.Contains("The field \"version\" is missing", refused.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Judge_WithoutAReason_OrOfNothing_IsRefused()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var form = await app.Get($"/cars/{car.Id}/book/figure?page=levers&figure=late%20pad");
        var page = await app.Submit(form, $"/cars/{car.Id}/book-judgements", ("judgement", "doubted"));
        Assert.Equal(422, page.Status);
        Assert.Contains("a reason is needed", page.Text, StringComparison.Ordinal);
        Assert.Equal(404, (await app.Get($"/cars/{car.Id}/book/figure?page=levers&figure=gone")).Status);
    }

    private static async Task<VisitedPage> Upload(RunningApp app, VisitedPage page, long car, byte[] bytes)
    {
        var content = new MultipartFormDataContent();
        foreach (var (name, value) in page.Filled($"/cars/{car}/book-files"))
        {
            content.Add(new StringContent(value), name);
        }

        var file = new ByteArrayContent(bytes);
        file.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        content.Add(file, "file", "book.json");
        return await VisitedPage.Of(await app.Client.PostAsync($"/cars/{car}/book-files", content));
    }
}
