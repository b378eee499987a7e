using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>Brings a file to the newest schema, one numbered step after the other, each in a transaction of its own.</summary>
internal static class Migrations
{
    /// <summary>The steps that are built in, in order: step n makes version n.</summary>
    public static IReadOnlyList<string> BuiltIn { get; } = [.. Names().Select(Text)];

    /// <summary>The version of the schema in the file; 0 for a new file.</summary>
    public static long VersionOf(SqliteConnection connection) => (long)connection.One("PRAGMA user_version")!;

    /// <summary>Runs the steps that the file has not seen, after a copy of the file as it was.</summary>
    /// <exception cref="StoreUnusableException">The file is newer than this program.</exception>
    public static void Run(SqliteConnection connection, IReadOnlyList<string> steps)
    {
        var version = VersionOf(connection);
        RefuseNewer(connection.DataSource, version, steps.Count);
        if (version > 0 && version < steps.Count)
        {
            Copy(connection, version);
        }

        // Another instance may be doing the same: each step looks again under the write lock.
        while (VersionOf(connection) < steps.Count)
        {
            using var transaction = connection.BeginTransaction(deferred: false);
            var done = (int)VersionOf(connection);
            if (done < steps.Count)
            {
                connection.Run(steps[done]);
                connection.Run($"PRAGMA application_id = {Pragmas.ApplicationId}");
                connection.Run($"PRAGMA user_version = {done + 1}");
            }

            transaction.Commit();
        }
    }

    /// <summary>Refuses a file that a later version of the program has written.</summary>
    /// <exception cref="StoreUnusableException">The file is newer than this program.</exception>
    public static void RefuseNewer(string path, long version, int newest)
    {
        if (version > newest)
        {
            throw new StoreUnusableException(
                $"The journal \"{path}\" was written by a newer Plumbmark (schema {version}; this one knows up to {newest}). "
                    + "It has not been touched. Use the newer Plumbmark, or another file.",
                StoreTrouble.Newer
            );
        }
    }

    private static void Copy(SqliteConnection connection, long version)
    {
        var copy = $"{connection.DataSource}.before-schema-{version + 1}";
        if (!File.Exists(copy))
        {
            CheckedCopy.Write(connection, copy);
        }
    }

    private static IEnumerable<string> Names() =>
        typeof(Migrations)
            .Assembly.GetManifestResourceNames()
            .Where(n => n.EndsWith(".sql", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);

    private static string Text(string name)
    {
        using var reader = new StreamReader(typeof(Migrations).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
