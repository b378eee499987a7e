using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Journal;

namespace Plumbmark.Web.Tests.Sheet;

/// <summary>Sheets come as PDF from the page's own forms.</summary>
public sealed class SheetTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("frame", "a4")]
    [InlineData("frame", "letter")]
    [InlineData("workshop", "a4")]
    [InlineData("form", "a4")]
    [InlineData("parts", "a4")]
    [InlineData("press", "a4")]
    [InlineData("road", "letter")]
    public async Task Sheet_IsAPdf(string kind, string paper)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var answer = await app.Client.GetAsync($"/cars/{car.Id}/sheet/{kind}.pdf?paper={paper}", Stop);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith(
            "%PDF",
            System.Text.Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(Stop)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task BeforeAndAfter_NeedsAnEarlierDay()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        Assert.Contains("only one day", (await app.Get($"/cars/{car.Id}/sheet")).Text, StringComparison.Ordinal);
        var later = new JournalEntry(
            Guid.NewGuid(),
            DateTimeOffset.Now.AddDays(2),
            null,
            new Act.ReadingTaken(new Reading.Plan("later", "A.L", "A.R", Length.FromInches(22)))
        );
        app.Journals.Append(car.Id, [later]);
        var page = await app.Get($"/cars/{car.Id}/sheet");
        var before = Assert.Single(page.Document.QuerySelectorAll("select[name=before] option")).GetAttribute("value");
        var answer = await app.Client.GetAsync($"/cars/{car.Id}/sheet/before-after.pdf?before={before}", Stop);
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [InlineData("nonsense.pdf")]
    [InlineData("before-after.pdf")]
    [InlineData("before-after.pdf?before=-1")]
    [InlineData("..%2f..%2fetc%2fpasswd.pdf")]
    public async Task Sheet_Unknown_IsNotFound(string path)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        Assert.Equal(404, (await app.Get($"/cars/{car.Id}/sheet/{path}")).Status);
    }
}
