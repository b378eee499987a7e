using System.Diagnostics;
using System.Globalization;
using Plumbmark.Engine.Adjustment;
using Plumbmark.Engine.Adjustment.Blunders;
using Plumbmark.Engine.Fits;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Benchmarks;

/// <summary>The engine's side of bench/compare: writes the problems as plain numbers, solves them, writes answers and times.</summary>
internal static class Comparison
{
    private static readonly Axis[] s_axes = [Axis.X, Axis.Y, Axis.Z];

    public static void Run(string folder, int repeats)
    {
        using var times = new StreamWriter(Path.Combine(folder, "times.engine.txt"));
        Net(folder, "bay", Problems.Frame(8, 36, isFixed: true), repeats, times, withSlips: true);
        Net(folder, "frame", Problems.Frame(60, 400, isFixed: true), repeats, times, withSlips: true);
        Net(folder, "hall", Problems.Hall(100, 10, 6000, isFixed: true), Math.Min(repeats, 3), times, withSlips: false);
        var plate = Problems.Plate(1000);
        Write(folder, "plate.points.txt", plate.Select(p => Line(p.X, p.Y, p.Z)));
        var zone = Timed("plate", repeats, times, () => MinimumZone.Plane(plate)).FitOrNull!.ZoneMetres;
        Write(folder, "plate.engine.txt", [Line(zone)]);
    }

    private static void Net(string folder, string name, Network network, int repeats, StreamWriter times, bool withSlips)
    {
        var index = network.Points.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        Write(
            folder,
            name + ".points.txt",
            network.Points.Select(p =>
                Line(p.X is Coordinate.Fixed ? 1 : 0, p.SketchXMetres!.Value, p.SketchYMetres!.Value, p.SketchZMetres!.Value)
            )
        );
        Write(
            folder,
            name + ".readings.txt",
            network.Observations.Select(o =>
                o is DirectDistance d
                    ? Line(0, index[d.From], index[d.To], d.ValueMetres, d.SigmaMetres)
                    : Line(1, index[((Height)o).Point], -1, o.ValueMetres, o.SigmaMetres)
            )
        );
        var (fit, slips) = Timed(
            name,
            repeats,
            times,
            () =>
            {
                var solved = NetworkAdjustment.Solve(network).FitOrNull!;
                return (solved, withSlips ? SingleSlips.Of(solved) : []);
            }
        );
        Write(folder, name + ".slips.txt", Asked(slips, network));
        var unknown = fit
            .Covariance.Coordinates.Select((c, i) => (c, i))
            .Where(c => network.Points[index[c.c.Point]].Of(c.c.Axis) is not Coordinate.Fixed)
            .ToList();
        Write(
            folder,
            name + ".engine.txt",
            [
                .. unknown.Select(u => Line(fit.Covariance.ValuesMetres[u.i])),
                .. unknown.Select(u => Line(Math.Sqrt(fit.Covariance[u.i, u.i]))),
                .. fit.Readings.Select(r => Line(r.RedundancyNumber)),
                .. slips.Select(s => Line(s.LogOdds)),
            ]
        );
    }

    // Which slips are asked about, for the others: reading, kind (0 a free amount, 1 another number, 2 plan instead of direct), what was meant, log of its odds beforehand.
    private static IEnumerable<string> Asked(IReadOnlyList<SingleSlips.Slip> slips, Network network)
    {
        var index = network.Observations.Select((o, i) => (o.Id, i)).ToDictionary(o => o.Id, o => o.i, StringComparer.Ordinal);
        var shared = slips.ToLookup(s => (s.Doubted.ReadingId, s.Doubted.Kind));
        return slips.Select(s =>
        {
            var kind =
                s.Doubted.Kind is BlunderKind.FreeAmount ? 0
                : s.Doubted.Kind is BlunderKind.PlanDirectConfused ? 2
                : 1;
            var odds = BlunderPriors.Reading * BlunderPriors.Share(s.Doubted.Kind) / shared[(s.Doubted.ReadingId, s.Doubted.Kind)].Count();
            return Line(index[s.Doubted.ReadingId!], kind, s.Doubted.Believed?.ValueMetres ?? 0, Math.Log(odds));
        });
    }

    private static T Timed<T>(string name, int repeats, StreamWriter times, Func<T> run)
    {
        // Two seconds: the compiler that runs beside the program has then seen what is hot.
        var warming = Stopwatch.StartNew();
        do
        {
            run();
        } while (warming.Elapsed.TotalSeconds < 2);

        times.Write(name);
        var result = default(T)!;
        for (var i = 0; i < repeats; i++)
        {
            var watch = Stopwatch.StartNew();
            result = run();
            times.Write(string.Create(CultureInfo.InvariantCulture, $" {watch.Elapsed.TotalMilliseconds:R}"));
        }

        times.WriteLine();
        return result;
    }

    private static string Line(params ReadOnlySpan<double> values)
    {
        var texts = new List<string>(values.Length);
        foreach (var value in values)
        {
            texts.Add(value.ToString("R", CultureInfo.InvariantCulture));
        }

        return string.Join(' ', texts);
    }

    private static void Write(string folder, string name, IEnumerable<string> lines) =>
        File.WriteAllLines(Path.Combine(folder, name), lines);
}
