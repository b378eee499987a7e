using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace Plumbmark.House.Tests.Docs;

/// <summary>docs/command-line.md is what the program itself says to <c>--help</c>, verb by verb.</summary>
public partial class CommandLineDoc
{
    private const string Head = """
        # The command line

        Written by the program itself (`--help` of every verb); a test fails when it is stale. Results go to standard output, remarks to standard error. A file
        that is refused is told with every fault and its place.

        | exit code | meaning |
        |---|---|
        | 0 | true; or, for a verb without a verdict, done |
        | 10 | out; for `bench` replace or straighten, for `press` refused or ended, for `book check` contradictions |
        | 20 | can't tell yet |
        | 2 | the input was refused |
        | 64 | the command line was not understood |
        | 70 | a fault of the program itself |


        """;

    [Fact]
    public async Task CommandLine_IsAsTheProgramSays()
    {
        var text = new StringBuilder(Head.ReplaceLineEndings("\n"));
        var root = await Help();
        Section(text, "plumbmark", root);
        foreach (var verb in await Task.WhenAll(Verbs(root).Select(async v => (Verb: v, Help: await Help(v)))))
        {
            Section(text, $"plumbmark {verb.Verb}", verb.Help);
            foreach (var under in Verbs(verb.Help))
            {
                Section(text, $"plumbmark {verb.Verb} {under}", await Help(verb.Verb, under));
            }
        }

        House.MatchesFile(text.ToString().TrimEnd('\n') + "\n", "docs", "command-line.md");
    }

    /// <summary>The verbs that a help text lists.</summary>
    internal static IEnumerable<string> Verbs(string help)
    {
        var at = help.IndexOf("Commands:\n", StringComparison.Ordinal);
        return at < 0 ? [] : Verb().Matches(help[at..]).Select(m => m.Groups["verb"].Value);
    }

    /// <summary>What the built program prints for help on these verbs.</summary>
    internal static async Task<string> Help(params string[] verbs)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        foreach (var argument in (string[])["exec", Path.Combine(AppContext.BaseDirectory, "plumbmark.dll"), .. verbs, "--help"])
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        return string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd())).Trim('\n');
    }

    private static void Section(StringBuilder text, string title, string help) => text.Append($"## {title}\n\n```text\n{help}\n```\n\n");

    [GeneratedRegex(@"^  (?<verb>\w[\w-]*)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Verb();
}
