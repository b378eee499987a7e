using System.Diagnostics;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web;

namespace Plumbmark.Simulations;

/// <summary>
/// From pressing "Keep reading" to the page with the new answer, on the demo car: the real app on a real port with its journal on disk, every request sent and its
/// redirect followed as a browser does. The aim of the project is 100 ms for 95 in 100 readings as people take them: what the frame gives, to a sixteenth, and one in
/// ten an inch wrong. Beside it, numbers typed at random, which nobody measures: each is doubted, and the doubts are searched the longest.
/// </summary>
internal static partial class ReadingToAnswer
{
    private const int WarmUps = 60;
    private const int Readings = 200;
    private const int OneWrongIn = 10;
    private const double MetresPerInch = 0.0254;
    private const double AimMilliseconds = 100;

    public static void Run(TextWriter output) => RunAsync(output).GetAwaiter().GetResult();

    private static async Task RunAsync(TextWriter output)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-answer-").FullName;
        try
        {
            using var journals = Journals.Open(Path.Combine(folder, "plumbmark.db"));
            var car = journals.Add(DemoCar.File());
            await using var app = WebServer.Build(journals, port: 0, keyFolder: null);
            await app.StartAsync();
            using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
            var page = await client.GetStringAsync($"/cars/{car.Id}/floor?kind=plan");
            var places = FloorInspection.Of(car.File).Points.ToDictionary(p => p.Id, StringComparer.Ordinal);
            var milliseconds = (Taken: new List<double>(), Typed: new List<double>());
            var random = new Random(1955);
            for (var i = 0; i < WarmUps + (2 * Readings); i++)
            {
                var from = $"{(char)('A' + random.Next(8))}.L";
                var to = $"{(char)('A' + random.Next(8))}.R";
                var isTyped = i % 2 == 1;
                var value = isTyped ? $"{40 + random.Next(30)} {1 + random.Next(15)}/16" : Taken(places[from], places[to], random);
                using var form = new FormUrlEncodedContent([
                    .. Hidden(page),
                    new("kind", "plan"),
                    new("from", from),
                    new("to", to),
                    new("value", value),
                ]);
                var start = Stopwatch.GetTimestamp();
                using var response = await client.PostAsync($"/cars/{car.Id}/readings", form);
                page = await response.Content.ReadAsStringAsync();
                var took = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
                response.EnsureSuccessStatusCode();
                if (i >= WarmUps)
                {
                    (isTyped ? milliseconds.Typed : milliseconds.Taken).Add(took);
                }

                // One reading more than the demo has, not two hundred: the next one replaces it.
                var undo = Undo().Match(page);
                using var back = new FormUrlEncodedContent([.. Hidden(page), new("together", undo.Groups["together"].Value)]);
                using var undone = await client.PostAsync($"/cars/{car.Id}/undos", back);
                page = await client.GetStringAsync($"/cars/{car.Id}/floor?kind=plan");
            }

            output.WriteLine($"From a reading to the page with its answer, demo car, {Environment.ProcessorCount} processors");
            Print(output, "as taken, one in ten an inch wrong", milliseconds.Taken);
            output.WriteLine($"  aim: 95 in 100 within {AimMilliseconds:0} ms");
            Print(output, "any number typed", milliseconds.Typed);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>What a tape would show between two points, to a sixteenth; now and then it was started at its 1 in mark.</summary>
    private static string Taken(PointEstimate from, PointEstimate to, Random random)
    {
        var metres = Math.Sqrt(Square(from.XMetres!.Value - to.XMetres!.Value) + Square(from.YMetres!.Value - to.YMetres!.Value));
        var sixteenths = (int)Math.Round(metres / MetresPerInch * 16) + random.Next(-1, 2) + (random.Next(OneWrongIn) == 0 ? 16 : 0);
        return sixteenths % 16 == 0 ? $"{sixteenths / 16}" : $"{sixteenths / 16} {sixteenths % 16}/16";
    }

    private static double Square(double x) => x * x;

    private static void Print(TextWriter output, string name, List<double> milliseconds)
    {
        milliseconds.Sort();
        double At(double share) => milliseconds[(int)Math.Ceiling(share * milliseconds.Count) - 1];
        output.WriteLine(
            $"{name, -36} {milliseconds.Count} readings: half within {At(0.5):0} ms, 95 in 100 within {At(0.95):0} ms, slowest {milliseconds[^1]:0} ms"
        );
    }

    private static IEnumerable<KeyValuePair<string, string>> Hidden(string page) =>
        Field()
            .Matches(page)
            .Take(2)
            .Select(m => KeyValuePair.Create(m.Groups["name"].Value, System.Net.WebUtility.HtmlDecode(m.Groups["value"].Value)));

    [GeneratedRegex("""<input type="hidden" name="(?<name>token|form)" value="(?<value>[^"]*)"[^>]*>""", RegexOptions.ExplicitCapture)]
    private static partial Regex Field();

    [GeneratedRegex("""name="together" value="(?<together>\d+)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Undo();
}
