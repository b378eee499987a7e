using System.Text;
using System.Text.RegularExpressions;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;

namespace Plumbmark.Web.Tests.Sheet;

/// <summary>A form is printed, filled in with a pencil, and typed in line by line by a visitor without script.</summary>
public sealed class FormInTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static readonly CarFile s_fresh = CarFile.Named("Fresh", LengthUnit.Inch) with
    {
        Frame = new Frame([.. FrameSkeleton.Ladder(5, LengthUnit.Inch)]),
    };

    [Theory]
    [InlineData("planned")]
    [InlineData("usual")]
    [InlineData("all")]
    public async Task Screen_HasTheLinesOfThePrintedForm(string ask)
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(ask == "planned" ? DemoCar.File() : s_fresh);
        var pdf = await app.Client.GetByteArrayAsync($"/cars/{car.Id}/sheet/form.pdf?ask={ask}", Stop);
        // The head of the form is the title of the file, in plain text there.
        var number = Regex.Match(Encoding.Latin1.GetString(pdf), @"/Title \(Measuring form (\S+):").Groups[1].Value;
        var page = await app.Get($"/cars/{car.Id}/sheet/form-in?number={number}");
        Assert.Equal(200, page.Status);
        var lines = page.Document.QuerySelectorAll(".form-in-name").Select(l => l.TextContent.Trim()).ToList();
        var expected = MeasuringRound.Of(car.File, FormNumberScope(ask));
        Assert.Equal(expected.Select(l => l.To is { } to ? $"{l.Number} {l.From} – {to}" : $"{l.Number} {l.From}"), lines);
    }

    private static RoundScope FormNumberScope(string ask) => Plumbmark.Web.Sheet.FormNumber.ScopeOf(ask);

    [Fact]
    public async Task Values_AreKept_AndTheFormStaysTheSame()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_fresh);
        var address = $"/cars/{car.Id}/sheet/form-in?number={car.Sequence}a"; // a small letter will do
        var page = await app.Get(address);
        var round = MeasuringRound.Of(car.File, RoundScope.All);
        var height = round.First(l => l.Kind == RoundKind.Height);
        var plan = round.First(l => l.Kind == RoundKind.Plan);
        var drop = round.First(l => l.Kind == RoundKind.Drop);
        page = await app.Submit(
            page,
            $"/cars/{car.Id}/form-readings",
            ($"value-{height.Number}", "13 1/16"),
            ($"value-{plan.Number}", "47 5/8"),
            ($"start-{plan.Number}", "10"),
            ($"note-{plan.Number}", "=two people"),
            ($"dx-{drop.Number}", "-1/32"),
            ($"dy-{drop.Number}", "0")
        );
        Assert.Equal(200, page.Status);
        Assert.Contains($"3 of {round.Count} lines kept.", page.Text, StringComparison.Ordinal);
        Assert.Contains("47 5/8 from 10", page.Text, StringComparison.Ordinal);
        var kept = app.Journals.Car(car.Id)!.File.Readings;
        Assert.Equal(["r1", "r2", "r3"], kept.Select(r => r.Id));
        var tape = Assert.Single(kept.OfType<Reading.Plan>());
        Assert.Equal(("47 5/8", "10", "=two people"), (tape.Value.AsTyped, tape.StartAt!.Value.AsTyped, tape.Note));
        Assert.Equal((plan.From, plan.To), (tape.From, tape.To));
        // The other lines keep their numbers.
        Assert.Equal(round.Count, page.Document.QuerySelectorAll(".form-in-name").Length);
        Assert.Null(page.Document.QuerySelector($"input[name='value-{plan.Number}']"));
    }

    [Fact]
    public async Task Faults_AreToldAllAtOnceWithTheirLines_AndNothingIsLost()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_fresh);
        var round = MeasuringRound.Of(car.File, RoundScope.All);
        var plans = round.Where(l => l.Kind == RoundKind.Plan).Take(4).ToList();
        var drop = round.First(l => l.Kind == RoundKind.Drop);
        var page = await app.Submit(
            await app.Get($"/cars/{car.Id}/sheet/form-in?number={car.Sequence}A"),
            $"/cars/{car.Id}/form-readings",
            ($"value-{plans[0].Number}", "47 9/8"),
            ($"value-{plans[1].Number}", "8"),
            ($"start-{plans[1].Number}", "10"),
            ($"note-{plans[2].Number}", "forgot it"),
            ($"value-{plans[3].Number}", "22"),
            ($"dx-{drop.Number}", "1/16")
        );
        Assert.Equal(422, page.Status);
        Assert.Empty(app.Journals.Car(car.Id)!.File.Readings);
        var told = page.Document.QuerySelectorAll("section.wrong li").Select(l => l.TextContent).ToList();
        Assert.Equal(4, told.Count);
        foreach (var line in new[] { plans[0], plans[1], plans[2], drop })
        {
            Assert.Contains(told, t => t.Contains($"Line {line.Number}, ", StringComparison.Ordinal));
        }

        Assert.Equal("22", page.Document.QuerySelector($"input[name='value-{plans[3].Number}']")!.GetAttribute("value"));
        Assert.Equal("forgot it", page.Document.QuerySelector($"input[name='note-{plans[2].Number}']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task NothingTyped_OrNoSuchForm_IsTold()
    {
        await using var app = await RunningApp.Start();
        var car = app.Journals.Add(s_fresh);
        var page = await app.Get($"/cars/{car.Id}/sheet/form-in?ask=all");
        page = await app.Submit(page, $"/cars/{car.Id}/form-readings");
        Assert.Equal(422, page.Status);
        Assert.Contains("no line has a value", page.Text, StringComparison.Ordinal);
        foreach (var number in new[] { "0A", "999999A", "1", "A", "1X", "-1A" })
        {
            Assert.Equal(404, (await app.Get($"/cars/{car.Id}/sheet/form-in?number={number}")).Status);
        }
    }
}
