using System.Text.Json;
using System.Text.RegularExpressions;
using Plumbmark.Testing;
using Plumbmark.Web.Layout;

namespace Plumbmark.Web.Tests.Layout;

/// <summary>Another language is one file: every sentence that a page asks for is in it, and nothing in it is asked for by no page.</summary>
public sealed partial class TextsTests
{
    [Fact]
    public void EveryKeyUsed_IsThere()
    {
        var missing = Used().Except(Texts.Keys).ToList();
        Assert.True(missing.Count == 0, $"Not in Texts/en-GB.json: {string.Join(", ", missing)}");
    }

    [Fact]
    public void EveryKeyThere_IsUsed()
    {
        var sources = string.Join('\n', Sources().Select(File.ReadAllText));
        // Keys put together from parts: "help.{Of}.picture".
        bool IsMade(string key) => Made().Any(pattern => Regex.IsMatch(key, pattern));
        var idle = Texts.Keys.Where(k => !sources.Contains($"\"{k}\"", StringComparison.Ordinal) && !IsMade(k)).ToList();
        Assert.True(idle.Count == 0, $"In Texts/en-GB.json and used nowhere: {string.Join(", ", idle)}");
    }

    [Fact]
    public void EveryFile_HasTheSamePartsAsEnglish()
    {
        var english = Read(Path.Combine(Folder, "en-GB.json"));
        foreach (var file in Directory.GetFiles(Folder, "*.json"))
        {
            foreach (var (key, sentence) in Read(file))
            {
                Assert.True(english.ContainsKey(key), $"{Path.GetFileName(file)} has {key}, which English has not.");
                Assert.Equal(Parts(english[key]), Parts(sentence));
                Assert.False(string.IsNullOrWhiteSpace(sentence), key);
            }
        }
    }

    private static string Folder => Repository.PathTo("src", "Plumbmark.Web", "Texts");

    private static Dictionary<string, string> Read(string file) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(file))!;

    private static IEnumerable<string> Parts(string sentence) => Part().Matches(sentence).Select(m => m.Value).Distinct().Order();

    private static IEnumerable<string> Sources() =>
        Directory
            .EnumerateFiles(Repository.PathTo("src", "Plumbmark.Web"), "*", SearchOption.AllDirectories)
            .Where(f =>
                Path.GetExtension(f) is ".cs" or ".razor" && !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}")
            );

    private static IEnumerable<string> Used() =>
        Sources().SelectMany(f => Call().Matches(File.ReadAllText(f))).Select(m => m.Groups["key"].Value).Distinct();

    private static IEnumerable<string> Made() =>
        Sources()
            .SelectMany(f => MadeCall().Matches(File.ReadAllText(f)))
            .Select(m => $"^{Hole().Replace(Regex.Escape(m.Groups["key"].Value).Replace("\\{", "{"), ".+")}$");

    [GeneratedRegex("""\bSay\("(?<key>[a-z0-9.-]+)["\s]*[,)]""", RegexOptions.ExplicitCapture)]
    private static partial Regex Call();

    [GeneratedRegex("""\bSay\(\$"(?<key>[^"]+)"[,)]""", RegexOptions.ExplicitCapture)]
    private static partial Regex MadeCall();

    [GeneratedRegex("""\{[^}]*\}""")]
    private static partial Regex Hole();

    [GeneratedRegex("""\{\d\}""")]
    private static partial Regex Part();
}
