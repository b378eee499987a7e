using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing;

/// <summary>An invented ladder frame with one horn out, and an answer written by hand: the drawing is tested without the network that finds it.</summary>
internal static class InventedFrame
{
    private const double Inch = 0.0254;
    private static readonly (string Name, double X, double Half, PointRole Role)[] s_stations =
    [
        ("A", 66, 11, PointRole.Other),
        ("B", 50, 14, PointRole.Suspension),
        ("C", 40, 13.5, PointRole.Suspension),
        ("D", 20, 15, PointRole.Body),
        ("E", 0, 22, PointRole.Body),
        ("F", -4, 15.5, PointRole.Engine),
        ("G", -24, 14, PointRole.Spring),
        ("H", -38, 12, PointRole.Spring),
    ];

    public static CarFile Car { get; } = MakeCar();

    public static FloorAnswer Answer { get; } = MakeAnswer();

    /// <summary>An answer to no readings at all.</summary>
    public static FloorAnswer Nothing { get; } =
        new(
            new OverallAnswer(Verdict.CannotTellYet, "Nothing has been measured yet.", [], []),
            [],
            new AdjustmentSummary(0, null, null),
            [],
            [],
            [],
            [],
            [],
            [],
            [],
            []
        );

    private static CarFile MakeCar()
    {
        var points = new List<FramePoint>();
        foreach (var (name, x, half, role) in s_stations)
        {
            points.Add(new FramePoint($"{name}.L", $"{name}.R", role, At(x, half)));
            points.Add(new FramePoint($"{name}.R", $"{name}.L", role, At(x, -half)));
        }

        var readings = new List<Reading>();
        var number = 0;
        for (var i = 0; i + 1 < s_stations.Length; i++)
        {
            var (a, b) = (s_stations[i], s_stations[i + 1]);
            foreach (var (p, q) in new[] { ("L", "L"), ("R", "R"), ("L", "R"), ("R", "L") })
            {
                var dx = (a.X - b.X) * (a.X - b.X);
                var dy = p == q ? (a.Half - b.Half) * (a.Half - b.Half) : (a.Half + b.Half) * (a.Half + b.Half);
                var sixteenths = (int)Math.Round(Math.Sqrt(dx + dy) * 16);
                var length = (LengthOutcome.Read)LengthText.Read($"{sixteenths / 16} {Math.Max(1, sixteenths % 16)}/16", LengthUnit.Inch);
                readings.Add(new Reading.Plan($"r{++number}", $"{a.Name}.{p}", $"{b.Name}.{q}", length.Value) { Tool = "tape" });
            }

            readings.Add(
                new Reading.Height($"h{i + 1}", $"{a.Name}.L", Length.FromFraction(12, i % 8, 8, LengthUnit.Inch)) { Tool = "level" }
            );
        }

        return new CarFile(
            LengthUnit.Inch,
            new CarIdentity("Larkmoor Tern", "TN 00417"),
            [
                new Tool("tape", ToolKind.Tape, TapeClass.II, Length.FromFraction(0, 1, 16, LengthUnit.Inch)),
                new Tool("level", ToolKind.Level, null, Length.FromFraction(0, 1, 16, LengthUnit.Inch)),
            ],
            new Frame(points, new Limits(Length.FromFraction(0, 1, 8, LengthUnit.Inch), Length.FromFraction(0, 1, 8, LengthUnit.Inch))),
            readings
        );
    }

    private static Place At(double x, double y) => new(Length.FromInches((decimal)x), Length.FromInches((decimal)y), null);

    private static FloorAnswer MakeAnswer()
    {
        var points = new List<PointEstimate>();
        var pairs = new List<PairEstimate>();
        var checks = new List<Check>();
        const double Limit = 0.125 * Inch;
        var number = 0;
        foreach (var (name, x, half, role) in s_stations)
        {
            var shift = name == "A" ? -0.31 * Inch : ((number % 3) - 1) * 0.03 * Inch;
            var stagger = name == "A" ? 0.1 * Inch : ((number % 2) - 0.5) * 0.05 * Inch;
            var rise = name == "A" ? 0.19 * Inch : ((number % 4) - 1.5) * 0.02 * Inch;
            var u = (0.02 + (0.004 * number)) * Inch;
            number++;
            foreach (var side in new[] { 1, -1 })
            {
                var deviation = new Deviation(side * stagger / 2, shift, side * rise / 2, DeviationFrom.Symmetry);
                points.Add(
                    new PointEstimate(
                        $"{name}.{(side > 0 ? "L" : "R")}",
                        (x * Inch) + (side * stagger / 2),
                        (side * half * Inch) + shift,
                        (13 * Inch) + (x * x * 0.0004 * Inch) + (side * rise / 2),
                        u,
                        1.6 * u,
                        u,
                        side * 0.5 * u * u,
                        deviation
                    )
                );
            }

            string[] both = [$"{name}.L", $"{name}.R"];
            pairs.Add(new PairEstimate(both[0], both[1], shift, stagger, 2 * half * Inch, rise, u, 1.4 * u, 1.4 * u, u));
            var verdict =
                name == "A" ? Verdict.Out
                : number is 4 or 7 ? Verdict.CannotTellYet
                : Verdict.True;
            var within =
                verdict == Verdict.Out ? 0.001
                : verdict == Verdict.True ? 0.998
                : 0.71;
            checks.Add(
                new Check(
                    $"side-shift:{name}",
                    "sideShift",
                    shift,
                    u,
                    Limit,
                    LimitSource.Practice,
                    within,
                    verdict,
                    both,
                    role is PointRole.Suspension or PointRole.Spring
                )
            );
        }

        return new FloorAnswer(
            new OverallAnswer(
                Verdict.Out,
                "One horn is out; everything from B back agrees.",
                ["A sits 5/16 in to the right of the centre line, sure to ±1/16 in; the limit is 1/8 in (practice)."],
                []
            ),
            points,
            new AdjustmentSummary(14, 1.1, 0.4),
            [.. Car.Readings.Select((r, i) => new ReadingFit(r.Id, 0.0004 * ((i % 5) - 2), ((i % 5) - 2) * 0.8, 0.5, 0.004, 0.0007))],
            [
                new Suspect(
                    "r7",
                    null,
                    "inch",
                    Inch,
                    40,
                    "r7 (B.L to C.R) reads 1 in too long; the tape was probably started at 1 in. Measure it again."
                ),
            ],
            pairs,
            [],
            [new DamageEstimate("point", 0.3 * Inch, 0.04 * Inch, "A.R", 12, "One horn bent: A.R is 5/16 in in.")],
            checks,
            [
                new BlindSpot(
                    "twist",
                    null,
                    null,
                    0.125 * Inch,
                    "A twist would not show: no heights on the right side yet. Take the heights of B.R and H.R."
                ),
            ],
            [new NextReading("plan", "D.L", "F.R", null, ["side-shift:D"], 2, "Measure D.L to F.R: it settles the side shift of D.")]
        );
    }

    /// <summary>A frame of 200 points and 1,500 readings with an answer to match: as large as a sheet must bear.</summary>
    public static (CarFile Car, FloorAnswer Answer) Large()
    {
        var points = new List<FramePoint>();
        for (var i = 0; i < 100; i++)
        {
            var half = 12 + (2 * (i % 3));
            points.Add(new FramePoint($"P{i}.L", $"P{i}.R", PointRole.Body, At(66 - i, half)));
            points.Add(new FramePoint($"P{i}.R", $"P{i}.L", PointRole.Body, At(66 - i, -half)));
        }

        var readings = Enumerable
            .Range(0, 1500)
            .Select(i =>
            {
                var (from, to) = (points[i % 200], points[((i * 7) + 31) % 200]);
                return (Reading)
                    new Reading.Plan($"r{i + 1}", from.Id, to.Id, Length.FromFraction(20 + (i % 60), i % 16, 16, LengthUnit.Inch));
            })
            .ToList();
        var estimates = points
            .Select(p => new PointEstimate(
                p.Id,
                p.Sketch!.X!.Value.Metres,
                p.Sketch.Y!.Value.Metres,
                null,
                0.0006,
                0.0008,
                null,
                0,
                new Deviation(0.0004, -0.0007, null, DeviationFrom.Symmetry)
            ))
            .ToList();
        var pairs = Enumerable
            .Range(0, 100)
            .Select(i => new PairEstimate($"P{i}.L", $"P{i}.R", 0.0007, 0.0004, 0.6, null, 0.0005, 0.0006, 0.0007, null))
            .ToList();
        var checks = pairs
            .Select(p => new Check(
                $"side-shift:{p.Left}",
                "sideShift",
                0.0007,
                0.0005,
                0.003,
                LimitSource.Practice,
                0.99,
                Verdict.True,
                [p.Left, p.Right],
                false
            ))
            .ToList();
        var answer = Answer with { Points = estimates, Pairs = pairs, Checks = checks };
        return (Car with { Frame = Car.Frame with { Points = points }, Readings = readings }, answer);
    }
}
