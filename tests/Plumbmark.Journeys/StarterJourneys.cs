using System.Diagnostics;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>The starter script, called from another folder, through a link in a path with spaces, and in a fresh clone.</summary>
public sealed class StarterJourneys
{
    [Fact]
    public async Task Starter_BuildsOnce_AndItsResultsAreTheProgramsAlone()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "The starter for Windows is plumbmark.cmd.");
        var folder = Directory.CreateTempSubdirectory("plumbmark starter ").FullName;
        try
        {
            var link = Path.Combine(folder, "linked starter");
            File.CreateSymbolicLink(link, Repository.PathTo("plumbmark"));
            var (_, expected, _) = await AppProcess.Run(folder, "schema");
            var first = await Run(link, folder, "schema");
            Assert.Equal((0, expected), (first.Code, first.Results));
            var second = await Run(link, folder, "schema");
            Assert.Equal((0, expected, ""), second);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task FreshClone_StartsWithTheDemoCar_AndASecondStartBuildsNothing()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "The starter for Windows is plumbmark.cmd.");
        var folder = Directory.CreateTempSubdirectory("plumbmark-clone-").FullName;
        try
        {
            var clone = Path.Combine(folder, "fresh clone");
            await CopyTrackedFiles(clone);
            var starter = Path.Combine(clone, "plumbmark");

            var first = await ShedAfterBareStart(starter, folder);
            Assert.Contains("Building Plumbmark", first.Remarks);
            Assert.Contains("Quillorne Dipper (demo)", first.Page);

            var second = await ShedAfterBareStart(starter, folder);
            Assert.DoesNotContain("Building", second.Remarks);
            Assert.Contains("Quillorne Dipper (demo)", second.Page);
            Assert.NotEmpty(Directory.GetFiles(Path.Combine(folder, "data"), "*.db", SearchOption.AllDirectories));

            var demo = await Run(starter, folder, "demo");
            await File.WriteAllTextAsync(Path.Combine(folder, "demo.json"), demo.Results, TestContext.Current.CancellationToken);
            var check = await Run(starter, folder, "check", "demo.json", "--json");
            var (code, sameAnswer, _) = await AppProcess.Run(folder, "check", "demo.json", "--json");
            Assert.Equal((code, sameAnswer), (check.Code, check.Results));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>What a clone of this state would hold: the files that are tracked or would be, without anything built.</summary>
    private static async Task CopyTrackedFiles(string clone)
    {
        var root = Repository.PathTo(".");
        var listing = await Run("git", root, "ls-files", "--cached", "--others", "--exclude-standard", "-z");
        Assert.Equal(0, listing.Code);
        foreach (
            var name in listing.Results.Split('\0', StringSplitOptions.RemoveEmptyEntries).Where(n => File.Exists(Path.Combine(root, n)))
        )
        {
            var target = Path.Combine(clone, name);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(Path.Combine(root, name), target);
        }
    }

    /// <summary>Runs the starter without a word after it, as the README says, and reads the first page at the address that it prints.</summary>
    private static async Task<(string Page, string Remarks)> ShedAfterBareStart(string starter, string folder)
    {
        var start = Command(starter, folder);
        start.Environment["XDG_DATA_HOME"] = Path.Combine(folder, "data");
        using var process = Process.Start(start)!;
        var remarks = process.StandardError.ReadToEndAsync();
        try
        {
            while (await process.StandardOutput.ReadLineAsync() is { } line)
            {
                if (line.Split(' ').FirstOrDefault(w => w.StartsWith("http://127.0.0.1:", StringComparison.Ordinal)) is { } address)
                {
                    using var visitor = new HttpClient();
                    var page = await visitor.GetStringAsync(new Uri(address));
                    process.Kill(entireProcessTree: true);
                    return (page, await remarks);
                }
            }
        }
        finally
        {
            process.Kill(entireProcessTree: true);
        }

        throw new InvalidOperationException($"No address was printed: {await remarks}");
    }

    private static ProcessStartInfo Command(string file, string folder, params string[] arguments) =>
        new(file, arguments)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };

    private static async Task<(int Code, string Results, string Remarks)> Run(string file, string folder, params string[] arguments)
    {
        using var process = Process.Start(Command(file, folder, arguments))!;
        var results = process.StandardOutput.ReadToEndAsync();
        var remarks = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await results, await remarks);
    }
}
