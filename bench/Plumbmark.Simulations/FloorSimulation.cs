using Plumbmark.Inspection.Floor;
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

    public static void Run(TextWriter output, int frames, int firstSeed = 1000)
    {
        output.WriteLine(
            $"{frames} frames a row, {Rows.Count * frames} in all; damage of {Twice} mm where the limit is {Limit} mm; frame number + {firstSeed} is the seed"
        );
        output.WriteLine($"{"", -30}{"true", 8}{"out", 8}{"can't", 8}{"claimed", 9}{"named", 8}{"inside", 8}  named otherwise");
        foreach (var row in Rows)
        {
            output.WriteLine(Line(row, frames, firstSeed));
            output.Flush();
        }

        output.WriteLine();
        output.WriteLine("claimed - damage of any form is claimed; named - the form, and of a bent point the very point or pair;");
        output.WriteLine(
            $"inside - the true amount within 1.96 u of the one told, of those named. Of {frames} frames at 95 % two standard deviations are {200 * Math.Sqrt(0.95 * 0.05 / frames):F1} %."
        );
    }

    private static IReadOnlyList<Row> Rows { get; } =
    [
        new("sound", _ => null, (_, d) => new TrueFrame(d)),
        new("sound, with book", _ => null, (_, d) => new TrueFrame(d), WithBook),
        new("sound, no heights", _ => null, (_, d) => new TrueFrame(d), s => s with { Heights = false }),
        new(
            "sidesway, step",
            Form("sidesway"),
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, d.Stations.Count / 2), Sign(r) * Twice, false)
        ),
        new(
            "sidesway, growing",
            Form("sidesway"),
            (r, d) => new TrueFrame(d).Sidesway(r.Next(1, (d.Stations.Count - 1) / 2), Sign(r) * Twice, true)
        ),
        new("diamond", Form("diamond"), (r, d) => new TrueFrame(d).Diamond(Sign(r) * Twice)),
        new("mash", Form("mash"), (r, d) => new TrueFrame(d).Mash(r.Next(1, d.Stations.Count / 2), r.Next(2) == 0, Twice)),
        new("twist", Form("twist"), (r, d) => new TrueFrame(d).Twist(Sign(r) * Twice)),
        new("sag of one rail", Form("sag"), (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, r.Next(2) == 0)),
        new("sag of both, with book", Form("sag"), (r, d) => new TrueFrame(d).Sag(r.Next(2, d.Stations.Count - 2), Twice, null), WithBook),
        new("one mount, by symmetry", f => [new("pair", f.BentPoint![..^2])], Bent),
        new("one mount, with book", f => [new("point", f.BentPoint)], Bent, WithBook),
        new(
            "twist and diamond",
            _ => [new("twist", null), new("diamond", null)],
            (r, d) => new TrueFrame(d).Twist(Sign(r) * Twice).Diamond(Sign(r) * Twice)
        ),
        new(
            "sidesway and one rail's sag",
            _ => [new("sidesway", null), new("sag", null)],
            (r, d) =>
                new TrueFrame(d)
                    .Sidesway(r.Next(1, d.Stations.Count / 2), Sign(r) * Twice, false)
                    .Sag(r.Next(2, d.Stations.Count - 2), Twice, r.Next(2) == 0)
        ),
    ];

    private static SurveyStyle WithBook(SurveyStyle style) => style with { Book = true };

    private static Func<TrueFrame, Named[]?> Form(string form) => _ => [new(form, null)];

    /// <summary>What must be named: a form, and of a point or pair which.</summary>
    private sealed record Named(string Form, string? From);

    /// <summary>A row of the table: what is done to the frames, and what the answer must name; null for nothing.</summary>
    private sealed record Row(
        string Name,
        Func<TrueFrame, Named[]?> Expected,
        Func<Random, FrameDesign, TrueFrame> Make,
        Func<SurveyStyle, SurveyStyle>? Style = null
    );

    /// <summary>One suspension or other mount displaced in any direction.</summary>
    private static TrueFrame Bent(Random random, FrameDesign design)
    {
        var station = design.Stations[random.Next(1, design.Stations.Count - 1)];
        var id = $"{station.Name}.{(random.Next(2) == 0 ? "L" : "R")}";
        var (x, y, z) = (Noise.Normal(random), Noise.Normal(random), Noise.Normal(random));
        var scale = Twice / Math.Sqrt((x * x) + (y * y) + (z * z));
        return new TrueFrame(design) { BentPoint = id }.Bend(id, x * scale, y * scale, z * scale);
    }

    private static int Sign(Random random) => random.Next(2) == 0 ? 1 : -1;

    private static string Line(Row row, int frames, int firstSeed)
    {
        var verdicts = new int[3];
        var (claimed, named, amounts, inside, isSound) = (0, 0, 0, 0, false);
        var wrong = new SortedDictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < frames; i++)
        {
            var random = new Random(firstSeed + i);
            var design = FrameDesign.Random(random);
            var frame = row.Make(random, i % 2 == 0 ? design : design.WithHeights(random));
            var expected = row.Expected(frame);
            frame.Scatter(random, 0.2).Lean(0.003 * Noise.Normal(random), 0.003 * Noise.Normal(random));
            var style = new SurveyStyle { Drops = 1 + random.Next(3), Scale = 2e-4 * ((2 * random.NextDouble()) - 1) };
            var answer = FloorInspection.Of(
                SimulatedSurvey.Measure(frame, row.Style?.Invoke(style) ?? style, random),
                new FloorOptions { NextReadings = 0 }
            );
            verdicts[(int)answer.Overall.Verdict]++;
            claimed += answer.Damage.Count > 0 ? 1 : 0;
            isSound = expected is null;
            if (expected is null)
            {
                continue;
            }

            var best = answer.Damage.Where(d => d.Odds == answer.Damage[0].Odds).ToList();
            var found = expected.Select(e => best.Find(d => d.Form == e.Form && (e.From is null || d.From == e.From))).ToList();
            if (best.Count == expected.Length && found.TrueForAll(d => d is not null))
            {
                named++;
                amounts += found.Count;
                inside += found.Count(d => Math.Abs(Math.Abs(d!.AmountMetres * 1000) - Twice) <= 1.96 * d.UMetres * 1000);
            }
            else
            {
                var key = best.Count == 0 ? "nothing" : string.Join('+', best.Select(d => d.Form).Order(StringComparer.Ordinal));
                wrong[key] = wrong.GetValueOrDefault(key) + 1;
                if (Environment.GetEnvironmentVariable("PLUMBMARK_WRONG") is not null)
                {
                    Console.Error.WriteLine(
                        $"{row.Name} {firstSeed + i}: {string.Join("; ", answer.Damage.Select(d => $"{d.Form} {d.From} {d.AmountMetres * 1000:F2} u {d.UMetres * 1000:F2} odds {d.Odds:G3}"))}"
                    );
                }
            }
        }

        static string Share(int n, int of) => of == 0 ? "-" : $"{100.0 * n / of:F1}%";
        var others = string.Join(", ", wrong.OrderByDescending(w => w.Value).Select(w => $"{w.Key} {w.Value}"));
        return $"{row.Name, -30}{Share(verdicts[(int)Verdict.True], frames), 8}{Share(verdicts[(int)Verdict.Out], frames), 8}{Share(verdicts[(int)Verdict.CannotTellYet], frames), 8}{Share(claimed, frames), 9}{(isSound ? "-" : Share(named, frames)), 8}{(isSound ? "-" : Share(inside, amounts)), 8}  {others}".TrimEnd();
    }
}
