using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>
/// What a file of ours is made of. A database from elsewhere can carry code: a view of a table's name that never comes to an end, a trigger, a column that
/// is worked out. A backup is therefore looked at before anything in it is asked for.
/// </summary>
internal static class KnownSchema
{
    // Without text are indexes that SQLite makes for itself; its own two tables are notes for its planner.
    private const string Parts = """
        SELECT type || ' ' || name || ': ' || sql FROM sqlite_schema
        WHERE sql IS NOT NULL AND NOT (type = 'table' AND name IN ('sqlite_stat1', 'sqlite_stat4'))
        """;

    /// <summary>Refuses a file that is not exactly of the parts that the steps up to its version make.</summary>
    /// <exception cref="StoreUnusableException">It is not.</exception>
    public static void RefuseOther(string path, IReadOnlyList<string> steps)
    {
        JournalHeader.RefuseWhatIsNotOurs(path, steps.Count);
        try
        {
            using var file = JournalFile.Connect(path);
            Pragmas.Apply(file);
            var version = (int)Migrations.VersionOf(file);
            Migrations.RefuseNewer(path, version, steps.Count);
            if (!PartsOf(file).SetEquals(Made(steps.Take(version))))
            {
                throw new StoreUnusableException(
                    $"The file \"{path}\" holds parts that Plumbmark does not make. It may come from another hand; nothing of it was taken.",
                    StoreTrouble.NotOurs
                );
            }
        }
        catch (SqliteException e)
        {
            throw JournalFile.Told(path, e);
        }
    }

    private static HashSet<string> Made(IEnumerable<string> steps)
    {
        using var memory = new SqliteConnection("Data Source=:memory:");
        memory.Open();
        foreach (var step in steps)
        {
            memory.Run(step);
        }

        return PartsOf(memory);
    }

    private static HashSet<string> PartsOf(SqliteConnection connection) =>
        [
            .. connection
                .All(Parts, r => r.GetString(0))
                .Select(p => string.Join(' ', p.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))),
        ];
}
