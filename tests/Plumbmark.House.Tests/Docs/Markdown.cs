using System.Text.RegularExpressions;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Docs;

/// <summary>A document of the repository: its fenced blocks, links and quoted labels.</summary>
internal sealed partial class Markdown
{
    private Markdown(string path, string text) => (Path, Text) = (path, text);

    /// <summary>Such as <c>docs/tutorial.md</c>.</summary>
    public string Path { get; }

    public string Text { get; }

    /// <summary>Everything a reader may open: the documents at the root and all below docs.</summary>
    public static IEnumerable<Markdown> All =>
        Directory
            .EnumerateFiles(Repository.Root, "*.md")
            .Concat(Directory.EnumerateFiles(Repository.PathTo("docs"), "*.md", SearchOption.AllDirectories))
            .Concat(Directory.EnumerateFiles(Repository.PathTo("reference"), "*.md", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal)
            .Select(f => Of(House.Relative(f)));

    public static Markdown Of(string path) => new(path, File.ReadAllText(Repository.PathTo(path.Split('/'))).ReplaceLineEndings("\n"));

    /// <summary>The fenced blocks in order: the words behind the fence, and what stands between.</summary>
    public IReadOnlyList<(string Words, string Body)> Blocks =>
        [.. Fence().Matches(Text).Select(m => (m.Groups["words"].Value.Trim(), m.Groups["body"].Value))];

    /// <summary>Text outside fenced blocks.</summary>
    public string Prose => Fence().Replace(Text, "");

    /// <summary>The document with another body in each block.</summary>
    public string With(IReadOnlyList<string> bodies)
    {
        var next = 0;
        return Fence().Replace(Text, m => $"```{m.Groups["words"].Value}\n{bodies[next++]}```\n");
    }

    [GeneratedRegex(@"^```(?<words>[^\n`]+)\n(?<body>.*?)^```\n", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
