using System.Globalization;
using System.Text;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>Car files that are allowed and should not be: every degenerate case of a network that a person or a script could bring.</summary>
public static class NastyFiles
{
    /// <summary>All of them by name.</summary>
    public static IEnumerable<(string Name, string Json)> All()
    {
        yield return ("empty", File([], []));
        yield return ("one point", File([("A.L", 0, 0, 0)], []));
        yield return ("one height", File([("A.L", 0, 0, 0)], [Height("A.L", "300")]));
        yield return ("collinear", Network(Line(8)));
        yield return ("collinear, no sketch", Network(Line(8), sketch: false));
        yield return ("all points in one place", Network([.. Line(6).Select(p => (p.Id, 100.0, 100.0, 0.0))], least: 1));
        yield return ("pairs in one place", Network([.. Ladder(4).Select(p => (p.Id, p.X, 0.0, p.Z))], least: 1));
        yield return ("no sketch at all", Network(Ladder(4), sketch: false));
        yield return ("mirrored sketch", Network(Ladder(4), shown: p => (p.Id, p.X, -p.Y, p.Z)));
        yield return ("sketch of nothing", Network(Ladder(4), shown: p => (p.Id, 0, 0, 0)));
        yield return ("sketch a million times too large", Network(Ladder(4), shown: p => (p.Id, 1e6 * p.X, 1e6 * p.Y, 0)));
        yield return ("a metre out", Network(Ladder(4), error: i => i == 3 ? 1000 : 0));
        yield return ("every other a metre out", Network(Ladder(4), error: i => i % 2 == 0 ? 1000 : 0));
        yield return ("lengths that cannot close", Network(Ladder(4), error: i => i * 700));
        yield return ("sigma huge", Network(Ladder(4), sigma: "1000000"));
        yield return ("sigma tiny", Network(Ladder(4), sigma: "0.000000001"));
        yield return ("sigma zero", Network(Ladder(4), sigma: "0"));
        yield return (
            "one sigma tiny, one huge",
            Network(
                Ladder(4),
                sigmaOf: i =>
                    i == 0 ? "0.0000001"
                    : i == 1 ? "100000000"
                    : "1"
            )
        );
        yield return ("scale of a micrometre", Network(Ladder(4, 1e-3)));
        yield return ("scale of a kilometre", Network(Ladder(4, 1e3)));
        yield return ("one pair a million times as far", Network([.. Ladder(4), ("Z.L", 1e9, 400, 0), ("Z.R", 1e9, -400, 0)]));
        yield return ("200 points", Network(Ladder(100), reach: 9));
        yield return ("two frames that nothing ties", Network(Ladder(6), only: (a, b) => (a.X < 1500) == (b.X < 1500)));
        yield return ("the same reading 300 times", File(Ladder(2), [.. Enumerable.Repeat(Plan("A.L", "A.R", 800, "1", "1"), 300)]));
        yield return ("heights alone", File(Ladder(4), [.. Ladder(4).Select(p => Height(p.Id, "300"))]));
        yield return (
            "heights a metre apart on one point",
            File(Ladder(2), [Height("A.L", "300"), Height("A.L", "1300"), Height("A.R", "300")])
        );
        yield return ("drops alone", File(Ladder(2), ["\"kind\": \"drop\", \"point\": \"A.L\", \"dx\": \"500 mm\", \"dy\": \"-500 mm\""]));
        yield return (
            "offset from a string of no length",
            File(Ladder(2), [Offset("A.R", "A.L", "B.L"), Plan("A.L", "B.L", 0.01, null, "1")])
        );
        yield return (
            "direct shorter than the height between",
            File(Ladder(2), [Direct("A.L", "B.R", 10), Height("A.L", "0"), Height("B.R", "900")])
        );
        yield return ("limits of nothing", Network(Ladder(4), limits: "0.000001"));
        yield return ("limits huge", Network(Ladder(4), limits: "100000"));
        yield return ("names in Greek", Network([.. Ladder(4).Select(p => ("αβγ" + p.Id, p.X, p.Y, p.Z))]));
        yield return ("names with blanks and marks", Network([.. Ladder(4).Select(p => ("a b&<c>\"'" + p.Id, p.X, p.Y, p.Z))]));
        yield return ("names with a picture", Network([.. Ladder(4).Select(p => ("🔧" + p.Id, p.X, p.Y, p.Z))]));
        yield return ("names like formulas", Network([.. Ladder(4).Select(p => ("=1+1" + p.Id, p.X, p.Y, p.Z))]));
        yield return ("all fixed, and wrong", Network(Ladder(4), isFixed: true, error: _ => 50));
        yield return ("nominal of nothing", Network(Ladder(4), nominal: _ => "[null, null, null]"));
        yield return ("nominal all alike", Network(Ladder(4), nominal: _ => "[0, 0, 0]"));
        yield return ("nominal on a line", Network(Ladder(4), nominal: p => Text($"[{p.X}, 0, 0]")));
        yield return ("nominal a kilometre off", Network(Ladder(4), nominal: p => Text($"[{p.X + 1e6}, {p.Y}, 0]")));
        yield return ("every point dropped without error", Network(Ladder(4), drop: "0"));
        yield return ("drop sigma of a metre", Network(Ladder(4), drop: "1000"));
    }

    private static List<(string Id, double X, double Y, double Z)> Ladder(int pairs, double scale = 1) =>
        [
            .. Enumerable
                .Range(0, pairs)
                .SelectMany(i =>
                    new[] { "L", "R" }.Select(side =>
                        (
                            $"{Letter(i)}.{side}",
                            scale * (2400 - (500.0 * i) + (i * i)),
                            scale * (side == "L" ? 400 : -400),
                            scale * 20.0 * (i % 3)
                        )
                    )
                ),
        ];

    private static string Letter(int i) => i < 26 ? $"{(char)('A' + i)}" : $"{(char)('A' + (i % 26))}{i / 26}";

    private static List<(string Id, double X, double Y, double Z)> Line(int points) =>
        [.. Enumerable.Range(0, points).Select(i => ($"{Letter(i / 2)}.{(i % 2 == 0 ? "L" : "R")}", 300.0 * i, 0.0, 0.0))];

    private static string Network(
        List<(string Id, double X, double Y, double Z)> points,
        bool sketch = true,
        Func<(string Id, double X, double Y, double Z), (string Id, double X, double Y, double Z)>? shown = null,
        Func<int, double>? error = null,
        string? sigma = "1",
        Func<int, string>? sigmaOf = null,
        double least = 0.0005,
        int reach = 100,
        Func<(string Id, double X, double Y, double Z), (string Id, double X, double Y, double Z), bool>? only = null,
        string limits = "3",
        bool isFixed = false,
        Func<(string Id, double X, double Y, double Z), string>? nominal = null,
        string? drop = null
    )
    {
        var readings = new List<string>();
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < Math.Min(points.Count, i + reach); j++)
            {
                if (only?.Invoke(points[i], points[j]) != false)
                {
                    var (a, b) = (points[i], points[j]);
                    var length = Math.Max(least, Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y))));
                    readings.Add(
                        Plan(a.Id, b.Id, length + (error?.Invoke(readings.Count) ?? 0), null, sigmaOf?.Invoke(readings.Count) ?? sigma)
                    );
                }
            }
        }

        readings.AddRange(points.Select(p => Height(p.Id, Text($"{p.Z + 300}"))));
        return File([.. points.Select(p => shown?.Invoke(p) ?? p)], readings, sketch, limits, isFixed, nominal, drop);
    }

    private static string File(
        List<(string Id, double X, double Y, double Z)> points,
        List<string> readings,
        bool sketch = true,
        string limits = "3",
        bool isFixed = false,
        Func<(string Id, double X, double Y, double Z), string>? nominal = null,
        string? drop = null
    )
    {
        var names = points.Select(p => p.Id).ToHashSet();
        string PointOf((string Id, double X, double Y, double Z) p)
        {
            var other = p.Id[..^1] + (p.Id[^1] == 'L' ? 'R' : 'L');
            var fields = new List<string> { $"\"id\": {Quoted(p.Id)}", "\"role\": \"suspension\"" };
            AddIf(names.Contains(other), $"\"mirror\": {Quoted(other)}");
            AddIf(sketch, Text($"\"sketch\": [{p.X}, {p.Y}, {p.Z}]"));
            AddIf(isFixed, "\"fixed\": true");
            AddIf(drop is not null, $"\"dropSigma\": \"{drop} mm\"");
            AddIf(nominal is not null, $"\"nominal\": {nominal?.Invoke(p)}");
            return $"{{ {string.Join(", ", fields)} }}";

            void AddIf(bool holds, string field)
            {
                if (holds)
                {
                    fields.Add(field);
                }
            }
        }

        return $$"""
            { "format": "plumbmark-car", "version": 1, "units": "mm", "car": { "name": "Nasty" }, "tools": [],
              "frame": { "points": [ {{string.Join(",\n", points.Select(PointOf))}} ],
                         "limits": { "mirror": "{{limits}} mm", "height": "{{limits}} mm", "point": "{{limits}} mm", "source": "own" } },
              "readings": [ {{string.Join(",\n", readings.Select((r, i) => $"{{ \"id\": \"r{i}\", {r} }}"))}} ] }
            """;
    }

    private static string Plan(string from, string to, double value, string? note, string? sigma) =>
        Text($"\"kind\": \"plan\", \"from\": {Quoted(from)}, \"to\": {Quoted(to)}, \"value\": \"{Number(value)} mm\"")
        + (sigma is null ? "" : $", \"sigma\": \"{sigma} mm\"")
        + (note is null ? "" : $", \"note\": \"{note}\"");

    private static string Direct(string from, string to, double value) =>
        $"\"kind\": \"direct\", \"from\": {Quoted(from)}, \"to\": {Quoted(to)}, \"value\": \"{Number(value)} mm\"";

    private static string Height(string point, string value) =>
        $"\"kind\": \"height\", \"point\": {Quoted(point)}, \"value\": \"{value} mm\"";

    private static string Offset(string point, string from, string to) =>
        $"\"kind\": \"offset\", \"point\": {Quoted(point)}, \"from\": {Quoted(from)}, \"to\": {Quoted(to)}, \"value\": \"800 mm\"";

    private static string Quoted(string text) => $"\"{System.Text.Json.JsonEncodedText.Encode(text)}\"";

    private static string Number(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
