using System.Collections.Concurrent;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Web.Tests.Server;

/// <summary>A car whose answer cannot be worked out, by a planted fault: it takes no page with it and no reading.</summary>
public sealed class FailedAnswerTests
{
    private const string Planted = "planted";
    private const string Sentence = "could not be worked out";

    [Fact]
    public async Task Floor_WhoseAnswerFails_SaysSo_ShowsEveryReading_AndTakesTheNext()
    {
        await using var app = await RunningApp.StartWith(s => Plant(s));
        var car = app.Journals.Add(DemoCar.File());
        var page = await app.Get($"/cars/{car.Id}/floor");
        Assert.Equal(200, page.Status);
        Assert.Contains(Sentence, page.Text, StringComparison.Ordinal);
        Assert.Equal("can't tell yet", page.Document.QuerySelector("h1 .verdict")!.TextContent.Trim());
        Assert.All(car.File.Readings, r => Assert.NotNull(page.Document.QuerySelector($"[id='reading-{r.Id}']")));
        var (a, b) = (car.File.Frame.Points[0].Id, car.File.Frame.Points[1].Id);
        var after = await app.Submit(page, $"/cars/{car.Id}/quick-readings", ("line", $"{a} {b} 30"));
        Assert.Equal(200, after.Status);
        Assert.Contains(Sentence, after.Text, StringComparison.Ordinal);
        var kept = app.Journals.Car(car.Id)!.File.Readings;
        Assert.Equal(car.File.Readings.Count + 1, kept.Count);
        Assert.NotNull(after.Document.QuerySelector($"[id='reading-{kept[^1].Id}']"));
        var taken = await app.Get($"/cars/{car.Id}/readings/{kept[^1].Id}/withdrawal");
        Assert.Equal(200, (await app.Submit(taken, taken.Path, ("reason", "slipped"))).Status);
    }

    [Fact]
    public async Task Road_WhoseAnswerFails_SaysSo_AndTakesAReading()
    {
        await using var app = await RunningApp.StartWith(s => Plant(s));
        var car = app.Journals.Add(DemoCar.File());
        Assert.Contains(Sentence, (await app.Get($"/cars/{car.Id}/road")).Text, StringComparison.Ordinal);
        var wheels = await app.Get($"/cars/{car.Id}/road/wheels");
        Assert.Equal(200, wheels.Status);
        Assert.NotNull(wheels.Form($"/cars/{car.Id}/road/wheels"));
    }

    [Fact]
    public async Task EveryOtherPageOfThatCar_IsShown_OrSaysSoInWords_AndEveryPageOfAnother_Stands()
    {
        var failed = DemoCar.File();
        await using var app = await RunningApp.StartWith(s => Plant(s, only: failed.Car.Name));
        var car = app.Journals.Add(failed);
        var other = app.Journals.Add(failed with { Car = failed.Car with { Name = "Another" } });
        foreach (
            var path in new[]
            {
                "",
                "/floor",
                "/plan",
                "/turning",
                "/level",
                "/points",
                "/bench",
                "/press",
                "/road",
                "/sheet",
                "/journal",
                "/tools",
            }
        )
        {
            var page = await app.Get($"/cars/{car.Id}{path}");
            Assert.True(
                page.Status is 200 or 404 || (page.Status == 500 && page.Text.Contains(Sentence, StringComparison.Ordinal)),
                $"{path}: {page.Status} {page.Text}"
            );
            Assert.Equal(page.Status == 404 ? 404 : 200, (await app.Get($"/cars/{other.Id}{path}")).Status);
        }

        var shed = await app.Get("/");
        Assert.Equal(200, shed.Status);
        Assert.Contains("Another", shed.Text, StringComparison.Ordinal);
        var sheet = await app.Get($"/cars/{car.Id}/sheet/frame.pdf");
        Assert.Equal(500, sheet.Status);
        Assert.Contains(Sentence, sheet.Text, StringComparison.Ordinal);
        Assert.Contains($"/cars/{car.Id}/floor", sheet.Document.QuerySelectorAll("a").Select(a => a.GetAttribute("href")));
    }

    [Fact]
    public async Task AnAnswerThatFails_IsLoggedOnce_ForEachStateOfTheCar_AndTriedAgainAfterAChange()
    {
        var log = new KeptLog();
        await using var app = await RunningApp.StartWith(s => Plant(s, log));
        var car = app.Journals.Add(DemoCar.File());
        for (var i = 0; i < 3; i++)
        {
            await app.Get($"/cars/{car.Id}/floor");
            await app.Get("/");
        }

        Assert.Contains(Planted, Assert.Single(log.Lines), StringComparison.Ordinal);
        var page = await app.Get($"/cars/{car.Id}/floor");
        var (a, b) = (car.File.Frame.Points[0].Id, car.File.Frame.Points[1].Id);
        await app.Submit(page, $"/cars/{car.Id}/quick-readings", ("line", $"{a} {b} 30"));
        Assert.Equal(2, log.Lines.Count);
    }

    private static void Plant(IServiceCollection services, ILoggerProvider? log = null, string? only = null)
    {
        services.AddSingleton<Func<CarFile, FloorAnswer>>(car =>
            only is null || car.Car.Name == only ? throw new InvalidOperationException(Planted) : FloorInspection.Of(car)
        );
        services.AddSingleton<Func<CarFile, RoadAnswer>>(car =>
            only is null || car.Car.Name == only ? throw new InvalidOperationException(Planted) : RoadInspection.Of(car)
        );
        if (log is not null)
        {
            services.AddSingleton(log);
        }
    }

    /// <summary>What the owner of the window would see.</summary>
    private sealed class KeptLog : ILoggerProvider, ILogger
    {
        private readonly ConcurrentQueue<string> _lines = [];

        public IReadOnlyCollection<string> Lines => _lines;

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter
        )
        {
            if (logLevel >= LogLevel.Error)
            {
                _lines.Enqueue($"{formatter(state, exception)} {exception?.Message}");
            }
        }

        public void Dispose() { }
    }
}
