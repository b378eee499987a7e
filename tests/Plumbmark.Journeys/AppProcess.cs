using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Text;
using Microsoft.Playwright;

namespace Plumbmark.Journeys;

/// <summary>The built program itself, started as a person starts it, with a journal of its own in a temporary folder.</summary>
public sealed class AppProcess : IAsyncDisposable
{
    private readonly Process _process;
    private readonly bool _keepFolder;
    private readonly List<IBrowserContext> _visitors = [];

    private AppProcess(Process process, string folder, bool keepFolder, string address)
    {
        _process = process;
        _keepFolder = keepFolder;
        Folder = folder;
        Address = address;
    }

    /// <summary>The temporary folder; the working folder of every run.</summary>
    public string Folder { get; }

    /// <summary>Such as <c>http://127.0.0.1:40123</c>, without a stroke at the end.</summary>
    public string Address { get; }

    private static string Binary => Path.Combine(AppContext.BaseDirectory, "plumbmark.dll");

    /// <summary>Starts the app and waits for the address that it prints.</summary>
    /// <param name="folder">A folder with a journal from before; a new one when null.</param>
    /// <param name="keepFolder">Whether the folder outlives the app, to start another one on it.</param>
    /// <param name="port">The port; 0 for any free one.</param>
    /// <param name="lan">An address at which phones are let in; null for none.</param>
    /// <param name="language">The language of the pages; null for the usual.</param>
    public static async Task<AppProcess> Start(
        string? folder = null,
        bool keepFolder = false,
        int port = 0,
        string? lan = null,
        string? language = null
    )
    {
        folder ??= Directory.CreateTempSubdirectory("plumbmark-journey-").FullName;
        string[] serve = ["serve", "--data", Path.Combine(folder, "plumbmark.db"), "--port", port.ToString(CultureInfo.InvariantCulture)];
        var process = Begin(folder, language, lan is null ? serve : [.. serve, "--lan", lan]);
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal)) is { } address)
            {
                return new AppProcess(process, folder, keepFolder, address.TrimEnd('/'));
            }
        }

        throw new InvalidOperationException($"The app ended without an address: {await process.StandardError.ReadToEndAsync()}");
    }

    /// <summary>The next line on its standard output that has a text in it.</summary>
    public Task<string> Result(string text) => LineWith(_process.StandardOutput, text);

    /// <summary>The next line on its standard error that has a text in it.</summary>
    public Task<string> Remark(string text) => LineWith(_process.StandardError, text);

    /// <summary>The number of the process, to look at it from outside.</summary>
    public int ProcessId => _process.Id;

    /// <summary>All that it has still to say, once it has ended.</summary>
    public async Task<string> Everything() =>
        await _process.StandardOutput.ReadToEndAsync() + await _process.StandardError.ReadToEndAsync();

    /// <summary>Runs a verb to its end.</summary>
    public static async Task<(int Code, string Results, string Remarks)> Run(string folder, params string[] arguments)
    {
        using var process = Begin(folder, null, arguments);
        var results = process.StandardOutput.ReadToEndAsync();
        var remarks = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await results, await remarks);
    }

    /// <summary>Ends the app without any warning, as a power cut would.</summary>
    public void Kill()
    {
        _process.Kill(entireProcessTree: true);
        _process.WaitForExit();
    }

    /// <summary>A window that is closed when the app ends: the browser is shared by all journeys, and windows left open would fill it.</summary>
    internal void IsVisitedBy(IBrowserContext visitor) => _visitors.Add(visitor);

    public async ValueTask DisposeAsync()
    {
        foreach (var visitor in _visitors)
        {
            await visitor.CloseAsync();
        }

        if (!_process.HasExited)
        {
            Kill();
        }

        _process.Dispose();
        if (!_keepFolder)
        {
            await Task.Run(() => Directory.Delete(Folder, recursive: true));
        }
    }

    private static async Task<string> LineWith(StreamReader lines, string text)
    {
        while (await lines.ReadLineAsync() is { } line)
        {
            if (line.Contains(text, StringComparison.Ordinal))
            {
                return line;
            }
        }

        throw new InvalidOperationException($"The app ended without saying \"{text}\".");
    }

    private static Process Begin(string folder, string? language, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.Environment["XDG_DATA_HOME"] = folder;
        start.Environment["APPDATA"] = folder;
        start.Environment["PLUMBMARK_LANGUAGE"] = language; // null takes it away
        foreach (var argument in (string[])["exec", Binary, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        return Process.Start(start)!;
    }
}
