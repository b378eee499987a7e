using System.Globalization;

namespace Plumbmark.Load;

/// <summary>A day and a night of entry, the pauses left out: the app's memory must not grow with them.</summary>
internal static class LongEvening
{
    private const int ReadingsOnACar = 120;
    private const int Samples = 12;

    public static async Task<int> Run(string binary, int readings, TextWriter output)
    {
        await using var app = await LoadedApp.Start(binary);
        using var visitor = new Visitor(app.Address);
        output.WriteLine(
            $"{readings} readings one after the other, a new car every {ReadingsOnACar}, the page with the answer after every fifth:"
        );
        output.WriteLine($"as many as one every 20 s gives in {readings / 180.0:0.#} hours, with the pauses left out.");
        output.WriteLine($"{"readings", 10} {"memory, MB", 12}");
        var samples = new List<double>();
        var car = 0;
        for (var i = 0; i < readings; i++)
        {
            if (i % ReadingsOnACar == 0)
            {
                car = await visitor.AddCar($"Car {i.ToString(CultureInfo.InvariantCulture)}");
                await visitor.Open($"/cars/{car}/floor");
            }

            await visitor.Keep(car, "A.L", "BCDEF"[i % 5] + ".R", $"{30 + (i % 5 * 12)} {1 + (i % 15)}/16", $"{i}");
            if (i % 5 == 4)
            {
                await visitor.Open($"/cars/{car}/floor");
            }

            if ((i + 1) % (readings / Samples) == 0)
            {
                samples.Add(app.MemoryMegabytes);
                output.WriteLine($"{i + 1, 10} {samples[^1], 12:F0}");
                await output.FlushAsync();
            }
        }

        // The first quarter fills caches and lets the collector find its size; afterwards memory may swing, not climb.
        var early = samples.Take(samples.Count / 2).Max();
        var late = samples.Skip(samples.Count / 2).Max();
        output.WriteLine(LoadedApp.MachineWords);
        output.WriteLine($"most in the first half {early:F0} MB, in the second {late:F0} MB");
        return late <= early * 1.25 ? 0 : 1;
    }
}
