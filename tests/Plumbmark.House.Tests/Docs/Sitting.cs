using System.Diagnostics;
using System.Text;

namespace Plumbmark.House.Tests.Docs;

/// <summary>One reader who types every command of one document, in one empty folder.</summary>
internal sealed class Sitting : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark-docs-").FullName;

    public Sitting()
    {
        // A word "plumbmark" on the path, as a reader has it beside the checkout.
        var bin = Directory.CreateDirectory(Path.Combine(_folder, ".bin")).FullName;
        var program = Path.Combine(bin, "plumbmark");
        File.WriteAllText(program, $"#!/bin/sh\nexec dotnet exec '{Path.Combine(AppContext.BaseDirectory, "plumbmark.dll")}' \"$@\"\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>The document with what its commands print.</summary>
    public async Task<string> Through(Markdown document)
    {
        var found = new List<string>();
        foreach (var (words, body) in document.Blocks)
        {
            if (words.Split(' ') is [_, var file])
            {
                await File.WriteAllTextAsync(Path.Combine(_folder, file), body);
            }

            found.Add(words == "console" ? await TypeAgain(body) : body);
        }

        return document.With(found);
    }

    private async Task<string> TypeAgain(string body)
    {
        var text = new StringBuilder();
        foreach (var line in body.Split('\n').Where(l => l.StartsWith("$ ", StringComparison.Ordinal)))
        {
            text.Append(line).Append('\n').Append(await Run(line[2..]));
        }

        return text.ToString();
    }

    private async Task<string> Run(string command)
    {
        var start = new ProcessStartInfo("sh")
        {
            WorkingDirectory = _folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            StandardOutputEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add($"exec 2>&1; {command}");
        start.Environment["PATH"] = $"{Path.Combine(_folder, ".bin")}:{start.Environment["PATH"]}";
        start.Environment["XDG_DATA_HOME"] = _folder;
        start.Environment["LC_ALL"] = "C.UTF-8";
        using var process = Process.Start(start)!;
        var text = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd()));
    }
}
