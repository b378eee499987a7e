using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Web.Shed;

namespace Plumbmark.Web.Tests.Shed;

/// <summary>The first visit is a real job on the demo: the reading it asks for is kept, and the answer goes on.</summary>
public sealed class FirstVisitTests
{
    [Fact]
    public async Task FiveSteps_WithoutScript_TakeTheDoubtedReadingAgain()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get("/first");
        Assert.Contains(FloorInspection.Of(car.File).Overall.Headline, page.Text, StringComparison.Ordinal);
        for (var step = 2; step <= 3; step++)
        {
            page = await app.Get(page.Document.QuerySelectorAll("main a")[^1].GetAttribute("href")!);
            Assert.Contains($"Step {step} of {FirstVisitView.Steps}", page.Text, StringComparison.Ordinal);
        }

        page = await app.Submit(page, $"/cars/{car.Id}/readings");
        Assert.Equal($"/cars/{car.Id}/floor", page.Path);
        page = await app.Get("/first/3");
        page = await app.Get(
            page.Document.QuerySelectorAll("main a").First(a => a.TextContent == "Take the old one back").GetAttribute("href")!
        );
        page = await app.Submit(page, page.Document.Forms[0].GetAttribute("action")!, ("reason", "tape started at another mark"));
        var after = app.Journals.Car(car.Id)!.File;
        Assert.Equal(car.File.Readings.Count + 1, after.Readings.Count);
        Assert.DoesNotContain("one reading to take again first", FloorInspection.Of(after).Overall.Headline, StringComparison.Ordinal);
        foreach (var step in new[] { 1, 2, 3, 4, 5 })
        {
            Assert.Equal(200, (await app.Get($"/first/{step}")).Status);
        }
    }

    [Fact]
    public async Task WithoutTheDemo_SaysSo()
    {
        await using var app = await RunningApp.Start();
        Assert.Contains("not in this shed any more", (await app.Get("/first")).Text, StringComparison.Ordinal);
    }
}
