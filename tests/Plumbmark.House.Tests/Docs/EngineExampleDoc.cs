using System.Diagnostics;
using System.Text;
using Plumbmark.Testing;

namespace Plumbmark.House.Tests.Docs;

/// <summary>docs/engine.md shows the program of docs/examples/EngineAlone, which stands on the Engine and nothing else, and what it prints.</summary>
public class EngineExampleDoc
{
    [Fact]
    public async Task Example_IsTheOneThatRuns()
    {
        var document = Markdown.Of("docs/engine.md");
        var program = await File.ReadAllTextAsync(
            Repository.PathTo("docs", "examples", "EngineAlone", "Program.cs"),
            TestContext.Current.CancellationToken
        );
        var printed = await Run();
        var bodies = document.Blocks.Select(b =>
            b.Words switch
            {
                "csharp" => program.ReplaceLineEndings("\n"),
                "text" => printed,
                _ => b.Body,
            }
        );
        House.MatchesFile(document.With([.. bodies]), "docs", "engine.md");
    }

    [Fact]
    public void Example_UsesNothingButTheEngine()
    {
        var used = System.Reflection.Assembly.Load("EngineAlone").GetReferencedAssemblies().Select(a => a.Name!);
        Assert.Equal(["Plumbmark.Engine"], used.Where(n => !n.StartsWith("System.", StringComparison.Ordinal)));
    }

    private static async Task<string> Run()
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "EngineAlone.dll"));
        using var process = Process.Start(start)!;
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        return text.ReplaceLineEndings("\n");
    }
}
