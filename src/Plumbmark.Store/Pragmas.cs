using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>How SQLite is told to work: every setting in one place, with its reason.</summary>
internal static class Pragmas
{
    /// <summary>Written into the file's header, so that another program's database is never taken for ours ("Plmb").</summary>
    public const int ApplicationId = 0x506C6D62;

    private static readonly string[] s_always =
    [
        // Another window or a verb may be writing: wait for it rather than fail. Longer than any transaction of ours takes.
        "busy_timeout = 5000",
        // Off by default in SQLite; an entry without its car would be lost to everyone.
        "foreign_keys = ON",
        // Every commit is on the disk before it is answered: an accepted reading survives a power cut. NORMAL may lose the last commits in WAL.
        "synchronous = FULL",
        // A Mac's fsync stops at the drive's own cache; this goes through it. Without effect elsewhere.
        "fullfsync = ON",
        "checkpoint_fullfsync = ON",
        // A file from elsewhere cannot make its views or triggers call functions with side effects.
        "trusted_schema = OFF",
        // Find a damaged page when it is read instead of giving back what it holds.
        "cell_size_check = ON",
        // After a long evening the log shrinks again at the next checkpoint.
        "journal_size_limit = 4194304",
    ];

    /// <summary>Settings of a connection; they hold until it is closed.</summary>
    public static void Apply(SqliteConnection connection)
    {
        foreach (var pragma in s_always)
        {
            connection.Run($"PRAGMA {pragma}");
        }
    }

    /// <summary>Readers do not wait for a writer, and a torn write never reaches the file itself. Written in the file: once is enough.</summary>
    public static void UseWriteAheadLog(SqliteConnection connection) => connection.Run("PRAGMA journal_mode = WAL");
}
