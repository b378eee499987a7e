using System.Diagnostics;
using Plumbmark.Inspection.Floor;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

/// <summary>How often the floor answer is right on invented frames whose truth is known.</summary>
internal static class FloorSimulation
{
    private const double Twice = 6.35; // twice a limit of 1/8 in, millimetres

    public static int Run(int frames)
    {
        var clock = Stopwatch.StartNew();
        Row(frames, "good", null, (r, d) => new TrueFrame(d));
        Row(frames, "good, no heights", null, (r, d) => new TrueFrame(d), new SurveyStyle { Heights = false });
        Row(frames, "good, lean", null, (r, d) => new TrueFrame(d).Lean(0.01, 0.01));
        Row(
            frames,
            "sidesway step",
            "sidesway",
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, d.Stations.Count / 2), Sign(r) * Twice, false)
        );
        Row(
            frames,
            "sidesway grows",
            "sidesway",
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, (d.Stations.Count - 1) / 2 + 1), Sign(r) * Twice, true)
        );
        Row(frames, "diamond", "diamond", (r, d) => new TrueFrame(d).Diamond(Sign(r) * Twice));
        Row(frames, "mash", "mash", (r, d) => new TrueFrame(d).Mash(r.Next(1, d.Stations.Count / 2), r.Next(2) == 0, Twice));
        Row(frames, "twist", "twist", (r, d) => new TrueFrame(d).Twist(Sign(r) * Twice));
        Row(frames, "sag one side", "sag", (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, r.Next(2) == 0));
        Row(
            frames,
            "sag both, book",
            "sag",
            (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, null),
            new SurveyStyle { Book = true }
        );
        Row(frames, "mount, symmetry", "pair", Bent);
        Row(frames, "mount, book", "point", Bent, new SurveyStyle { Book = true });
        Console.WriteLine($"{clock.Elapsed.TotalSeconds:F1} s");
        return 0;
    }

    private static TrueFrame Bent(Random random, FrameDesign design)
    {
        var station = design.Stations[random.Next(1, design.Stations.Count - 1)];
        var id = $"{station.Name}.{(random.Next(2) == 0 ? "L" : "R")}";
        var (x, y, z) = (Noise.Normal(random), Noise.Normal(random), Noise.Normal(random));
        var scale = Twice / Math.Sqrt((x * x) + (y * y) + (z * z));
        return new TrueFrame(design).Bend(id, x * scale, y * scale, z * scale);
    }

    private static int Sign(Random random) => random.Next(2) == 0 ? 1 : -1;

    private static void Row(int frames, string name, string? form, Func<Random, FrameDesign, TrueFrame> make, SurveyStyle? style = null)
    {
        var (trueCount, outCount, named, inside, damaged) = (0, 0, 0, 0, 0);
        var wrong = new Dictionary<string, int>();
        for (var i = 0; i < frames; i++)
        {
            var random = new Random(1000 + i);
            var frame = make(random, FrameDesign.Random(random));
            var car = SimulatedSurvey.Measure(frame, (style ?? new SurveyStyle()) with { Drops = 1 + random.Next(3) }, random);
            var answer = FloorInspection.Of(car);
            trueCount += answer.Overall.Verdict == Verdict.True ? 1 : 0;
            outCount += answer.Overall.Verdict == Verdict.Out ? 1 : 0;
            damaged += answer.Damage.Count > 0 ? 1 : 0;
            if (form is null)
            {
                continue;
            }

            var first = answer.Damage.Count > 0 ? answer.Damage[0] : null;
            if (first?.Form == form)
            {
                named++;
                inside += Math.Abs(Math.Abs(first.AmountMetres * 1000) - Twice) <= 1.96 * first.UMetres * 1000 ? 1 : 0;
            }
            else
            {
                var key = first is null ? "nothing" : first.Form;
                wrong[key] = wrong.GetValueOrDefault(key) + 1;
            }
        }

        string Share(int n, int of) => of == 0 ? "-" : $"{100.0 * n / of, 5:F1}%";
        Console.WriteLine(
            $"{name, -18} true {Share(trueCount, frames)} out {Share(outCount, frames)} claimed {Share(damaged, frames)} named {Share(named, frames)} inside {Share(inside, named)}  {string.Join(' ', wrong.Select(w => $"{w.Key}:{w.Value}"))}"
        );
    }
}
