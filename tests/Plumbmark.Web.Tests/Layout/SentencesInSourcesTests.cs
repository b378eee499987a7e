using System.Text.RegularExpressions;
using Plumbmark.Testing;

namespace Plumbmark.Web.Tests.Layout;

/// <summary>What no page of the demo shows is found here: no sentence stands in a source of the pages, but for these few that no visitor reads.</summary>
public sealed partial class SentencesInSourcesTests
{
    /// <summary>What looks like a sentence and is none: what the log says, names that are sent to and fro, and what Inspection's own words begin with.</summary>
    private static readonly string[] s_none =
    [
        "A page failed: {Method} {Path}",
        "There is no help picture {Of}.",
        "The answer for this car could not be worked out.",
        "What is said of {What} could not be worked out ({Asked}).",
        "the wheels",
        "the frame",
        "what to measure",
        ", car.Readings)}",
        "level-stand is-last",
        "ft",
        "(any-pointer: coarse)",
        "two halves",
        "one piece",
        " or bore",
        "the length from {id} to ",
        "not a page",
        "not a page of ours",
        "plumbmark serve --lan",
        "plumbmark serve --data FILE",
        "Plumbmark",
    ];

    [Fact]
    public void NoSource_HasASentence()
    {
        var found = Sources().SelectMany(f => SentencesIn(f).Select(s => $"{Path.GetFileName(f)}: {s}")).ToList();
        Assert.True(found.Count == 0, $"These belong in Language/en-GB.json:\n{string.Join("\n", found)}");
    }

    [Theory]
    [InlineData("a.cs", """faults.Add("at", "Choose what it is.");""", "Choose what it is.")]
    [InlineData("a.cs", """var words = $"out by {size} or more";""", "out by {size} or more")]
    [InlineData("a.razor", "<h2 id=\"next\">Next best</h2>", "Next best")]
    [InlineData("a.razor", "<TextField Name=\"note\" Label=\"Note\" />", "Note")]
    [InlineData("a.js", "words.textContent = `${n} readings wait here`;", "${n} readings wait here")]
    public void ASentenceInASource_IsFound(string name, string line, string sentence) =>
        Assert.Equal(sentence, Assert.Single(SentencesIn(name, line)));

    private static IEnumerable<string> Sources() =>
        Directory
            .EnumerateFiles(Repository.PathTo("src", "Plumbmark.Web"), "*", SearchOption.AllDirectories)
            .Where(f =>
                Path.GetExtension(f) is ".cs" or ".razor" or ".js"
                && !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}three{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
            );

    private static IEnumerable<string> SentencesIn(string file) =>
        RazorRemark().Replace(File.ReadAllText(file), "").Split('\n').SelectMany(l => SentencesIn(file, l)).Except(s_none);

    private static IEnumerable<string> SentencesIn(string file, string line)
    {
        line = Remark().Replace(line, "");
        var isPage = Path.GetExtension(file) == ".razor";
        var literals =
            Path.GetExtension(file) == ".js" ? Literal().Matches(line).Concat(Template().Matches(line)) : Literal().Matches(line);
        var said = literals.Select(m => m.Groups["text"].Value).Where(t => Sentence().IsMatch(t) && !Code().IsMatch(t));
        return isPage
            ?
            [
                .. Shown().Matches(line).Concat(Attribute().Matches(line)).Select(m => m.Groups["text"].Value),
                .. said.Where(t => !IsClass(line, t)),
            ]
            : said;
    }

    private static bool IsClass(string line, string text) =>
        Class().Matches(line).Any(m => m.Value.Contains(text, StringComparison.Ordinal));

    [GeneratedRegex("""@\*.*?\*@""", RegexOptions.Singleline)]
    private static partial Regex RazorRemark();

    [GeneratedRegex("""^\s*(//|\*|/\*).*$|\s// .*$""")]
    private static partial Regex Remark();

    [GeneratedRegex(
        """"
            "(?<text>([^"\\]|\\.)*)"
            """",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Literal();

    [GeneratedRegex("`(?<text>[^`]*)`", RegexOptions.ExplicitCapture)]
    private static partial Regex Template();

    /// <summary>Two words side by side, or a word beside a part.</summary>
    [GeneratedRegex("""[a-z,;:.'”}] [a-z“]{2}|[a-z]{2} \{""")]
    private static partial Regex Sentence();

    /// <summary>Code between two literals, drawings, addresses, rules of styles and of the page's safety.</summary>
    [GeneratedRegex(
        """[<>/=\[\]|#]| \? |\?\?|\w\(|^ : |^, [\w. ,]+\)$|^[^a-z]*\)|^\.|'self'|^(light dark|input, select, textarea|700 .*)$|^[\w {}.]*\}: \{"""
    )]
    private static partial Regex Code();

    [GeneratedRegex("""(?<=[\w"/-])>(?<text>[^<>@{}]*[A-Za-z]{2}[^<>@{}]*)(?=<|@|$)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Shown();

    [GeneratedRegex(
        """"
            \b(Label|Hint|Title|None|Placeholder|aria-label|placeholder|title|alt)="(?<text>[^@"]*[A-Za-z]{2}[^"]*)"
            """",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Attribute();

    [GeneratedRegex(
        """"
            \b[Cc]lass="[^>]*
            """"
    )]
    private static partial Regex Class();
}
