using System.Diagnostics;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>The built program, serving a journal in a folder of its own.</summary>
internal sealed class Served : IDisposable
{
    private Served(Process process, string address) => (Process, Address) = (process, address);

    public Process Process { get; }

    /// <summary>Where it is open.</summary>
    public string Address { get; }

    /// <summary>Starts it and waits for the address that it prints.</summary>
    public static async Task<Served> Start(string binary, Folder folder)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["XDG_DATA_HOME"] = folder.Path;
        foreach (var argument in (string[])["exec", binary, "serve", "--data", folder.Journal, "--port", "0"])
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start)!;
        process.ErrorDataReceived += (_, line) => Console.Error.WriteLine(line.Data);
        process.BeginErrorReadLine();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal)) is { } address)
            {
                return new Served(process, address);
            }
        }

        throw new InvalidOperationException("The program did not start.");
    }

    public void Dispose()
    {
        if (!Process.HasExited)
        {
            Process.Kill();
            Process.WaitForExit();
        }

        Process.Dispose();
    }
}
