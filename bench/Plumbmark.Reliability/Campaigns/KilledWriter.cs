using System.Diagnostics;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>A process that enters readings until it is killed, and says before and after each what it is about to do and what was acknowledged.</summary>
public static class KilledWriter
{
    private static readonly Guid s_car = new("0b5e9f2e-6f1d-4c0e-9c64-1f0f3a6a7d11");

    /// <summary>The process itself: opens the file, sends again what was not acknowledged before, then new readings without end.</summary>
    public static void Write(string journal, int seed, IEnumerable<Guid> again)
    {
        var random = new Random(seed);
        using var journals = Journals.Open(journal);
        var points = new Frame([new FramePoint("A.L"), new FramePoint("A.R")], null);
        var car = journals.Add(CarFile.Named("Kept", LengthUnit.Millimetre) with { Frame = points }, s_car).Id;
        foreach (var name in again)
        {
            Take(journals, car, name);
        }

        while (true)
        {
            var bytes = new byte[16];
            random.NextBytes(bytes);
            Take(journals, car, new Guid(bytes));
            if (random.Next(5) == 0)
            {
                var picture = new byte[20_000];
                random.NextBytes(picture);
                journals.KeepPhoto(car, "image/jpeg", picture);
            }
        }
    }

    /// <summary>How many of the readings that such a process said were acknowledged are in a file.</summary>
    public static int CountKept(string journal, IEnumerable<string> said)
    {
        using var journals = Journals.Open(journal);
        var kept = journals.Cars().SelectMany(c => c.Entries).Select(e => e.Entry.Id).ToHashSet();
        return said.Count(line => line.StartsWith("ack", StringComparison.Ordinal) && kept.Contains(Guid.Parse(line.AsSpan(4))));
    }

    private static void Take(Journals journals, long car, Guid name)
    {
        Say("try", name);
        var reading = new Reading.Plan(name.ToString("N")[..12], "A.L", "A.R", Length.FromMillimetres(612));
        _ = journals.Append(car, name, null, _ => [new Act.ReadingTaken(reading)]);
        Say("ack", name);
    }

    private static void Say(string what, Guid name)
    {
        Console.Out.WriteLine($"{what} {name:D}");
        Console.Out.Flush();
    }

    /// <summary>Starts the process and kills it after a while; gives what it had begun and what was acknowledged to it.</summary>
    /// <param name="journal">The file.</param>
    /// <param name="seed">Names of its readings.</param>
    /// <param name="again">What to send again first.</param>
    /// <param name="after">What the while begins with: "" for its start, "try" for its first reading, "ack" for the first that is acknowledged.</param>
    /// <param name="wait">How long.</param>
    internal static async Task<(List<Guid> Begun, List<Guid> Acknowledged, string Remarks)> RunAndKill(
        string journal,
        int seed,
        IEnumerable<Guid> again,
        string after,
        TimeSpan wait
    )
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        string[] words = ["exec", typeof(KilledWriter).Assembly.Location, "writer", journal, $"{seed}", .. again.Select(g => $"{g:D}")];
        foreach (var argument in words)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var (begun, acknowledged) = (new List<Guid>(), new List<Guid>());
        var began = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        var reading = Task.Run(async () =>
        {
            while (await process.StandardOutput.ReadLineAsync() is { } line)
            {
                // A line that the kill cut short is no acknowledgement.
                if (line.Length == 40 && Guid.TryParse(line.AsSpan(4), out var name))
                {
                    (line.StartsWith("ack", StringComparison.Ordinal) ? acknowledged : begun).Add(name);
                    if (line.StartsWith(after, StringComparison.Ordinal))
                    {
                        began.TrySetResult();
                    }
                }
            }

            began.TrySetResult();
        });
        var remarks = process.StandardError.ReadToEndAsync();
        if (after.Length > 0)
        {
            await began.Task;
        }

        await Task.Delay(wait);
        process.Kill();
        await process.WaitForExitAsync();
        await reading;
        return (begun, acknowledged, await remarks);
    }
}
