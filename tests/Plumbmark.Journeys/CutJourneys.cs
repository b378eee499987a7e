using System.Globalization;
using Plumbmark.Inspection.Car;
using Plumbmark.Store;

namespace Plumbmark.Journeys;

/// <summary>
/// Two phones enter readings at once, each over a wire that is cut at random bytes of the talk between browser and app, while tabs are closed and the
/// app is killed in between: every reading is kept once, and each phone's in the order of entry.
/// </summary>
/// <remarks>
/// The seed is fixed; where in the talk a cut falls also depends on the machine's speed. bench/cuts runs a thousand and keeps the table.
/// </remarks>
public sealed class CutJourneys(Browser browser)
{
    private const int Seed = 90_011;
    private const int CutsInABatch = 25; // a fresh car for each: the answer of a car with a thousand readings would take most of the time
    private readonly SortedDictionary<string, int> _cuts = new(StringComparer.Ordinal);
    private int _entered;
    private int _posts;
    private int _kills;
    private int _tabs;
    private int _lost;
    private int _doubled;
    private int _outOfOrder;

    [Fact]
    public async Task RandomCuts_TwoPhonesAtOnce_NoReadingIsLostOrDoubled()
    {
        var cuts = int.TryParse(Environment.GetEnvironmentVariable("PLUMBMARK_CUTS"), out var asked) ? asked : 12;
        for (var done = 0; done < cuts; done += CutsInABatch)
        {
            await Batch(Seed + done, Math.Min(CutsInABatch, cuts - done));
            if (Environment.GetEnvironmentVariable("PLUMBMARK_CUTS_TABLE") is { Length: > 0 } path)
            {
                // After every batch, so that a long run that is broken off has said how far it came.
                await File.WriteAllTextAsync(path, Table(_cuts.Values.Sum()), TestContext.Current.CancellationToken);
            }
        }

        Assert.Equal(cuts, _cuts.Values.Sum());
        Assert.InRange(_posts, _entered + 1, int.MaxValue); // some were sent twice, or no cut fell where it hurts
        Assert.True(_lost + _doubled + _outOfOrder == 0, Table(cuts));
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
                _entered += phone.Entered.Count;
                _posts += phone.Posts;
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
        await phone.Open();
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
            Count(phone.Wire.CutDuring);
            var what = random.Next(20);
            if (what == 0)
            {
                Interlocked.Increment(ref _kills);
                await restart();
            }

            if (what is 1 or 2 or 3)
            {
                Interlocked.Increment(ref _tabs);
                await phone.CloseTab();
                phone.Wire.Mend();
                await phone.Open();
            }
            else
            {
                phone.Wire.Mend();
                await phone.SayOnline();
            }
        }
    }

    private void Count(string during)
    {
        lock (_cuts)
        {
            _cuts[during] = _cuts.GetValueOrDefault(during) + 1;
        }
    }

    private void Compare(string folder, IEnumerable<CutPhone> phones)
    {
        using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        var kept = journals.Car(1)!.File.Readings.Select(r => r.Note!).ToList();
        foreach (var phone in phones)
        {
            var its = kept.Where(n => n.StartsWith(phone.Name, StringComparison.Ordinal)).ToList();
            _lost += phone.Entered.Except(its).Count();
            _doubled += its.Count - its.Distinct().Count();
            _outOfOrder += phone.Entered.Intersect(its).Zip(its.Distinct()).Count(pair => pair.First != pair.Second);
        }
    }

    private static void Add(string folder)
    {
        using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
        journals.Add(LadderCar.File());
    }

    private string Table(int cuts) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            Two phones (Chromium, 360 x 740) enter readings at once; the wire of each is cut at a random byte, {cuts} times in all (seeds from {Seed}).
            Every batch of {CutsInABatch} cuts ends with the comparison of what was typed with what the journal holds, in order.

            the wire was cut while there passed    times
            {string.Join('\n', _cuts.Select(c => $"{c.Key, -37}{c.Value, 7}"))}

            readings typed                       {_entered, 7}
            times a reading was sent             {_posts, 7}
            tabs closed with readings waiting    {_tabs, 7}
            app killed and started again         {_kills, 7}
            readings lost                        {_lost, 7}
            readings doubled                     {_doubled, 7}
            readings out of order                {_outOfOrder, 7}

            """
        );
}
