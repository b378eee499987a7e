using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>The plan on the page is the plan of <c>plumbmark plan</c>, and the limits to choose from are called what they are.</summary>
public sealed class PlanTests
{
    private static readonly CarFile s_ladder = CarFile.Named("Ladder", LengthUnit.Inch) with
    {
        Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)),
    };

    [Fact]
    public async Task Plan_SaysWhatTheCommandLineSays_AndListsEveryReading()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var last = PracticeLimit.All.Count - 1;
        var plan = FloorPlanner.For(s_ladder, PracticeLimit.All[last].Limits);
        var page = await app.Get($"/cars/{car.Id}/plan?to=practice-{last}");
        Assert.Contains(plan.Sentence, page.Text, StringComparison.Ordinal);
        Assert.Equal(plan.Readings.Count, page.Document.QuerySelectorAll(".plan-list li").Length);
        Assert.Equal(plan.Readings.Sum(r => r.Times), page.Document.QuerySelectorAll(".plan-box").Length);
    }

    [Fact]
    public async Task Minutes_AreEditable_AndChangeWhatIsExpected()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var address = $"/cars/{car.Id}/plan?to=practice-4";
        var usual = (await app.Get(address)).Document.QuerySelector(".plan-sentence")!.TextContent;
        var slow = (await app.Get($"{address}&length=6&height=6&drop=6&first=10")).Document.QuerySelector(".plan-sentence")!.TextContent;
        Assert.NotEqual(usual, slow);
        var wrong = await app.Get($"{address}&length=-1&own=&drop=a");
        Assert.Equal(422, wrong.Status);
        Assert.NotNull(wrong.Document.QuerySelector("#length-fault"));
        Assert.NotNull(wrong.Document.QuerySelector("#drop-fault"));
    }

    [Fact]
    public async Task PracticeLimits_AreAllOffered_WithTheirSource_AndNeverCalledFactory()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_ladder);
        var page = await app.Get($"/cars/{car.Id}/limits");
        foreach (var practice in PracticeLimit.All)
        {
            Assert.Contains($"A limit of practice, not a factory figure: {practice.Limits.Note}", page.Text, StringComparison.Ordinal);
        }

        var form = page.Document.Forms.Single(f => f.TextContent.Contains(PracticeLimit.All[0].Name, StringComparison.Ordinal));
        var fields = form.QuerySelectorAll("input")
            .Select(i => KeyValuePair.Create(i.GetAttribute("name")!, i.GetAttribute("value") ?? ""));
        await app.Client.PostAsync(form.GetAttribute("action"), new FormUrlEncodedContent(fields));
        var limits = app.Journals.Car(car.Id)!.File.Frame.Limits!;
        Assert.Equal(LimitSource.Practice, limits.Source);
        Assert.Equal(1.0 / 16, limits.Mirror!.Value.Inches, 12);
        Assert.Equal(PracticeLimit.All[0].Limits.Note, limits.Note);
    }
}
