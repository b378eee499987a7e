using System.Diagnostics;
using Plumbmark.Engine;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;
using Plumbmark.Testing;

namespace Plumbmark.Simulations;

/// <summary>
/// The Road over many measured cars: whether it tells the demo's faults apart when everything is measured with error, whether linear uncertainties hold against a million trials, and how many positions are
/// solved in a second.
/// </summary>
internal static class RoadSimulation
{
    private const int Cars = 500;
    private const int Trials = 1_000_000;
    private const int Positions = 2_000_000;
    private const double SigmaInches = 0.006;

    public static void Run(TextWriter output)
    {
        FaultsApart(output);
        Agreement(output);
        RunSpeed(output);
    }

    /// <summary>The last part alone.</summary>
    public static void RunSpeed(TextWriter output)
    {
        Speed(output);
        TrialSpeed(output);
        ZoneSpeed(output);
    }

    private static void FaultsApart(TextWriter output)
    {
        output.WriteLine(
            $"{Cars} measured cars of each demo fault, seed 1; every place and size read with a standard deviation of {SigmaInches} in."
        );
        output.WriteLine("culprit = the first figure out names the faulty part first\n");
        output.WriteLine("fault             out %  can't tell %  true %  culprit %");
        foreach (var fault in Enum.GetValues<DemoRoad.Fault>())
        {
            var draw = new RandomStream(1);
            var (counts, named) = (new Dictionary<Verdict, int>(), 0);
            for (var i = 0; i < Cars; i++)
            {
                var answer = RoadInspection.Of(Measured(fault, draw), MeasuredPlaces.None);
                counts[answer.Verdict] = counts.GetValueOrDefault(answer.Verdict) + 1;
                var first = answer.Figures.Where(f => f.Verdict == Verdict.Out).MinBy(f => f.ProbabilityWithin);
                named += first?.Contributions[0].What == CulpritOf(fault) ? 1 : 0;
            }

            double Share(Verdict verdict) => 100.0 * counts.GetValueOrDefault(verdict) / Cars;
            var culprit = CulpritOf(fault) is null ? "-" : $"{100.0 * named / Cars:F1}";
            output.WriteLine(
                $"{fault, -16}{Share(Verdict.Out), 7:F1}{Share(Verdict.CannotTellYet), 14:F1}{Share(Verdict.True), 8:F1}{culprit, 11}"
            );
        }
    }

    private static CornerPart? CulpritOf(DemoRoad.Fault fault) =>
        fault switch
        {
            DemoRoad.Fault.BentMount => CornerPart.LowerRear,
            DemoRoad.Fault.WrongLever => CornerPart.Lever,
            _ => null,
        };

    private static Inspection.Car.CarFile Measured(DemoRoad.Fault fault, RandomStream draw)
    {
        var car = DemoRoad.Car(fault);
        var parts = car.Road!.Parts.Select(p => p with { Amounts = [.. p.Amounts.Select(a => Read(a, draw))] });
        return car with { Road = car.Road with { Parts = [.. parts] } };
    }

    private static PartDeviation.Amount Read(PartDeviation.Amount amount, RandomStream draw) =>
        amount.Length is { } length
            ? amount with
            {
                Length = length + Length.FromInches((decimal)Math.Round(SigmaInches * draw.Normal(), 6)),
            }
            : amount with
            {
                Angle = Angle.FromDegrees((decimal)Math.Round(amount.Angle!.Value.Degrees + (0.05 * draw.Normal()), 6)),
            };

    private static void Agreement(TextWriter output)
    {
        output.WriteLine(
            $"\nLinear against {Trials} trials (JCGM 101:2008, clause 8, one significant digit), minutes of arc and millimetres"
        );
        output.WriteLine(
            "fault           figure                                                      linear             tried         tolerance  agrees"
        );
        foreach (
            var (fault, answer) in new (string, Func<RoadAnswer>)[]
            {
                (
                    "BentMount",
                    () => RoadInspection.Of(DemoRoad.Car(DemoRoad.Fault.BentMount), MeasuredPlaces.None, Trials, withTurns: true)
                ),
                (
                    "WrongLever",
                    () => RoadInspection.Of(DemoRoad.Car(DemoRoad.Fault.WrongLever), MeasuredPlaces.None, Trials, withTurns: true)
                ),
                ("Shipped demo", () => RoadInspection.Of(DemoCar.File(), Trials, withTurns: true)),
            }
        )
        {
            foreach (var t in answer().Trials)
            {
                var scale = t.Kind
                    is FigureKind.Wheelbase
                        or FigureKind.WheelbaseSplit
                        or FigureKind.FrontTrack
                        or FigureKind.RearTrack
                        or FigureKind.RearOffset
                        or FigureKind.DogTrack
                    ? 1000
                    : 180 * 60 / Math.PI;
                output.WriteLine(
                    $"{fault, -16}{RoadNames.Of(t.Kind, t.Side), -54}{t.LinearLow * scale, 10:F2}{t.LinearHigh * scale, 10:F2}{t.TriedLow * scale, 10:F2}{t.TriedHigh * scale, 10:F2}{t.Tolerance * scale, 10:F2}  {(t.Agrees ? "yes" : "NO")}"
                );
            }
        }
    }

    private static void Speed(TextWriter output)
    {
        var points = ReferenceWishbone.Points;
        var corner = Corner.Of(points);
        output.WriteLine($"\n{Positions} positions of one front corner, each with another wheel height and another place of the rack");
        output.WriteLine("threads  positions/s  positions/cpu s  bytes allocated");
        Sweep(corner, points, 0, 1);
        foreach (var threads in new[] { 1, 2 })
        {
            var (before, cpu) = (GC.GetTotalAllocatedBytes(precise: true), Process.GetCurrentProcess().TotalProcessorTime);
            var clock = Stopwatch.StartNew();
            Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, t => Sweep(corner, points, t, threads));
            var seconds = clock.Elapsed.TotalSeconds;
            var used = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            output.WriteLine(
                $"{threads, 7}{Positions / seconds, 13:F0}{Positions / used, 17:F0}{GC.GetTotalAllocatedBytes(precise: true) - before, 17}"
            );
        }
    }

    // From the readings' covariance over the frame to every angle: each trial draws a car and works both front corners and the rear out in full.
    private static void TrialSpeed(TextWriter output)
    {
        output.WriteLine("\nReadings to frame to angles: cars drawn at random within what was measured of the shipped demo");
        output.WriteLine("trials   seconds  cpu seconds  bytes allocated a trial");
        var car = DemoCar.File();
        RoadInspection.Of(car, 2_000);
        foreach (var trials in new[] { 0, 10_000, 100_000 })
        {
            var (before, cpu) = (GC.GetTotalAllocatedBytes(precise: true), Process.GetCurrentProcess().TotalProcessorTime);
            var clock = Stopwatch.StartNew();
            RoadInspection.Of(car, trials);
            var seconds = clock.Elapsed.TotalSeconds;
            var used = (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds;
            var bytes = (GC.GetTotalAllocatedBytes(precise: true) - before) / Math.Max(1.0, trials);
            output.WriteLine($"{trials, 6}{seconds, 10:F3}{used, 13:F3}{bytes, 25:F0}");
        }
    }

    // A plate of a thousand places, half a millimetre uneven: the narrowest pair of planes around them.
    private static void ZoneSpeed(TextWriter output)
    {
        var draw = new RandomStream(7);
        Vector3[] plate =
        [
            .. Enumerable
                .Range(0, 1000)
                .Select(i => new Vector3(0.02 * (i % 40), 0.02 * (i / 40), 0.5e-3 * draw.Normal() + 1e-4 * (i % 40))),
        ];
        var times = new List<double>();
        for (var i = 0; i < 20; i++)
        {
            var clock = Stopwatch.StartNew();
            MinimumZone.Plane(plate);
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        output.WriteLine($"\nMinimum-zone plane of 1,000 places: {times.Min():F2} ms at best, {times.Order().ElementAt(10):F2} ms usually");
    }

    private static double Sweep(Corner corner, CornerPoints points, int first, int step)
    {
        var sum = 0.0;
        for (var i = first; i < Positions; i += step)
        {
            var height = points.WheelCentre.Z + (0.12 * i / Positions) - 0.06;
            corner.Solve(height, points.TrackRodInner + (0.02 * Math.Sin(i) * Vector3.Left), out var state);
            sum += WheelAngles.Of(state).CamberRadians;
        }

        return sum;
    }
}
