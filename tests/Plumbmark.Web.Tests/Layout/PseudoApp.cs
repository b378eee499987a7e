using System.Diagnostics;
using System.Text.Json;

namespace Plumbmark.Web.Tests.Layout;

/// <summary>The program itself in the pseudo language: English with marks round every sentence of the file. A process of its own, because a language is chosen when one starts.</summary>
public sealed class PseudoApp : IAsyncDisposable
{
    private readonly Process _process;
    private readonly string _folder;

    private PseudoApp(Process process, string folder, string address)
    {
        _process = process;
        _folder = folder;
        Client = new HttpClient(new SocketsHttpHandler { UseCookies = true }) { BaseAddress = new Uri(address) };
    }

    /// <summary>A visitor without JavaScript.</summary>
    public HttpClient Client { get; }

    /// <summary>Starts it on a journal of its own, with the demo car as number 1.</summary>
    public static async Task<PseudoApp> Start()
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-pseudo-").FullName;
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
        };
        start.Environment["XDG_DATA_HOME"] = folder;
        start.Environment["APPDATA"] = folder;
        start.Environment["PLUMBMARK_LANGUAGE"] = "pseudo";
        string[] arguments = ["exec", Path.Combine(AppContext.BaseDirectory, "plumbmark.dll"), "serve", "--data", "p.db", "--port", "0"];
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start)!;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Split(' ').FirstOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal)) is { } address)
            {
                return new PseudoApp(process, folder, address);
            }
        }

        throw new InvalidOperationException("The program ended without an address.");
    }

    /// <summary>A page.</summary>
    public async Task<VisitedPage> Get(string address) => await VisitedPage.Of(await Client.GetAsync(address));

    /// <summary>What is shown when a form is sent.</summary>
    public async Task<VisitedPage> Send(string action, IEnumerable<KeyValuePair<string, string>> fields) =>
        await VisitedPage.Of(await Client.PostAsync(action, new FormUrlEncodedContent(fields)));

    /// <summary>Every text in a car's file: what a person wrote, which is nobody's to translate.</summary>
    public async Task<IReadOnlyList<string>> Typed(long car)
    {
        using var file = JsonDocument.Parse(await Client.GetByteArrayAsync(new Uri($"/cars/{car}/file", UriKind.Relative)));
        return [.. TextsIn(file.RootElement).Where(t => t.Length > 2).Distinct().OrderByDescending(t => t.Length)];
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private static IEnumerable<string> TextsIn(JsonElement element) =>
        element.ValueKind switch
        {
            JsonValueKind.String => [element.GetString()!],
            JsonValueKind.Array => element.EnumerateArray().SelectMany(TextsIn),
            JsonValueKind.Object => element.EnumerateObject().SelectMany(p => TextsIn(p.Value)),
            _ => [],
        };
}
