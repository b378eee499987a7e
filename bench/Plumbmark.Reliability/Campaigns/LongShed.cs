using System.Diagnostics;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>A shed of thousands of cars: how long the list, a search and opening a car take, and how much room a car needs.</summary>
public static class LongShed
{
    private const int Times = 200;

    /// <summary>One thing that was timed.</summary>
    public sealed record Timing(string What, double[] Milliseconds)
    {
        /// <summary>The time that a share of the times does not exceed.</summary>
        public double Percentile(double share) => Milliseconds[(int)Math.Min(Milliseconds.Length - 1, share * Milliseconds.Length)];
    }

    /// <summary>What came of it.</summary>
    public sealed record Outcome(int Cars, double BytesPerCar, IReadOnlyList<Timing> Timings);

    /// <summary>Fills a shed and uses it.</summary>
    /// <param name="cars">How many cars.</param>
    /// <param name="binary">plumbmark.dll, built, to time its pages too; null for the store alone.</param>
    /// <param name="seed">Decides the cars and what is asked.</param>
    public static async Task<Outcome> Run(int cars, string? binary, int seed)
    {
        using var folder = new Folder();
        var random = new Random(seed);
        var timings = new List<Timing>();
        using (var journals = Journals.Open(folder.Journal))
        {
            for (var i = 0; i < cars; i++)
            {
                journals.Add(Generated(i, random));
            }

            journals.Glances("", 0, 1);
            timings.Add(Time("store: list, any page", () => journals.Glances("", random.Next(cars), 50)));
            timings.Add(Time("store: search", () => journals.Glances($"{random.Next(cars)}", 0, 50)));
            timings.Add(Time("store: open any car", () => journals.Car(1 + random.Next(cars))));
        }

        var bytes = (double)new FileInfo(folder.Journal).Length / cars;
        if (binary is not null)
        {
            using var app = await Served.Start(binary, folder);
            using var client = new HttpClient { BaseAddress = new Uri(app.Address) };
            _ = await client.GetStringAsync("/?page=3"); // the program's first page is timed elsewhere
            timings.Add(Time("page: list, any page", () => client.GetStringAsync($"/?page={1 + random.Next(cars / 50)}").Result));
            timings.Add(Time("page: search", () => client.GetStringAsync($"/?q={random.Next(cars)}").Result));
            timings.Add(Time("page: a car's own page", () => client.GetStringAsync($"/cars/{1 + random.Next(cars)}").Result));
        }

        return new Outcome(cars, bytes, timings);
    }

    private static Timing Time(string what, Func<object?> act)
    {
        var times = new double[Times];
        _ = act();
        for (var i = 0; i < Times; i++)
        {
            var began = Stopwatch.GetTimestamp();
            _ = act();
            times[i] = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }

        Array.Sort(times);
        return new Timing(what, times);
    }

    /// <summary>A car whose readings contradict each other by feet: pairs and lengths by chance.</summary>
    internal static CarFile Generated(int number, Random random)
    {
        var points = FrameSkeleton.Ladder(5 + random.Next(4), LengthUnit.Inch);
        var readings = Enumerable
            .Range(0, 10 + random.Next(30))
            .Select(i =>
                (Reading)
                    new Reading.Plan(
                        $"r{i}",
                        points[random.Next(points.Count / 2)].Id,
                        points[(points.Count / 2) + random.Next(points.Count / 2)].Id,
                        Length.FromFraction(20 + random.Next(60), random.Next(16), 16, LengthUnit.Inch)
                    )
            );
        return CarFile.Named($"Car {number}", LengthUnit.Inch) with
        {
            Car = new CarIdentity($"Car {number}", $"QD {random.Next(100_000):D5}"),
            Frame = new Frame(points, null),
            Readings = [.. readings],
        };
    }
}
