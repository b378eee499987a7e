namespace Plumbmark.Load;

/// <summary>Twenty phones enter on one car while two hundred have a page open.</summary>
internal static class ManyPhones
{
    private const int Seed = 20_260;
    private const int Busy = 20;
    private const int Idle = 200;
    private const int ReadingsEach = 12;
    private const double MeanPauseSeconds = 3; // a person takes ten or more; this is harder
    private static readonly string[] s_points = ["A", "B", "C", "D", "E", "F"];

    public static async Task<int> Run(string binary, TextWriter output)
    {
        await using var app = await LoadedApp.Start(binary);
        using var first = new Visitor(app.Address);
        var car = await first.AddCar("Barn find");
        var idle = Enumerable.Range(0, Idle).Select(_ => new Visitor(app.Address)).ToList();
        foreach (var visitor in idle)
        {
            await visitor.Open($"/cars/{car}/floor");
        }

        var before = app.MemoryMegabytes;
        var phones = await Task.WhenAll(Enumerable.Range(0, Busy).Select(i => Enter(app.Address, car, i)));
        idle.ForEach(v => v.Dispose());
        var kept = phones.SelectMany(p => p.Kept).ToList();
        var shown = phones.SelectMany(p => p.Shown).ToList();
        output.WriteLine(
            $"{Busy} phones enter {ReadingsEach} readings each on one car, on average one every {MeanPauseSeconds} s and phone; {Idle} more have the"
        );
        output.WriteLine(
            $"page open. Over loopback; pauses drawn with seed {Seed}; {Environment.ProcessorCount} processors. Milliseconds."
        );
        output.WriteLine($"{"", -34} {"times", 6} {"p50", 8} {"p95", 8} {"p99", 8} {"most", 8}");
        output.WriteLine(Line("reading sent until it is on the disk", kept));
        output.WriteLine(Line("page with the new answer", shown));
        output.WriteLine(LoadedApp.MachineWords);
        output.WriteLine($"memory of the app: {before:F0} MB before, {app.MemoryMegabytes:F0} MB after");
        return kept.Count == Busy * ReadingsEach ? 0 : 1;
    }

    private static async Task<(List<double> Kept, List<double> Shown)> Enter(Uri address, int car, int phone)
    {
        var random = new Random(Seed + phone);
        var (kept, shown) = (new List<double>(), new List<double>());
        using var visitor = new Visitor(address);
        await visitor.Open($"/cars/{car}/floor");
        for (var i = 0; i < ReadingsEach; i++)
        {
            await Task.Delay(TimeSpan.FromSeconds(-Math.Log(1 - random.NextDouble()) * MeanPauseSeconds));
            var (from, to) = (random.Next(s_points.Length), random.Next(s_points.Length));
            var note = $"phone {phone}, {i}";
            kept.Add(await visitor.Keep(car, $"{s_points[from]}.L", $"{s_points[to]}.R", Diagonal(from, to, random), note));
            shown.Add(await visitor.Open($"/cars/{car}/floor"));
        }

        return (kept, shown);
    }

    /// <summary>Across a ladder of stations 20 in apart and rails 30 in apart, read to a sixteenth, give or take one.</summary>
    private static string Diagonal(int from, int to, Random random)
    {
        var sixteenths = (int)Math.Round(16 * Math.Sqrt(Math.Pow(20 * (from - to), 2) + (30 * 30))) + random.Next(-1, 2);
        return sixteenths % 16 == 0 ? $"{sixteenths / 16}" : $"{sixteenths / 16} {sixteenths % 16}/16";
    }

    private static string Line(string what, List<double> times)
    {
        var sorted = times.Order().ToList();
        double At(double part) => sorted[Math.Min(sorted.Count - 1, (int)Math.Ceiling(part * sorted.Count) - 1)];
        return $"{what, -34} {sorted.Count, 6} {At(0.5), 8:F1} {At(0.95), 8:F1} {At(0.99), 8:F1} {sorted[^1], 8:F1}";
    }
}
