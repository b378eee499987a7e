namespace Plumbmark.Reliability.Disk;

/// <summary>What would be found of each file after power went: what was synced for sure, and of the rest any part.</summary>
/// <remarks>
/// A write is torn at sectors of 512 bytes at any place; what came later may be there and what came earlier not. SQLite assumes no more than that, and that a torn
/// write harms nothing outside what was being written ("Atomic Commit In SQLite", sqlite.org/atomiccommit.html, section 2).
/// </remarks>
internal sealed class DiskImage
{
    private const int Sector = 512;
    private readonly Dictionary<string, File> _files = new(StringComparer.Ordinal);

    private sealed record Write(long At, byte[] Bytes); // no bytes: the file ends at this place

    private sealed class File
    {
        public byte[] Synced { get; set; } = [];
        public List<Write> Since { get; } = [];
        public bool IsNamedForSure { get; set; }
        public bool IsDeleted { get; set; }
    }

    /// <summary>A file was opened; one that is not known yet is read as it stands, or is new.</summary>
    public void Opened(string path)
    {
        if (_files.TryGetValue(path, out var file) && !file.IsDeleted)
        {
            return;
        }

        var exists = System.IO.File.Exists(path);
        _files[path] = new File { Synced = exists ? ReadShared(path) : [], IsNamedForSure = exists && new FileInfo(path).Length > 0 };
    }

    public void Written(string path, long at, ReadOnlySpan<byte> bytes) => _files[path].Since.Add(new Write(at, bytes.ToArray()));

    public void Truncated(string path, long size) => _files[path].Since.Add(new Write(size, []));

    public void SyncedAll(string path)
    {
        var file = _files[path];
        file.Synced = Apply(file.Synced, file.Since);
        file.Since.Clear();
    }

    /// <summary>The folder was synced: the names of all files in it are there for sure, and those deleted are gone for sure.</summary>
    public void SyncedFolder(string folder)
    {
        foreach (var (path, file) in _files.Where(f => Path.GetDirectoryName(f.Key) == folder).ToList())
        {
            file.IsNamedForSure = true;
            if (file.IsDeleted)
            {
                _files.Remove(path);
            }
        }
    }

    /// <summary>A file was deleted; until the folder is synced, it may come back.</summary>
    public void Deleted(string path)
    {
        if (_files.TryGetValue(path, out var file))
        {
            file.IsDeleted = true;
        }
    }

    /// <summary>Writes into another folder what is found when power is back.</summary>
    public void Save(string folder, bool keepsEverything, Random random)
    {
        foreach (var (path, file) in _files)
        {
            var isDoubtful = (file.IsDeleted || !file.IsNamedForSure) && !keepsEverything;
            if (isDoubtful ? random.Next(2) == 0 : file.IsDeleted)
            {
                continue;
            }

            var since = keepsEverything ? file.Since : file.Since.SelectMany(w => Torn(w, random));
            System.IO.File.WriteAllBytes(Path.Combine(folder, Path.GetFileName(path)), Apply(file.Synced, since));
        }
    }

    private static IEnumerable<Write> Torn(Write write, Random random)
    {
        switch (random.Next(4))
        {
            case 0: // lost
                break;
            case 1: // some of its sectors
                if (write.Bytes.Length == 0)
                {
                    yield return write;
                }

                for (var from = 0; from < write.Bytes.Length; from += Sector)
                {
                    if (random.Next(2) == 0)
                    {
                        yield return new Write(write.At + from, write.Bytes[from..Math.Min(from + Sector, write.Bytes.Length)]);
                    }
                }

                break;
            default:
                yield return write;
                break;
        }
    }

    private static byte[] Apply(byte[] bytes, IEnumerable<Write> writes)
    {
        var stream = new MemoryStream();
        stream.Write(bytes);
        foreach (var write in writes)
        {
            if (write.Bytes.Length == 0)
            {
                stream.SetLength(write.At);
                continue;
            }

            stream.Position = write.At;
            stream.Write(write.Bytes);
        }

        return stream.ToArray();
    }

    private static byte[] ReadShared(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
