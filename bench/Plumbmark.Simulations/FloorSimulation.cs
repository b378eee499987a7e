using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Simulations;

/// <summary>How often the floor answer is right on invented frames whose truth is known.</summary>
/// <remarks>
/// Every frame has its own shape (5 to 9 pairs), 1 to 3 drops of 0.5 mm, a tape of 0.5 mm at each end read to 0.5 mm with a scale within class II, a level
/// of 0.5 mm, points scattered by 0.2 mm from the drawing, and stands that are not quite level. Damage is twice the limit of 1/8 in.
/// </remarks>
internal static class FloorSimulation
{
    private const double Limit = 3.175; // 1/8 in, millimetres
    private const double Twice = 2 * Limit;

    public static void Run(TextWriter output, int frames)
    {
        output.WriteLine($"{frames} frames a row; damage of {Twice} mm where the limit is {Limit} mm; frame number + 1000 is the seed");
        output.WriteLine($"{"", -28}{"true", 8}{"out", 8}{"can't", 8}{"claimed", 9}{"named", 8}{"inside", 8}");
        Row(output, frames, "sound", null, (_, d) => new TrueFrame(d));
        Row(output, frames, "sound, with book", null, (_, d) => new TrueFrame(d), s => s with { Book = true });
        Row(output, frames, "sound, no heights", null, (_, d) => new TrueFrame(d), s => s with { Heights = false });
        Row(
            output,
            frames,
            "sidesway, step",
            "sidesway",
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, d.Stations.Count / 2), Sign(r) * Twice, false)
        );
        Row(
            output,
            frames,
            "sidesway, growing",
            "sidesway",
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, (d.Stations.Count - 1) / 2 + 1), Sign(r) * Twice, true)
        );
        Row(output, frames, "diamond", "diamond", (r, d) => new TrueFrame(d).Diamond(Sign(r) * Twice));
        Row(output, frames, "mash", "mash", (r, d) => new TrueFrame(d).Mash(r.Next(1, d.Stations.Count / 2), r.Next(2) == 0, Twice));
        Row(output, frames, "twist", "twist", (r, d) => new TrueFrame(d).Twist(Sign(r) * Twice));
        Row(
            output,
            frames,
            "sag of one rail",
            "sag",
            (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, r.Next(2) == 0)
        );
        Row(
            output,
            frames,
            "sag of both, with book",
            "sag",
            (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, null),
            s => s with { Book = true }
        );
        Row(output, frames, "one mount, by symmetry", "pair", Bent);
        Row(output, frames, "one mount, with book", "point", Bent, s => s with { Book = true });
        Row(output, frames, "twist and diamond", "twist", (r, d) => new TrueFrame(d).Twist(Sign(r) * Twice).Diamond(Sign(r) * Twice));
        Plans(output, Math.Max(20, frames / 50));
    }

    /// <summary>Readings of a plan against those of the all-pairs list, both to the certainty that the all-pairs list reaches.</summary>
    private static void Plans(TextWriter output, int frames)
    {
        output.WriteLine();
        output.WriteLine("pairs   all lengths + heights + drops   planned   share");
        foreach (var pairs in new[] { 5, 6, 7, 8, 9 })
        {
            var shares = new List<(int All, int Planned)>();
            for (var i = 0; shares.Count < frames / 5 && i < 10_000; i++)
            {
                var random = new Random(5000 + i);
                var design = FrameDesign.Random(random);
                if (design.Stations.Count != pairs)
                {
                    continue;
                }

                var car = SimulatedSurvey.Measure(
                    new TrueFrame(design),
                    new SurveyStyle
                    {
                        Drops = 1,
                        Reach = 0,
                        Heights = false,
                    },
                    random
                );
                shares.Add(AllPairs.Against(car with { Readings = [] }));
            }

            if (shares.Count > 0)
            {
                var share = shares.Average(s => (double)s.Planned / s.All);
                output.WriteLine(
                    $"{pairs, 5}   {shares.Average(s => s.All), 29:F1}   {shares.Average(s => s.Planned), 7:F1}   {100 * share, 4:F0}%"
                );
            }
        }
    }

    /// <summary>One suspension or other mount displaced in any direction.</summary>
    private static TrueFrame Bent(Random random, FrameDesign design)
    {
        var station = design.Stations[random.Next(1, design.Stations.Count - 1)];
        var id = $"{station.Name}.{(random.Next(2) == 0 ? "L" : "R")}";
        var (x, y, z) = (Noise.Normal(random), Noise.Normal(random), Noise.Normal(random));
        var scale = Twice / Math.Sqrt((x * x) + (y * y) + (z * z));
        return new TrueFrame(design).Bend(id, x * scale, y * scale, z * scale);
    }

    private static int Sign(Random random) => random.Next(2) == 0 ? 1 : -1;

    private static void Row(
        TextWriter output,
        int frames,
        string name,
        string? form,
        Func<Random, FrameDesign, TrueFrame> make,
        Func<SurveyStyle, SurveyStyle>? with = null
    )
    {
        var verdicts = new int[3];
        var (claimed, named, inside) = (0, 0, 0);
        var wrong = new SortedDictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < frames; i++)
        {
            var random = new Random(1000 + i);
            var design = FrameDesign.Random(random);
            var frame = make(random, i % 2 == 0 ? design : design.WithHeights(random));
            frame.Scatter(random, 0.2).Lean(0.003 * Noise.Normal(random), 0.003 * Noise.Normal(random));
            var style = new SurveyStyle { Drops = 1 + random.Next(3), Scale = 2e-4 * ((2 * random.NextDouble()) - 1) };
            var car = SimulatedSurvey.Measure(frame, with?.Invoke(style) ?? style, random);
            var answer = FloorInspection.Of(car, new FloorOptions { NextReadings = 0 });
            verdicts[(int)answer.Overall.Verdict]++;
            claimed += answer.Damage.Count > 0 ? 1 : 0;
            if (form is null)
            {
                continue;
            }

            var first = answer.Damage.Take(2).FirstOrDefault(d => d.Form == form);
            if (first is not null && (first == answer.Damage[0] || first.Odds == answer.Damage[0].Odds))
            {
                named++;
                inside += Math.Abs(Math.Abs(first.AmountMetres * 1000) - Twice) <= 1.96 * first.UMetres * 1000 ? 1 : 0;
            }
            else
            {
                var key = answer.Damage.Count == 0 ? "nothing" : answer.Damage[0].Form;
                wrong[key] = wrong.GetValueOrDefault(key) + 1;
            }
        }

        string Share(int n, int of) => of == 0 ? "-" : $"{100.0 * n / of:F1}%";
        var named2 = form is null ? "-" : Share(named, frames);
        var others = string.Join(' ', wrong.Select(w => $"{w.Key} {w.Value}"));
        output.WriteLine(
            $"{name, -28}{Share(verdicts[(int)Verdict.True], frames), 8}{Share(verdicts[(int)Verdict.Out], frames), 8}{Share(verdicts[(int)Verdict.CannotTellYet], frames), 8}{Share(claimed, frames), 9}{named2, 8}{(form is null ? "-" : Share(inside, named)), 8}  {others}".TrimEnd()
        );
    }
}
