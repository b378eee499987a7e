using System.Diagnostics;

namespace Plumbmark.Load;

/// <summary>The program itself with a journal of its own, as a person starts it.</summary>
internal sealed class LoadedApp : IAsyncDisposable
{
    private readonly Process _process;
    private readonly string _folder;

    private LoadedApp(Process process, string folder, Uri address)
    {
        _process = process;
        _folder = folder;
        Address = address;
    }

    public Uri Address { get; }

    /// <summary>What the system counts as the program's memory, in megabytes.</summary>
    public double MemoryMegabytes
    {
        get
        {
            _process.Refresh();
            return _process.WorkingSet64 / 1048576.0;
        }
    }

    /// <summary>How busy the machine was beside this, where it tells: figures taken beside other work are the other work's too.</summary>
    public static string MachineWords =>
        File.Exists("/proc/loadavg")
            ? $"Processes wanting to run on this machine's {Environment.ProcessorCount} processors, on average of the last minute: {File.ReadAllText("/proc/loadavg").Split(' ')[0]}."
            : "";

    public static async Task<LoadedApp> Start(string binary)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-load-").FullName;
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment["XDG_DATA_HOME"] = folder;
        start.Environment["APPDATA"] = folder;
        foreach (var argument in (string[])["exec", binary, "serve", "--data", Path.Combine(folder, "plumbmark.db"), "--port", "0"])
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start)!;
        var line = await process.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The app did not start.");
        return new LoadedApp(process, folder, new Uri(line.Split(' ').First(w => w.StartsWith("http://", StringComparison.Ordinal))));
    }

    public async ValueTask DisposeAsync()
    {
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
