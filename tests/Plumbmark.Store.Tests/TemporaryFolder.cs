namespace Plumbmark.Store.Tests;

/// <summary>A folder of its own for a test, gone afterwards.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("plumbmark-store-").FullName;

    /// <summary>The journal file in it.</summary>
    public string Journal => System.IO.Path.Combine(Path, "plumbmark.db");

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
