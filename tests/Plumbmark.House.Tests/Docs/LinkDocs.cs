using System.Text.RegularExpressions;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Docs;

/// <summary>What a document points at is there: links, paths in code letters, labels of the app in bold, test classes.</summary>
public partial class LinkDocs
{
    public static TheoryData<string> Documents => [.. Markdown.All.Select(d => d.Path)];

    // Documents that tell a reader what to press; whatever they set in bold stands in the app just so.
    public static TheoryData<string> WithLabels =>
        [
            .. Markdown
                .All.Where(d => d.Path == "docs/tutorial.md" || d.Path.StartsWith("docs/rooms/", StringComparison.Ordinal))
                .Select(d => d.Path),
        ];

    public static TheoryData<string> Sources =>
        [.. Markdown.All.Where(d => d.Path.StartsWith("docs/sources", StringComparison.Ordinal)).Select(d => d.Path)];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Links_LeadSomewhere(string path)
    {
        var document = Markdown.Of(path);
        var folder = Path.GetDirectoryName(Repository.PathTo(path.Split('/')))!;
        var missing = Links()
            .Matches(document.Prose)
            .Select(m => m.Groups[1].Value)
            .Where(l => !l.Contains("://", StringComparison.Ordinal) && !l.StartsWith('#'))
            .Select(l => l.Split('#')[0])
            .Where(l => !Path.Exists(Path.Combine(folder, l)));
        House.None(missing);
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Paths_AreThere(string path)
    {
        var missing = Paths()
            .Matches(Markdown.Of(path).Prose)
            .Select(m => m.Groups[1].Value.TrimEnd('/'))
            .Where(p => !Path.Exists(Repository.PathTo(p.Split('/'))));
        House.None(missing);
    }

    [Theory]
    [MemberData(nameof(WithLabels))]
    public void Labels_StandInTheApp(string path)
    {
        var app = string.Join(
            '\n',
            new[] { "*.razor", "*.cs", "*.js", "en-GB.json" }.SelectMany(p => House.Sources(p, "src")).Select(File.ReadAllText)
        );
        var missing = Labels()
            .Matches(Markdown.Of(path).Prose)
            .Select(m => m.Groups[1].Value)
            .Where(l => !app.Contains(l, StringComparison.Ordinal));
        House.None(missing.Distinct(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Sources))]
    public void TestsNamedAsProof_Exist(string path)
    {
        var names = TestNames();
        var missing = Tests().Matches(Markdown.Of(path).Text).Select(m => m.Groups[1].Value).Where(n => !names.Contains(n));
        House.None(missing.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void EveryPublishedTest_IsListedWithItsSource()
    {
        var listed = string.Join(
            '\n',
            Markdown.All.Where(d => d.Path.StartsWith("docs/sources", StringComparison.Ordinal)).Select(d => d.Text)
        );
        var missing = TestNames()
            .Where(n => n.EndsWith("Published", StringComparison.Ordinal) && !listed.Contains(n, StringComparison.Ordinal));
        House.None(missing);
    }

    private static HashSet<string> TestNames() =>
        House
            .Sources("*.cs", "tests")
            .SelectMany(f => ClassNames().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .ToHashSet(StringComparer.Ordinal);

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Links();

    [GeneratedRegex(@"`((?:src|tests|docs|bench|reference|schemas)/[\w./-]+)`")]
    private static partial Regex Paths();

    [GeneratedRegex(@"\*\*([^*\n]+)\*\*")]
    private static partial Regex Labels();

    [GeneratedRegex(@"\b([A-Z]\w+(?:Published|PublishedTests|Laws|Tests|Faults|Snapshots|Journeys))\b")]
    private static partial Regex Tests();

    [GeneratedRegex(@"\b(?:class|record) (\w+)")]
    private static partial Regex ClassNames();
}
