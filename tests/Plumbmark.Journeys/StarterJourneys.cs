using System.Diagnostics;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>The starter script, called from another folder and through a link in a path with spaces.</summary>
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
            var first = await Run(link, folder);
            Assert.Equal((0, expected), (first.Code, first.Results));
            var second = await Run(link, folder);
            Assert.Equal((0, expected, ""), second);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<(int Code, string Results, string Remarks)> Run(string starter, string folder)
    {
        var start = new ProcessStartInfo(starter, "schema")
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var results = process.StandardOutput.ReadToEndAsync();
        var remarks = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await results, await remarks);
    }
}
