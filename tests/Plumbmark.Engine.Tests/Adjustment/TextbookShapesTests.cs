using Plumbmark.Engine.Adjustment;
using static Plumbmark.Engine.Adjustment.Observation;

namespace Plumbmark.Engine.Tests.Adjustment;

/// <summary>
/// The shapes of network that textbooks print, made from geometry with noise: each is solved from a good sketch, a poor one, a mirrored one and none, in
/// coordinates small and of millions, and held against <see cref="PlainAdjustment"/>.
/// </summary>
public class TextbookShapesTests
{
    private const double Sigma = 0.01;

    private sealed record Place(string Id, double X, double Y, double Z = 0, bool IsFixed = false, double FixedSigma = 0);

    private sealed record Shape(List<Place> Places, List<Observation> Readings);

    /// <summary>Shape, sketch and where it lies.</summary>
    public static TheoryData<string, string, string> Cases
    {
        get
        {
            var cases = new TheoryData<string, string, string>();
            foreach (
                var shape in new[]
                {
                    "resection",
                    "intersection",
                    "traverse",
                    "quads",
                    "levels",
                    "space",
                    "weights",
                    "tiny",
                    "huge",
                    "uncertain",
                    "mixed",
                }
            )
            {
                foreach (var sketch in new[] { "good", "poor", "far", "mirrored", "none" })
                {
                    if (shape == "huge" && sketch is ("far" or "mirrored"))
                    {
                        continue; // with sigmas of a thousand kilometres every figure is believable, the sketch's too
                    }

                    cases.Add(shape, sketch, "near");
                    cases.Add(shape, sketch, "millions");
                }
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Solve_AgreesWithThePlainWay(string name, string sketch, string where)
    {
        var random = new Random(name.Length * 1000 + sketch.Length * 10 + where.Length);
        var (dx, dy) = where == "millions" ? (2_410_000.0, 5_390_000.0) : (0, 0);
        var shape = Make(name, random);
        shape = shape with { Places = [.. shape.Places.Select(p => p with { X = p.X + dx, Y = p.Y + dy })] };
        var network = new Network(shape.Places.Select(p => Point(p, shape.Places, sketch, random)), shape.Readings);
        var truth = shape
            .Places.SelectMany(p =>
                (((string, Axis), double)[])[((p.Id, Axis.X), p.X - dx), ((p.Id, Axis.Y), p.Y - dy), ((p.Id, Axis.Z), p.Z)]
            )
            .ToDictionary(t => t.Item1, t => t.Item2);
        var watch = System.Diagnostics.Stopwatch.StartNew();
        var fit = Assert.IsType<NetworkOutcome.Adjusted>(NetworkAdjustment.Solve(network)).Fit;
        Assert.True(watch.ElapsedMilliseconds < 5000, $"{watch.ElapsedMilliseconds} ms");
        // The plain way has no local origin of its own: it is given one.
        var local = new Network(
            shape.Places.Select(p => Point(p with { X = p.X - dx, Y = p.Y - dy }, shape.Places, "none", random)),
            shape.Readings
        );
        var plain = PlainAdjustment.Of(local, truth);
        Assert.Equal(plain.Redundancy, fit.Redundancy);
        Close(plain.WeightedSquares, fit.WeightedSquares, 1e-3 * Math.Max(1e-6, plain.WeightedSquares));
        var scale = shape.Readings.Min(r => r.SigmaMetres);
        foreach (var point in fit.Points.Where(p => !shape.Places.Single(q => q.Id == p.Id).IsFixed))
        {
            Same(plain, point.Id, Axis.X, point.XMetres - dx, point.UxMetres);
            Same(plain, point.Id, Axis.Y, point.YMetres - dy, point.UyMetres);
            Same(plain, point.Id, Axis.Z, point.ZMetres, point.UzMetres);
        }

        Assert.All(fit.Readings, r => Close(plain.Residual(r.Id), r.ResidualMetres, 1e-4 * Math.Max(scale, 1e-6) + 1e-8));
    }

    // Coordinates to a thousandth of their own uncertainty or better, and uncertainties to six digits.
    private static void Same(PlainAdjustment plain, string point, Axis axis, double? value, double? sigma)
    {
        if (value is null)
        {
            return;
        }

        var expected = plain.Sigma(point, axis);
        Close(expected, sigma!.Value, 1e-6 * expected);
        Close(plain.Value(point, axis), value.Value, Math.Max(1e-3 * expected, 1e-8));
    }

    private static void Close(double expected, double actual, double within) =>
        Assert.True(Math.Abs(expected - actual) <= within, $"expected {expected:R} within {within:R}, found {actual:R}");

    private static NetworkPoint Point(Place p, List<Place> all, string sketch, Random random)
    {
        Coordinate Known(double v) =>
            !p.IsFixed ? Coordinate.Unknown
            : p.FixedSigma > 0 ? new Coordinate.Uncertain(v, p.FixedSigma)
            : new Coordinate.Fixed(v);
        var (middleX, middleY) = (all.Average(q => q.X), all.Average(q => q.Y));
        double Rough(double size) => size * (random.NextDouble() - 0.5);
        var (x, y) = sketch switch
        {
            "good" => (p.X + Rough(2), p.Y + Rough(2)),
            "poor" => (p.X + Rough(60), p.Y + Rough(60)),
            "far" => (middleX + 5000 + Rough(3000), middleY - 4000 + Rough(3000)),
            _ => (2 * middleX - p.X, p.Y),
        };
        return sketch == "none"
            ? new NetworkPoint(p.Id)
            {
                X = Known(p.X),
                Y = Known(p.Y),
                Z = Known(p.Z),
            }
            : new NetworkPoint(p.Id)
            {
                X = Known(p.X),
                Y = Known(p.Y),
                Z = Known(p.Z),
                SketchXMetres = p.IsFixed ? p.X : x,
                SketchYMetres = p.IsFixed ? p.Y : y,
                SketchZMetres = p.Z + Rough(1),
            };
    }

    private static Shape Make(string name, Random random) =>
        name switch
        {
            "resection" => Plan(
                random,
                1,
                [At("P", 180, 140), Fix("1", 0, 0), Fix("2", 300, 20), Fix("3", 120, 260), Fix("4", 40, 180)],
                "P1 P2 P3 P4"
            ),
            // Three rays each, so that the side of the base line is not left to the sketch.
            "intersection" => Plan(
                random,
                1,
                [Fix("1", 0, 0), Fix("2", 200, 0), Fix("3", 90, -30), At("P", 120, 160), At("Q", 40, 210)],
                "P1 P2 P3 Q1 Q2 Q3 PQ"
            ),
            "traverse" => Traverse(random),
            // The lengths across two bays keep the last bay from folding over.
            "quads" => Plan(
                random,
                1,
                [
                    Fix("1", 0, 0),
                    Fix("2", 0, 100),
                    At("3", 110, 5),
                    At("4", 105, 98),
                    At("5", 220, -4),
                    At("6", 212, 103),
                    At("7", 330, 2),
                    At("8", 322, 99),
                    Fix("9", 60, 160),
                ],
                "93 94 15 48 37 13 24 14 23 34 35 46 36 45 56 57 68 58 67 78"
            ),
            "levels" => Levels(random),
            "space" => Space(random),
            "weights" => Weights(random),
            "tiny" => Plan(
                random,
                1e-7,
                [Fix("1", 0, 0), Fix("2", 0, 100), Fix("9", 60, 160), At("3", 110, 5), At("4", 105, 98)],
                "93 94 13 24 14 23 34"
            ),
            "huge" => Plan(
                random,
                1e8,
                [Fix("1", 0, 0), Fix("2", 0, 100), Fix("9", 60, 160), At("3", 110, 5), At("4", 105, 98)],
                "93 94 13 24 14 23 34"
            ),
            "uncertain" => Plan(
                random,
                1,
                [
                    .. new[] { Fix("1", 0, 0), Fix("2", 0, 100), Fix("9", 60, 160) }.Select(p => p with { FixedSigma = 0.02 }),
                    At("3", 110, 5),
                    At("4", 105, 98),
                ],
                "13 24 14 23 34 93 94 12"
            ),
            _ => Mixed(random),
        };

    private static Place At(string id, double x, double y, double z = 0) => new(id, x, y, z);

    private static Place Fix(string id, double x, double y, double z = 0) => new(id, x, y, z, true);

    // Noise is never more than a centimetre, however large sigma is said to be: this is about numbers, not about chance.
    private static Shape Plan(Random random, double factor, List<Place> places, string lengths) =>
        new(
            places,
            [
                .. lengths
                    .Split(' ')
                    .Select(l => (A: places.Single(p => p.Id == l[..1]), B: places.Single(p => p.Id == l[1..])))
                    .Select(l => new PlanDistance(
                        l.A.Id + l.B.Id,
                        l.A.Id,
                        l.B.Id,
                        double.Hypot(l.A.X - l.B.X, l.A.Y - l.B.Y) + Noise(random, Math.Min(Sigma, Sigma * factor)),
                        Sigma * factor
                    )),
            ]
        );

    private static double Noise(Random random, double sigma) => sigma * 2 * (random.NextDouble() - 0.5);

    // A chain of triangles between two fixed ends, lengths only: what a traverse is without angles.
    private static Shape Traverse(Random random)
    {
        List<Place> places = [Fix("A", 0, 0), Fix("B", 20, 90)];
        for (var i = 0; i < 8; i++)
        {
            places.Add(At($"{(char)('C' + i)}", 80 + 75 * i, i % 2 == 0 ? 5 + i : 95 - i));
        }

        places.Add(Fix("Y", 690, 20));
        places.Add(Fix("Z", 720, 110));
        var lengths = Enumerable
            .Range(0, places.Count - 1)
            .SelectMany(i => Enumerable.Range(i + 1, Math.Min(3, places.Count - 1 - i)).Select(j => places[i].Id + places[j].Id))
            .Where(l => l is not ("AB" or "YZ"));
        return Plan(random, 1, places, string.Join(' ', lengths));
    }

    private static Shape Levels(Random random)
    {
        var places = Enumerable.Range(0, 7).Select(i => new Place($"{i}", 0, 0, 100 + 13 * Math.Sin(3 * i), IsFixed: i is 0 or 4)).ToList();
        var lines = "01 12 23 34 45 56 60 13 26 05 16".Split(' ');
        return new(
            places,
            [
                .. lines.Select(l =>
                {
                    var (a, b) = (places[l[0] - '0'], places[l[1] - '0']);
                    var sigma = 0.001 * (1 + (l[0] - '0'));
                    return new Rise(l, a.Id, b.Id, b.Z - a.Z + Noise(random, sigma), sigma);
                }),
            ]
        );
    }

    private static Shape Space(Random random)
    {
        List<Place> places =
        [
            Fix("1", 0, 0, 10),
            Fix("2", 300, 0, -20),
            Fix("3", 0, 280, 35),
            Fix("4", 290, 310, 0),
            Fix("5", 140, 150, 120),
            At("P", 100, 80, 50),
            At("Q", 180, 120, -40),
            At("R", 90, 200, 75),
        ];
        var lengths =
            from a in places
            from b in places
            where string.CompareOrdinal(a.Id, b.Id) < 0 && !(a.IsFixed && b.IsFixed)
            let d = Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2) + Math.Pow(a.Z - b.Z, 2))
            select new DirectDistance(a.Id + b.Id, a.Id, b.Id, d + Noise(random, Sigma), Sigma);
        return new(places, [.. lengths]);
    }

    // A metre-class pacing beside an interferometer: sigmas a million apart.
    private static Shape Weights(Random random)
    {
        var shape = Plan(
            random,
            1,
            [Fix("1", 0, 0), Fix("2", 0, 100), Fix("9", 60, 160), At("3", 110, 5), At("4", 105, 98)],
            "93 94 13 24 14 23 34 31 42"
        );
        return shape with { Readings = [.. shape.Readings.Select((r, i) => r with { Id = $"{i}", SigmaMetres = i % 2 == 0 ? 1e-5 : 10 })] };
    }

    private static Shape Mixed(Random random)
    {
        List<Place> places = [Fix("1", 0, 0, 0), Fix("2", 100, 0, 3), Fix("3", 40, 90, -2), At("P", 60, 40, 12), At("Q", 20, 60, 7)];
        var plan = Plan(random, 1, places, "1P 2P 3P 1Q 3Q PQ").Readings;
        var others = new List<Observation>
        {
            new Height("hP", "P", 12 + Noise(random, Sigma), Sigma),
            new Rise("PQ rise", "P", "Q", -5, Sigma),
        };
        foreach (var (a, b) in new[] { (places[0], places[3]), (places[1], places[4]), (places[3], places[4]) })
        {
            var d = Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2) + Math.Pow(a.Z - b.Z, 2));
            others.Add(new DirectDistance($"{a.Id}{b.Id} direct", a.Id, b.Id, d + Noise(random, Sigma), Sigma));
        }

        return new(places, [.. plan, .. others]);
    }
}
