using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>On the measuring round only values are typed: the ends are filled in, in walking order.</summary>
public sealed class RoundTests
{
    [Fact]
    public async Task Round_FillsInTheNextLine_UntilNothingIsLeft()
    {
        await using var app = await RunningApp.Start();
        var file = CarFile.Named("Ladder", LengthUnit.Inch) with { Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)) };
        var car = app.Journals.Add(file);
        // Lengths as asked for, then on its own what is left: heights, then drops.
        var expected = MeasuringRound
            .Usual(file)
            .OrderBy(l => Array.IndexOf([RoundKind.Plan, RoundKind.Height, RoundKind.Drop], l.Kind))
            .ToList();
        var page = await app.Get($"/cars/{car.Id}/floor?kind=plan&round=1");
        for (var i = 0; i < expected.Count; i++)
        {
            Assert.Equal($"value", page.Document.QuerySelector("[autofocus]")!.Id);
            page = await app.Submit(page, $"/cars/{car.Id}/readings", ("value", "40"));
        }

        Assert.Contains("The round is done", page.Text, StringComparison.Ordinal);
        var taken = app.Journals.Car(car.Id)!.File.Readings;
        Assert.Equal(expected.Select(l => l.To is null ? l.From : $"{l.From} {l.To}"), taken.Select(r => string.Join(' ', r.Points)));
        Assert.Equal(expected.Count(l => l.Kind == RoundKind.Height), taken.OfType<Reading.Height>().Count());
    }

    [Fact]
    public async Task Round_WhatCannotBeReached_IsPassedOver()
    {
        await using var app = await RunningApp.Start();
        var file = CarFile.Named("Ladder", LengthUnit.Inch) with { Frame = new Frame(FrameSkeleton.Ladder(5, LengthUnit.Inch)) };
        var car = app.Journals.Add(file);
        var heights = MeasuringRound.Usual(file).Where(l => l.Kind == RoundKind.Height).ToList();
        var page = await app.Get($"/cars/{car.Id}/floor?kind=height&round=1");
        page = await app.Get(
            page.Document.QuerySelectorAll("a")
                .Single(a => a.TextContent.Contains("Can't reach", StringComparison.Ordinal))
                .GetAttribute("href")!
        );
        page = await app.Submit(page, $"/cars/{car.Id}/readings", ("value", "12 1/2"));
        Assert.Equal(heights[1].From, Assert.IsType<Reading.Height>(Assert.Single(app.Journals.Car(car.Id)!.File.Readings)).Point);
        Assert.Contains(KeyValuePair.Create("point", heights[2].From), page.Filled($"/cars/{car.Id}/readings"));
    }
}
