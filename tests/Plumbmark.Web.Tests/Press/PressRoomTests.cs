using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Web.Tests.Press;

/// <summary>The room Press without a browser: what is kept, what is refused, what is not there.</summary>
public sealed class PressRoomTests
{
    private const string Job = "/cars/1/press/arm";

    [Fact]
    public async Task ABite_IsKeptAsTyped_AndChangesWhatIsAsked()
    {
        await using var app = await WithArm(PressJobSamples.LowerArmAfter(2));
        var before = await app.Get(Job);
        var after = await app.Submit(before, $"{Job}/bites", ("travel", "0.220"), ("set", "0.08"), ("note", "<b>slow</b>"));
        Assert.Equal(Job, after.Path);
        Assert.Contains("Press 0.21 in.", after.Text, StringComparison.Ordinal);
        Assert.Contains("b3: travel 0.220", after.Text, StringComparison.Ordinal);
        Assert.Contains("<b>slow</b>", after.Text, StringComparison.Ordinal); // as text, not as markup
        Assert.Equal("0.220", app.Journals.Car(1)!.File.Press[0].Bites[2].Travel.AsTyped);
    }

    [Fact]
    public async Task TheSameForm_SentTwice_IsOneBite()
    {
        await using var app = await WithArm(PressJobSamples.LowerArm);
        var page = await app.Get(Job);
        await app.Submit(page, $"{Job}/bites", ("travel", "0.13"), ("set", "0"));
        await app.Submit(page, $"{Job}/bites", ("travel", "0.13"), ("set", "0"));
        Assert.Single(app.Journals.Car(1)!.File.Press[0].Bites);
    }

    [Theory]
    [InlineData("", "0.02", "", "travel")]
    [InlineData("0", "0.02", "", "travel")]
    [InlineData("0.2", "", "", "left")]
    [InlineData("0.2", "0.02", "0.1", "left")]
    [InlineData("0.2", "wide", "", "set")]
    public async Task AWrongBite_IsToldBesideItsField_AndNothingIsKept(string travel, string set, string left, string field)
    {
        await using var app = await WithArm(PressJobSamples.LowerArm);
        var again = await app.Submit(await app.Get(Job), $"{Job}/bites", ("travel", travel), ("set", set), ("left", left));
        Assert.Equal(422, again.Status);
        Assert.NotNull(again.Document.GetElementById($"{field}-fault"));
        Assert.Empty(app.Journals.Car(1)!.File.Press[0].Bites);
    }

    [Fact]
    public async Task ABite_IsTakenBackWithAReason_AndStaysInTheJournal()
    {
        await using var app = await WithArm(PressJobSamples.LowerArmAfter(3));
        var page = await app.Get($"{Job}/bites/b3/withdrawal");
        var without = await app.Submit(page, $"{Job}/bites/b3/withdrawal", ("reason", ""));
        Assert.Equal(422, without.Status);
        await app.Submit(page, $"{Job}/bites/b3/withdrawal", ("reason", "misread the dial"));
        Assert.Equal("misread the dial", app.Journals.Car(1)!.File.Press[0].Bites[2].Withdrawn);
        Assert.Equal(404, (await app.Get($"{Job}/bites/b3/withdrawal")).Status);
    }

    [Fact]
    public async Task TheDescription_ComesBackAsItWasTyped()
    {
        await using var app = await WithArm(PressJobSamples.LowerArmAfter(2));
        var page = await app.Get($"{Job}/description");
        await app.Submit(
            page,
            $"{Job}/description",
            ("line0-gaps", "0 : 0\n2 1/2 : 0.04\n4 : 0.06\n6 : 0.03\n8 : 0"),
            ("line0-name", "outer edge")
        );
        var job = app.Journals.Car(1)!.File.Press[0];
        Assert.Equal("2 1/2", job.Lines[0].Gaps[1].At.AsTyped);
        Assert.Equal(2, job.Bites.Count); // describing anew loses no bite
        Assert.Equal("1 1/4", job.Section!.Width!.Value.AsTyped);
        Assert.Equal("1/32", job.Limits.Straight!.Value.AsTyped);
        var wrong = await app.Submit(await app.Get($"{Job}/description"), $"{Job}/description", ("line0-gaps", "0 : 0\n2 : nearly"));
        Assert.Equal(422, wrong.Status);
        Assert.Contains("nearly", wrong.Document.GetElementById("line0-gaps-fault")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhatIsNotThere_IsToldSo()
    {
        await using var app = await WithArm(PressJobSamples.LowerArm);
        Assert.Equal(404, (await app.Get("/cars/1/press/other")).Status);
        Assert.Equal(404, (await app.Get("/cars/1/press/other/description")).Status);
        Assert.Equal(404, (await app.Get($"{Job}/bites/b9/withdrawal")).Status);
    }

    [Fact]
    public async Task PuttingAPartAway_LeavesItInTheJournal()
    {
        await using var app = await WithArm(PressJobSamples.LowerArmAfter(2));
        var list = await app.Submit(await app.Get(Job), $"{Job}/removal");
        Assert.Equal("/cars/1/press", list.Path);
        Assert.Empty(app.Journals.Car(1)!.File.Press);
        Assert.Equal(404, (await app.Get(Job)).Status);
    }

    private static async Task<RunningApp> WithArm(string text)
    {
        var app = await RunningApp.Start();
        var file = CarFileReader.Read(text.Utf8()).Match(f => f, faults => throw new InvalidOperationException(string.Join('\n', faults)));
        app.Journals.Add(file);
        return app;
    }
}
