using System.Buffers;
using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.House.Tests.Language;

/// <summary>
/// The built program asked for the language <c>pseudo</c>, whose every vowel has an accent: a word with a plain vowel did not come from the file of sentences.
/// </summary>
public sealed partial class SpokenTests
{
    // The marked language has none of them.
    private static readonly SearchValues<char> s_plainVowels = SearchValues.Create("aeiouAEIOU");

    /// <summary>Ids of checks, such as <c>side-shift:A</c>, and words that a reading of the demo or a file's format has.</summary>
    private static readonly string[] s_formatWords =
    [
        "side",
        "shift",
        "stagger",
        "height",
        "difference",
        "width",
        "damage",
        "twist",
        "factory",
        "practice",
    ];

    [Theory]
    [InlineData("check")]
    [InlineData("plan")]
    [InlineData("adjust")]
    [InlineData("bench")]
    [InlineData("press")]
    [InlineData("road")]
    public async Task Verb_SaysNothingPastTheFile(string verb)
    {
        var demo = CarFileWriter.Write(DemoCar.File());
        var typed = TypedWords(JsonDocument.Parse(demo).RootElement).Concat(s_formatWords).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var said = await Say(verb, demo);
        Assert.Contains('⟦', said);
        House.None(
            from line in said.Split('\n')
            from word in Word().Matches(line).Select(m => m.Value)
            where word.Length > 2 && word.AsSpan().ContainsAny(s_plainVowels) && !typed.Contains(word)
            select $"“{word}” in: {line.Trim()}"
        );
    }

    private static async Task<string> Say(string verb, byte[] car)
    {
        var start = new ProcessStartInfo("dotnet", ["exec", Path.Combine(AppContext.BaseDirectory, "plumbmark.dll"), verb, "-"])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.Environment["PLUMBMARK_LANGUAGE"] = "pseudo";
        using var process = Process.Start(start)!;
        await process.StandardInput.BaseStream.WriteAsync(car, TestContext.Current.CancellationToken);
        process.StandardInput.Close();
        var text = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return text;
    }

    private static IEnumerable<string> TypedWords(JsonElement of) =>
        of.ValueKind switch
        {
            JsonValueKind.Object => of.EnumerateObject().SelectMany(p => TypedWords(p.Value)),
            JsonValueKind.Array => of.EnumerateArray().SelectMany(TypedWords),
            JsonValueKind.String => Word().Matches(of.GetString()!).Select(m => m.Value),
            _ => [],
        };

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Word();
}
