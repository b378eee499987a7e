using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Inspection.Demo;

/// <summary>
/// An invented car of an invented marque, measured by an invented owner: made by this generator from its seed, so that anyone can see that
/// nothing in it is real. One horn is bent, and one length was read with the tape started at its 1 in mark and not subtracted.
/// </summary>
public static class DemoCar
{
    private const ulong Seed = 1047;
    private const double MillimetresPerInch = 25.4;

    // What docs/method.md, 2, takes as usual: 0.5 mm for a plumb drop and 0.5 mm for each end of a tape, standard deviations.
    private const double DropInches = 0.5 / MillimetresPerInch;
    private const double TapeEndInches = 0.5 / MillimetresPerInch;
    private const double LevelInches = 0.5 / MillimetresPerInch;
    private const int TapeDivisionsPerInch = 16;
    private const int LevelDivisionsPerInch = 16;
    private const int RuleDivisionsPerInch = 32;

    /// <summary>The car as its owner left it: every reading taken, nothing concluded.</summary>
    public static CarFile File()
    {
        var noise = new DemoNoise(Seed);
        var frame = DemoFrame.True(noise);
        var marks = frame.ToDictionary(p => p.Key, p => Dropped(p.Value, noise), StringComparer.Ordinal);
        List<Reading> readings = [.. Lengths(marks, noise), .. Heights(frame, noise), .. Drops(frame, marks, noise)];
        return CarFile.Named("Quillorne Dipper (demo)", LengthUnit.Inch) with
        {
            Car = new CarIdentity(
                "Quillorne Dipper (demo)",
                "QD 1047",
                "Invented: the marque, the car and every number are made by Plumbmark's own generator. Try things out; take it back with Undo."
            ),
            Tools = Tools(),
            Frame = new Frame([.. DemoFrame.Stations.SelectMany(Points)], Limits()),
            Readings = [.. readings.Select((r, i) => r with { Id = $"r{i + 1}" })],
            Road = DemoRoad.OfDemoCar(),
            Parts = DemoParts.Section(),
            Press = DemoPress.Jobs(),
            Book = new BookSection(DemoBook.Pages(), []),
        };
    }

    private static Tool[] Tools() =>
        [
            new("tape", ToolKind.Tape, TapeClass.II, Fraction(1, TapeDivisionsPerInch)),
            new("water level", ToolKind.Level, Division: Fraction(1, LevelDivisionsPerInch)),
            new("steel rule", ToolKind.Rule, Division: Fraction(1, RuleDivisionsPerInch)),
            .. DemoParts.Tools(),
        ];

    private static Limits Limits() =>
        new(
            Fraction(1, 8),
            Fraction(1, 8),
            Fraction(1, 8),
            LimitSource.Practice,
            "what restorers commonly call square; not a factory figure"
        );

    private static IReadOnlyList<FramePoint> Points(DemoFrame.Station s) =>
        FrameSkeleton.Pair(s.Name, s.Label, s.Role, Sketched(s.XInches), Sketched(s.HalfWidthInches));

    private static IEnumerable<Reading> Lengths(Dictionary<string, DemoFrame.Spot> marks, DemoNoise noise)
    {
        foreach (var (from, to) in Walk())
        {
            var (a, b) = (marks[from], marks[to]);
            var length = Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
            var read = length + Math.Sqrt(2) * TapeEndInches * noise.Next();
            // The tape was held at its 1 in mark, and nobody took the inch off.
            var shown = (from, to) is ("B.R", "E.L") ? read + 1 : read;
            yield return new Reading.Plan("", from, to, Inches(shown, TapeDivisionsPerInch)) { Tool = "tape" };
        }
    }

    /// <summary>Across every pair, along both sides, both diagonals of every bay, and some long diagonals.</summary>
    private static IEnumerable<(string From, string To)> Walk()
    {
        var names = DemoFrame.Stations.Select(s => s.Name).ToList();
        for (var i = 0; i < names.Count; i++)
        {
            yield return ($"{names[i]}.L", $"{names[i]}.R");
            if (i + 1 < names.Count)
            {
                foreach (var pair in BothSides(names[i], names[i + 1]).Concat(Diagonals(names[i], names[i + 1])))
                {
                    yield return pair;
                }
            }
        }

        foreach (var (front, rear) in new[] { ("A", "C"), ("B", "E"), ("C", "G"), ("E", "H"), ("B", "H") })
        {
            foreach (var pair in Diagonals(front, rear))
            {
                yield return pair;
            }
        }
    }

    private static IEnumerable<(string, string)> BothSides(string front, string rear) =>
        [($"{front}.L", $"{rear}.L"), ($"{front}.R", $"{rear}.R")];

    private static IEnumerable<(string, string)> Diagonals(string front, string rear) =>
        [($"{front}.L", $"{rear}.R"), ($"{front}.R", $"{rear}.L")];

    private static IEnumerable<Reading> Heights(Dictionary<string, DemoFrame.Spot> frame, DemoNoise noise) =>
        frame.Select(p => new Reading.Height("", p.Key, Inches(p.Value.Z + LevelInches * noise.Next(), LevelDivisionsPerInch))
        {
            Tool = "water level",
        });

    /// <summary>The points that matter most are dropped twice more.</summary>
    private static IEnumerable<Reading> Drops(
        Dictionary<string, DemoFrame.Spot> frame,
        Dictionary<string, DemoFrame.Spot> marks,
        DemoNoise noise
    )
    {
        foreach (var station in DemoFrame.Stations.Where(s => s.Role is PointRole.Suspension or PointRole.Spring))
        {
            foreach (var point in new[] { $"{station.Name}.L", $"{station.Name}.R" })
            {
                for (var again = 0; again < 2; again++)
                {
                    var mark = Dropped(frame[point], noise);
                    var dx = Inches(mark.X - marks[point].X, RuleDivisionsPerInch);
                    var dy = Inches(mark.Y - marks[point].Y, RuleDivisionsPerInch);
                    yield return new Reading.Drop("", point, null, dx, dy) { Tool = "steel rule" };
                }
            }
        }
    }

    private static DemoFrame.Spot Dropped(DemoFrame.Spot point, DemoNoise noise) =>
        point with
        {
            X = point.X + DropInches * noise.Next(),
            Y = point.Y + DropInches * noise.Next(),
        };

    private static Length Sketched(double inches) => Length.FromNumber((decimal)inches, LengthUnit.Inch);

    private static Length Fraction(int above, int below) => Length.FromFraction(0, above, below, LengthUnit.Inch);

    /// <summary>An amount read to the nearest division.</summary>
    private static Length Inches(double inches, int divisionsPerInch) =>
        Length.FromFraction(
            Rational.Of((long)Math.Round(inches * divisionsPerInch, MidpointRounding.AwayFromZero), divisionsPerInch),
            LengthUnit.Inch
        );
}
