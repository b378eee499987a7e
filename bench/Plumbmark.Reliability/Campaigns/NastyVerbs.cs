using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>Every verb on every degenerate file, as a person would run it: an answer or an explanation, never a number that is none.</summary>
public static partial class NastyVerbs
{
    private static readonly string[] s_verbs = ["check", "adjust", "plan", "road", "bench", "press"];
    private static readonly int[] s_endings = [0, 2, 10, 20];

    /// <summary>What came of one verb.</summary>
    public sealed record Outcome(string Verb, int Runs, int Answered, int Refused, double SlowestSeconds, IReadOnlyList<string> Findings);

    /// <summary>Runs every verb on every file, as text and as JSON.</summary>
    /// <param name="binary">plumbmark.dll, built.</param>
    public static IEnumerable<Outcome> Run(string binary)
    {
        using var folder = new Folder();
        var files = NastyFiles.All().Concat(OfOtherRooms()).ToList();
        foreach (var verb in s_verbs)
        {
            var (answered, refused, slowest) = (0, 0, 0.0);
            var findings = new List<string>();
            foreach (var (name, json) in files)
            {
                var path = Path.Combine(folder.Path, "car.json");
                File.WriteAllText(path, json);
                foreach (var asJson in (bool[])[true, false])
                {
                    var (code, results, remarks, seconds) = Run(binary, asJson ? [verb, path, "--json"] : [verb, path]);
                    slowest = Math.Max(slowest, seconds);
                    answered += code == 2 ? 0 : 1;
                    refused += code == 2 ? 1 : 0;
                    if (Wrong(code, results, remarks, asJson) is { } wrong)
                    {
                        findings.Add($"{verb}{(asJson ? " --json" : "")} on \"{name}\": {wrong}");
                        Console.Error.WriteLine(findings[^1]); // at once: all of it takes long
                    }
                }
            }

            yield return new Outcome(verb, 2 * files.Count, answered, refused, slowest, findings);
        }
    }

    private static IEnumerable<(string Name, string Json)> OfOtherRooms()
    {
        var demo = System.Text.Encoding.UTF8.GetString(CarFileWriter.Write(DemoCar.File()));
        yield return ("demo", demo);
        // Every length of the demo replaced in turn by something extreme, in all rooms at once.
        foreach (var value in (string[])["0 mm", "0.000001 mm", "1000000 mm"])
        {
            yield return ($"demo with every length {value}", AnyLength().Replace(demo, $"\"{value}\""));
        }
    }

    private static string? Wrong(int code, string results, string remarks, bool asJson)
    {
        if (!s_endings.Contains(code))
        {
            return $"ended with {code}: {remarks.Split('\n').FirstOrDefault(l => l.Contains("Exception", StringComparison.Ordinal)) ?? remarks[..Math.Min(remarks.Length, 200)]}"
                + remarks.Split('\n').FirstOrDefault(l => l.Contains(" at Plumbmark", StringComparison.Ordinal));
        }

        if (NoNumber().Match(results + remarks) is { Success: true } none)
        {
            return $"says {none.Value}";
        }

        if (asJson)
        {
            try
            {
                JsonDocument.Parse(results).Dispose();
            }
            catch (JsonException e)
            {
                return $"prints what is not JSON: {e.Message}";
            }
        }

        return results.Length + remarks.Length == 0 ? "says nothing" : null;
    }

    private static (int Code, string Results, string Remarks, double Seconds) Run(string binary, string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in (string[])["exec", binary, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        var began = Stopwatch.GetTimestamp();
        using var process = Process.Start(start)!;
        var results = process.StandardOutput.ReadToEndAsync();
        var remarks = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            process.Kill();
            return (-1, "", "It was still busy after two minutes.", 120);
        }

        return (process.ExitCode, results.Result, remarks.Result, Stopwatch.GetElapsedTime(began).TotalSeconds);
    }

    [GeneratedRegex("(?<![\\p{L}])(NaN|-?Infinity|-?∞)(?![\\p{L}])")]
    private static partial Regex NoNumber();

    [GeneratedRegex("\"[0-9]+( [0-9]+/[0-9]+)? (in|mm)\"")]
    private static partial Regex AnyLength();
}
