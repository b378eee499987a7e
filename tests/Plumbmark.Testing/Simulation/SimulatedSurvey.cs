using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Testing.Simulation;

/// <summary>Measures a true frame as a person with plumb bob, tape and water level does, and writes it down as a car file.</summary>
public static class SimulatedSurvey
{
    public static CarFile Measure(TrueFrame frame, SurveyStyle style, Random random)
    {
        var readings = new List<Reading>();
        var marks = Marks(frame, style, random, readings);
        var stations = frame.Design.Stations;
        for (var i = 0; i < stations.Count; i++)
        {
            for (var j = i; j < Math.Min(stations.Count, i + style.Reach + 1); j++)
            {
                foreach (var (from, to) in Lengths(stations[i].Name, stations[j].Name))
                {
                    readings.Add(Tape($"r{readings.Count + 1}", from, to, marks, style, random));
                }
            }
        }

        if (style.Heights)
        {
            foreach (var (id, at) in frame.Points)
            {
                var height = Round(at.Z + (style.LevelSigma * Noise.Normal(random)), style.Division);
                readings.Add(new Reading.Height($"r{readings.Count + 1}", id, Mm(height)) { Tool = "level" });
            }
        }

        return new CarFile(
            LengthUnit.Millimetre,
            new CarIdentity("Invented"),
            [
                new Tool("tape", ToolKind.Tape, TapeClass.II, Mm(style.Division)),
                // What its owner knows of one reading: the level's own error and that it is read to a division.
                new Tool(
                    "level",
                    ToolKind.Level,
                    null,
                    Mm(style.Division),
                    Mm(double.Hypot(style.LevelSigma, style.Division / Math.Sqrt(12)))
                ),
            ],
            new Frame(Points(frame, style), style.Limit is { } t ? new Limits(Mm(t), Mm(t), Mm(t), LimitSource.Own) : null),
            readings
        );
    }

    private static IEnumerable<(string, string)> Lengths(string a, string b) =>
        a == b ? [($"{a}.L", $"{a}.R")] : [($"{a}.L", $"{b}.L"), ($"{a}.R", $"{b}.R"), ($"{a}.L", $"{b}.R"), ($"{a}.R", $"{b}.L")];

    private static Dictionary<string, (double X, double Y)> Marks(TrueFrame frame, SurveyStyle style, Random random, List<Reading> readings)
    {
        var marks = new Dictionary<string, (double X, double Y)>(StringComparer.Ordinal);
        foreach (var (id, at) in frame.Points)
        {
            var (x, y) = (style.DropSigma * Noise.Normal(random), style.DropSigma * Noise.Normal(random));
            marks[id] = (at.X + x, at.Y + y);
            for (var n = 1; n < style.Drops; n++)
            {
                var dx = Mm((style.DropSigma * Noise.Normal(random)) - x);
                var dy = Mm((style.DropSigma * Noise.Normal(random)) - y);
                readings.Add(new Reading.Drop($"r{readings.Count + 1}", id, null, dx, dy));
            }
        }

        return marks;
    }

    private static Reading.Plan Tape(
        string id,
        string from,
        string to,
        Dictionary<string, (double X, double Y)> marks,
        SurveyStyle style,
        Random random
    )
    {
        var length = double.Hypot(marks[from].X - marks[to].X, marks[from].Y - marks[to].Y) * (1 + style.Scale);
        var read = length + (style.EndSigma * (Noise.Normal(random) + Noise.Normal(random)));
        return new Reading.Plan(id, from, to, Mm(Round(read, style.Division))) { Tool = "tape" };
    }

    private static IReadOnlyList<FramePoint> Points(TrueFrame frame, SurveyStyle style) =>
        [
            .. frame.Design.Stations.SelectMany(s =>
                new[] { true, false }.Select(isLeft =>
                {
                    var y = isLeft ? s.HalfWidth : -s.HalfWidth;
                    return new FramePoint(
                        $"{s.Name}.{(isLeft ? "L" : "R")}",
                        $"{s.Name}.{(isLeft ? "R" : "L")}",
                        s.Role,
                        new Place(Mm(Round(s.X, 25)), Mm(Round(y, 25)), Mm(0)),
                        style.Book ? new Place(Mm(s.X), Mm(y), Mm(s.Z)) : null
                    );
                })
            ),
        ];

    private static double Round(double value, double step) => Math.Round(value / step) * step;

    private static Length Mm(double value) => Length.FromMillimetres(Math.Round((decimal)value, 4));
}
