using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;
using SkiaSharp;

namespace Plumbmark.Journeys;

/// <summary>
/// Two phones enter at once, each over a wire that is cut at random bytes of the talk between browser and app, while tabs are closed and the
/// app is killed in between: all that was entered is kept once, and each phone's in the order of entry.
/// </summary>
/// <remarks>
/// The seed is fixed; where in the talk a cut falls also depends on the machine's speed. bench/cuts runs a thousand and keeps the table.
/// </remarks>
public sealed class CutJourneys(Browser browser)
{
    private const int Seed = 90_011;
    private const int CutsInABatch = 25; // a fresh car for each: the answer of a car with a thousand readings would take most of the time
    private readonly CutCount _count = CutCount.From(Environment.GetEnvironmentVariable("PLUMBMARK_CUTS_COUNT"));
    private readonly Lock _lock = new();

    [Fact]
    public async Task RandomCuts_TwoPhonesAtOnce_NothingIsLostOrDoubled()
    {
        var cuts = int.TryParse(Environment.GetEnvironmentVariable("PLUMBMARK_CUTS"), out var asked) ? asked : 12;
        while (_count.Done() < cuts)
        {
            await Batch(Seed + _count.Done(), Math.Min(CutsInABatch, cuts - _count.Done()));
            if (Environment.GetEnvironmentVariable("PLUMBMARK_CUTS_COUNT") is { Length: > 0 } path)
            {
                // After every batch, so that a long run may be stopped and goes on from here.
                _count.WriteTo(path);
                await File.WriteAllTextAsync(
                    Path.ChangeExtension(path, ".txt"),
                    _count.Table(Seed, CutsInABatch),
                    TestContext.Current.CancellationToken
                );
            }
        }

        Assert.InRange(_count.Posts, _count.Entered + 1, int.MaxValue); // some were sent twice, or no cut fell where it hurts
        Assert.True(_count.Lost + _count.Doubled + _count.OutOfOrder == 0, _count.Table(Seed, CutsInABatch));
    }

    private async Task Batch(int seed, int cuts)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-cuts-").FullName;
        Add(folder);
        // The phones' windows belong to the first app and stay open while it is killed and others take its place.
        var window = await AppProcess.Start(folder, keepFolder: true);
        var app = window;
        var port = new Uri(app.Address).Port;
        var restarting = new SemaphoreSlim(1);
        async Task Restart()
        {
            await restarting.WaitAsync(TestContext.Current.CancellationToken);
            app.Kill();
            if (app != window)
            {
                await app.DisposeAsync();
            }

            app = await AppProcess.Start(folder, keepFolder: true, port);
            restarting.Release();
        }

        try
        {
            var phones = new[] { new CutPhone(browser, window, "a", () => port), new CutPhone(browser, window, "b", () => port) };
            await Task.WhenAll(phones.Select((p, i) => Walk(p, new Random(seed * 10 + i), (cuts + 1 - i) / 2, Restart)));
            foreach (var phone in phones)
            {
                await phone.Empty();
                _count.Entered += phone.Entered.Count;
                _count.EnteredElsewhere += phone.EnteredElsewhere;
                _count.Posts += phone.Posts;
                await phone.DisposeAsync();
            }

            Compare(folder, phones);
        }
        finally
        {
            if (app != window)
            {
                await app.DisposeAsync();
            }

            await window.DisposeAsync();
            Directory.Delete(folder, recursive: true);
        }
    }

    private async Task Walk(CutPhone phone, Random random, int cuts, Func<Task> restart)
    {
        await phone.Open(CutForm.Any(random));
        for (var cut = 0; cut < cuts; cut++)
        {
            // A request is about a thousand bytes, its answer five hundred; the page that is shown then, tens of thousands.
            phone.Wire.CutAfter(random.Next(10) < 8 ? random.Next(2500) : random.Next(60_000));
            var readings = random.Next(1, 4);
            for (var i = 0; i < readings; i++)
            {
                await phone.Enter();
            }

            phone.Wire.Cut();
            var during = phone.Wire.CutDuring;
            Count(() => _count.Cuts[during] = _count.Cuts.GetValueOrDefault(during) + 1);
            var what = random.Next(20);
            if (what == 0)
            {
                Count(() => _count.Kills++);
                await restart();
            }

            if (what is >= 1 and <= 5)
            {
                Count(() => _count.Tabs++);
                await phone.CloseTab();
                phone.Wire.Mend();
                await phone.Open(CutForm.Any(random));
            }
            else
            {
                phone.Wire.Mend();
                await phone.SayOnline();
            }
        }
    }

    private void Count(Action count)
    {
        lock (_lock)
        {
            count();
        }
    }

    private void Compare(string folder, IEnumerable<CutPhone> phones)
    {
        using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        var kept = journals.Car(1)!.Entries.Select(e => LabelOf(journals, e.Entry.Act)).OfType<string>().ToList();
        foreach (var phone in phones)
        {
            var its = kept.Where(n => n.StartsWith(phone.Name, StringComparison.Ordinal)).ToList();
            _count.Lost += phone.Entered.Except(its).Count();
            _count.Doubled += its.Count - its.Distinct().Count();
            _count.OutOfOrder += phone.Entered.Intersect(its).Zip(its.Distinct()).Count(pair => pair.First != pair.Second);
        }
    }

    private static string? LabelOf(Journals journals, Act act) =>
        act switch
        {
            Act.ReadingTaken reading => reading.Reading.Note,
            Act.BenchMeasured measured => measured.Measure.Note,
            Act.CrackTested tested => tested.Test.Note,
            Act.WheelRead wheel => wheel.Reading.Note,
            Act.PhotoTaken photo => LabelOf(journals.Photo(1, photo.Photo.Photo)!.Bytes),
            _ => null,
        };

    private static string LabelOf(byte[] photo)
    {
        using var bitmap = SKBitmap.Decode(photo);
        return $"{(bitmap.Height == 60 ? "a" : "b")}{bitmap.Width - 100}";
    }

    private static void Add(string folder)
    {
        using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        var demo = DemoCar.File();
        journals.Add(LadderCar.File() with { Parts = demo.Parts, Press = demo.Press });
    }
}
