using Microsoft.Playwright;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Journeys;

/// <summary>What the wheels will do, in a real browser on a phone, and the same from the command line.</summary>
public sealed class RoadJourneys(Browser browser)
{
    [Fact]
    public async Task ACamberIsRead_WithoutScript_AndStandsInTheAnswer()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app, script: false);
        await page.GotoAsync("/cars/1/road");
        await page.ClickAsync("text=Read the wheels");
        await page.ClickAsync("text=Camber, plumb line");
        await page.SelectOptionAsync("#f-wheel", "FR");
        await page.FillAsync("#f-top", "1");
        await page.FillAsync("#f-bottom", "1 1/4");
        await page.FillAsync("#f-span", "15");
        await page.ClickAsync("text=Keep reading");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("front right camber");
        await Assertions.Expect(page.Locator("#wheel-w1")).ToContainTextAsync("front right, plumb line, top 1, bottom 1 1/4 over 15");
        await page.Picture("road-read");
    }

    [Fact]
    public async Task WrongAngle_IsToldBesideItsField()
    {
        await using var app = await AppProcess.Start();
        var page = await browser.Open(app);
        await page.GotoAsync("/cars/1/road/wheels?kind=level");
        await page.FillAsync("#f-camber", "1,5");
        await page.ClickAsync("text=Keep reading");
        await Assertions.Expect(page.Locator("#f-camber-fault")).ToContainTextAsync("1°30'");
        await Assertions.Expect(page.Locator("#f-camber")).ToHaveValueAsync("1,5");
        await page.IsFitToUse();
    }

    [Fact]
    public async Task ABentMount_AWrongLever_AndAHarmlessEighth_AreToldApart()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-faults-").FullName;
        var cars = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var fault in new[] { "bent-mount", "wrong-lever", "harmless-eighth" })
        {
            var demo = await AppProcess.Run(folder, "demo", "--road", fault);
            await File.WriteAllTextAsync(Path.Combine(folder, "car.json"), demo.Results, TestContext.Current.CancellationToken);
            cars[fault] = (await AppProcess.Run(folder, "import", "car.json", "--data", "plumbmark.db")).Results.Trim();
        }

        await using var app = await AppProcess.Start(folder);
        var page = await browser.Open(app);
        await page.GotoAsync($"/cars/{cars["bent-mount"]}/road");
        await Assertions.Expect(page.Locator(".floor-headline")).ToContainTextAsync("right castor");
        await Assertions.Expect(page.Locator(".floor-headline")).ToContainTextAsync("The adjusters cannot cure it.");
        await Assertions.Expect(page.Locator(".floor-why li").First).ToContainTextAsync("right lower arm's rear pivot");
        await page.IsFitToUse();
        await page.Picture("road-bent-mount-360");

        await page.GotoAsync($"/cars/{cars["wrong-lever"]}/road");
        await Assertions.Expect(page.Locator(".floor-headline")).ToHaveTextAsync("Out: left bump steer. Nothing here adjusts bump steer.");
        await Assertions.Expect(page.Locator(".floor-why li").First).ToContainTextAsync("left steering lever");
        await page.Picture("road-wrong-lever-360");

        // Both rear eyes an eighth back: the wheelbase is longer, alike on both sides, and the road does not mind.
        await page.GotoAsync($"/cars/{cars["harmless-eighth"]}/road");
        await Assertions.Expect(page.Locator(".floor-headline")).ToContainTextAsync("are within them");
        await Assertions.Expect(page.Locator("#answer")).ToContainTextAsync("true");
        await page.Picture("road-harmless-360");
    }

    [Theory]
    [InlineData(DemoRoad.Fault.None, 0)]
    [InlineData(DemoRoad.Fault.BentMount, 10)]
    [InlineData(DemoRoad.Fault.WrongLever, 10)]
    [InlineData(DemoRoad.Fault.HarmlessEighth, 0)]
    public async Task RoadVerb_EndsWithTheVerdict(DemoRoad.Fault fault, int code)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-road-").FullName;
        var file = Path.Combine(folder, "car.json");
        await File.WriteAllBytesAsync(file, CarFileWriter.Write(DemoRoad.Car(fault)), TestContext.Current.CancellationToken);
        var run = await AppProcess.Run(folder, "road", file, "--json");
        Assert.Equal(code, run.Code);
        using var json = System.Text.Json.JsonDocument.Parse(run.Results);
        Assert.Equal(code == 0 ? "true" : "out", json.RootElement.GetProperty("overall").GetProperty("verdict").GetString());
        Assert.Empty(run.Remarks);
        Directory.Delete(folder, recursive: true);
    }
}
