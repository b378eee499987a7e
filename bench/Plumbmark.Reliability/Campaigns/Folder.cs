namespace Plumbmark.Reliability.Campaigns;

/// <summary>A folder of its own, gone afterwards; in memory where the system offers that, to spare the disk.</summary>
internal sealed class Folder : IDisposable
{
    private const string Memory = "/dev/shm";

    public string Path { get; } =
        Directory.Exists(Memory)
            ? Directory.CreateDirectory(System.IO.Path.Combine(Memory, $"plumbmark-{Guid.NewGuid():N}")).FullName
            : Directory.CreateTempSubdirectory("plumbmark-").FullName;

    /// <summary>The journal file in it.</summary>
    public string Journal => System.IO.Path.Combine(Path, "plumbmark.db");

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
