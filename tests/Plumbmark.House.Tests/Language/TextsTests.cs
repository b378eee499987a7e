using System.Text.Json;
using System.Text.RegularExpressions;
using Plumbmark.Inspection.Language;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Language;

/// <summary>Another language is one file: every sentence that is asked for is in it, with as many parts as are given, and nothing in it is asked for nowhere.</summary>
public sealed partial class TextsTests
{
    private static readonly string s_folder = Repository.PathTo("src", "Plumbmark.Inspection", "Language");
    private static readonly Dictionary<string, string> s_english = Read(Path.Combine(s_folder, "en-GB.json"));
    private static readonly IReadOnlyList<string> s_sources =
    [
        .. new[] { "*.cs", "*.razor" }.SelectMany(p => House.Sources(p, "src")).Select(File.ReadAllText),
    ];

    [Fact]
    public void File_SaysEveryKeyOnce()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(s_folder, "en-GB.json")));
        var keys = file.RootElement.EnumerateObject().Select(p => p.Name).ToList();
        House.None(keys.GroupBy(k => k).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.Equal(keys.Order(), Texts.Keys.Order());
    }

    [Fact]
    public void EveryKeyUsed_IsThere() => House.None(Calls().Select(c => c.Key).Distinct().Where(k => !s_english.ContainsKey(k)));

    [Fact]
    public void EveryKeyThere_IsUsed()
    {
        var quoted = s_sources.SelectMany(s => Quoted().Matches(s)).Select(m => m.Groups["key"].Value).ToHashSet(StringComparer.Ordinal);
        quoted.UnionWith(Calls().Select(c => c.Key));
        // Keys put together from parts: "help.{Of}.picture".
        var made = s_sources
            .SelectMany(s => Made().Matches(s))
            .Select(m => $"^{Hole().Replace(Regex.Escape(m.Groups["key"].Value).Replace("\\{", "{"), ".+")}$")
            .Distinct()
            .ToList();
        House.None(s_english.Keys.Where(k => !quoted.Contains(k) && !made.Any(p => Regex.IsMatch(k, p))));
    }

    /// <summary>Parts written out at the call are counted; those handed on as a list are not.</summary>
    [Fact]
    public void EveryCall_GivesTheParts() =>
        House.None(
            from call in Calls()
            where call.Parts is not null && s_english.TryGetValue(call.Key, out _)
            let asked = Parts(s_english[call.Key]).Select(p => int.Parse(p.Trim('{', '}')) + 1).DefaultIfEmpty(0).Max()
            where asked != call.Parts
            select $"{call.Key} has {asked} parts and is given {call.Parts}: {s_english[call.Key]}"
        );

    [Fact]
    public void EveryFile_HasTheSamePartsAsEnglish()
    {
        foreach (var file in Directory.GetFiles(s_folder, "*.json"))
        {
            foreach (var (key, sentence) in Read(file))
            {
                Assert.True(s_english.ContainsKey(key), $"{Path.GetFileName(file)} has {key}, which English has not.");
                Assert.Equal(Parts(s_english[key]), Parts(sentence));
                Assert.False(string.IsNullOrWhiteSpace(sentence), key);
            }
        }
    }

    private sealed record Call(string Key, int? Parts);

    /// <summary>Every <c>Say</c> with its key, and both sentences of every <c>Count</c>; a count is the part {0} of it.</summary>
    private static IEnumerable<Call> Calls()
    {
        foreach (var source in s_sources)
        {
            foreach (Match say in Say().Matches(source))
            {
                yield return new Call(say.Groups["key"].Value, PartsGiven(source, say.Index + say.Length));
            }

            foreach (Match count in Count().Matches(source))
            {
                yield return new Call($"{count.Groups["key"].Value}.one", null);
                yield return new Call($"{count.Groups["key"].Value}.many", null);
            }
        }
    }

    /// <summary>How many parts stand between the key and the bracket that closes the call; null for a list handed on.</summary>
    private static int? PartsGiven(string source, int at)
    {
        var (depth, parts, some, inText) = (0, 0, false, false);
        for (; at < source.Length; at++)
        {
            var c = source[at];
            if (c == '"' && source[at - 1] != '\\')
            {
                inText = !inText;
                some = true;
            }
            else if (inText || char.IsWhiteSpace(c))
            {
                continue;
            }
            else if (depth == 0 && c is ')')
            {
                return some ? parts : 0;
            }
            else if (depth == 0 && c == ',')
            {
                parts++;
                some = true;
            }
            else
            {
                depth +=
                    c is '(' or '[' or '{' ? 1
                    : c is ')' or ']' or '}' ? -1
                    : 0;
                if (depth == 1 && c == '[' && parts == 1 && source[at - 1] == ' ')
                {
                    return null;
                }
            }
        }

        return null;
    }

    private static Dictionary<string, string> Read(string file) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(file))!;

    private static IEnumerable<string> Parts(string sentence) => Part().Matches(sentence).Select(m => m.Value).Distinct().Order();

    [GeneratedRegex("""\bSay\(\s*"(?<key>[a-z0-9.-]+)"(?=\s*[,)])""", RegexOptions.ExplicitCapture)]
    private static partial Regex Say();

    [GeneratedRegex("""\bTexts\.Count\(\s*"(?<key>[a-z0-9.-]+)"(?=\s*,)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Count();

    [GeneratedRegex("\"(?<key>[a-z0-9.-]+)\"", RegexOptions.ExplicitCapture)]
    private static partial Regex Quoted();

    [GeneratedRegex("""\bSay\(\$"(?<key>[^"]+)"[,)]""", RegexOptions.ExplicitCapture)]
    private static partial Regex Made();

    [GeneratedRegex("""\{[^}]*\}""")]
    private static partial Regex Hole();

    [GeneratedRegex("""\{\d\}""")]
    private static partial Regex Part();
}
