using System.Collections.Concurrent;

namespace Plumbmark.House.Tests.Docs;

/// <summary>All documents with commands, run side by side as far as the machine goes; each is started once.</summary>
public sealed class Sittings : IDisposable
{
    private readonly ConcurrentDictionary<string, Task<string>> _texts = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _seats = new(Environment.ProcessorCount);

    public Sittings()
    {
        if (!OperatingSystem.IsWindows())
        {
            foreach (var document in Markdown.All.Where(d => d.Blocks.Any(b => b.Words == "console")))
            {
                _texts[document.Path] = Seated(document);
            }
        }
    }

    public void Dispose() => _seats.Dispose();

    /// <summary>The document with what its commands print today.</summary>
    public Task<string> Of(string path) => _texts[path];

    private async Task<string> Seated(Markdown document)
    {
        await _seats.WaitAsync();
        try
        {
            using var sitting = new Sitting();
            return await sitting.Through(document);
        }
        finally
        {
            _seats.Release();
        }
    }
}
