using System.Buffers.Binary;

namespace Plumbmark.Store;

/// <summary>
/// Looks at a file without SQLite, which would put files of its own beside it: a foreign or newer file is left exactly as it is. Places
/// after "Database File Format", sqlite.org/fileformat2.html, sections 1.3 (header), 3 (rollback journal) and 4 (write-ahead log).
/// </summary>
internal static class JournalHeader
{
    private const int Length = 100;
    private const int SchemaCookie = 40;
    private const int UserVersion = 60;
    private const int ApplicationId = 68;
    private const int LogHeader = 32;
    private const int FrameHeader = 24;

    private static ReadOnlySpan<byte> Begins => "SQLite format 3\0"u8;

    private static ReadOnlySpan<byte> JournalBegins => [0xD9, 0xD5, 0x05, 0xF9, 0x20, 0xA1, 0x63, 0xD7];

    /// <summary>Refuses a file that is no journal of this program or of a newer version of it. A file that is not there or is empty becomes one.</summary>
    /// <exception cref="StoreUnusableException">It is not ours, or newer.</exception>
    public static void RefuseWhatIsNotOurs(string path, int newest)
    {
        var header = Read(path, Length);
        if (header.Length == 0)
        {
            return;
        }

        if (!header.AsSpan().StartsWith(Begins[..Math.Min(Begins.Length, header.Length)]))
        {
            throw new StoreUnusableException(
                $"The file \"{path}\" is not a Plumbmark journal. It has not been touched; name another file.",
                StoreTrouble.NotOurs
            );
        }

        if (header.Length < Length)
        {
            // The power went, or the disk was full, while the file was being made: its rollback journal stands beside it.
            if (Read($"{path}-journal", JournalBegins.Length).AsSpan().SequenceEqual(JournalBegins))
            {
                return;
            }

            throw new StoreUnusableException(
                $"The file \"{path}\" is not a Plumbmark journal. It has not been touched; name another file.",
                StoreTrouble.NotOurs
            );
        }

        // A journal whose beginning still stands in its write-ahead log has neither id nor schema in the file itself.
        var id = Number(header, ApplicationId);
        var isBlank = id == 0 && Number(header, SchemaCookie) == 0;
        if (id != Pragmas.ApplicationId && !isBlank && !IsOursInLog(path))
        {
            throw new StoreUnusableException(
                $"The file \"{path}\" is a database of another program. It has not been touched; name another file.",
                StoreTrouble.NotOurs
            );
        }

        Migrations.RefuseNewer(path, Number(header, UserVersion), newest);
    }

    /// <summary>Whether the write-ahead log holds a first page of ours: the one in the file was torn when it was last carried over.</summary>
    private static bool IsOursInLog(string path)
    {
        var log = Read($"{path}-wal", int.MaxValue);
        if (log.Length < LogHeader)
        {
            return false;
        }

        var pageSize = Number(log, 8);
        if (pageSize is < 512 or > 65536)
        {
            return false;
        }

        for (var at = LogHeader; at + FrameHeader + pageSize <= log.Length; at += FrameHeader + pageSize)
        {
            if (Number(log, at) == 1 && Number(log, at + FrameHeader + ApplicationId) == Pragmas.ApplicationId)
            {
                return true;
            }
        }

        return false;
    }

    private static int Number(byte[] bytes, int at) => BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(at));

    private static byte[] Read(string path, int most)
    {
        if (!File.Exists(path))
        {
            return [];
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[Math.Min(most, file.Length)];
        return bytes[..file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
    }
}
