using System.Diagnostics;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Demo;
using Plumbmark.Store;
using Plumbmark.Web;

namespace Plumbmark.Simulations;

/// <summary>
/// From pressing "Keep reading" to the page with the new answer, on the demo car: the real app on a real port with its journal on disk, every request sent and its
/// redirect followed as a browser does. The aim of the project is 100 ms for 95 in 100.
/// </summary>
internal static partial class ReadingToAnswer
{
    private const int WarmUps = 20;
    private const int Readings = 200;
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
            var milliseconds = new List<double>();
            var random = new Random(1955);
            for (var i = 0; i < WarmUps + Readings; i++)
            {
                // Any length from one side to the other: every answer is worked out anew, and most find the reading doubtful, which takes longest.
                var from = $"{(char)('A' + random.Next(8))}.L";
                var to = $"{(char)('A' + random.Next(8))}.R";
                var value = $"{40 + random.Next(30)} {1 + random.Next(15)}/16";
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
                    milliseconds.Add(took);
                }

                // One reading more than the demo has, not two hundred: the next one replaces it.
                var undo = Undo().Match(page);
                using var back = new FormUrlEncodedContent([.. Hidden(page), new("together", undo.Groups["together"].Value)]);
                using var undone = await client.PostAsync($"/cars/{car.Id}/undos", back);
                page = await client.GetStringAsync($"/cars/{car.Id}/floor?kind=plan");
            }

            Print(output, milliseconds);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Print(TextWriter output, List<double> milliseconds)
    {
        milliseconds.Sort();
        double At(double share) => milliseconds[(int)Math.Ceiling(share * milliseconds.Count) - 1];
        output.WriteLine(
            $"From a reading to the page with its answer, demo car, {milliseconds.Count} readings, {Environment.ProcessorCount} processors"
        );
        output.WriteLine($"  half within      {At(0.5), 8:0.0} ms");
        output.WriteLine(
            $"  95 in 100 within {At(0.95), 8:0.0} ms   (aim {AimMilliseconds:0} ms: {(At(0.95) <= AimMilliseconds ? "kept" : "missed")})"
        );
        output.WriteLine($"  slowest          {milliseconds[^1], 8:0.0} ms");
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
