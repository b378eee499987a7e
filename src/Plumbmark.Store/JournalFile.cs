using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>Opens the one file that holds everything, and refuses in words what is not a journal of this program.</summary>
internal static class JournalFile
{
    private const int SqliteNotADatabase = 26;
    private const int SqliteDamaged = 11;

    /// <summary>An open connection to a file of the newest schema; the file and its folder are made when missing.</summary>
    /// <exception cref="StoreUnusableException">The file cannot be used as it is.</exception>
    public static SqliteConnection Open(string path, IReadOnlyList<string> steps)
    {
        var full = Path.GetFullPath(path);
        SqliteConnection? connection = null;
        try
        {
            if (Path.GetDirectoryName(full) is { Length: > 0 } folder)
            {
                Directory.CreateDirectory(folder);
            }

            JournalHeader.RefuseWhatIsNotOurs(full, steps.Count);
            connection = Connect(full);
            Pragmas.Apply(connection);
            Pragmas.UseWriteAheadLog(connection);
            RefuseDamaged(connection);
            Migrations.Run(connection, steps);
            return connection;
        }
        catch (SqliteException e)
        {
            connection?.Dispose();
            throw Told(full, e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            connection?.Dispose();
            throw new StoreUnusableException($"The journal \"{full}\" cannot be opened: {e.Message}", e);
        }
        catch
        {
            connection?.Dispose();
            throw;
        }
    }

    /// <summary>What SQLite said, in a sentence.</summary>
    public static StoreUnusableException Told(string path, SqliteException e) =>
        new(
            e.SqliteErrorCode switch
            {
                5 or 6 =>
                    $"The journal \"{path}\" is busy: another program has been writing to it for too long. Nothing was changed; try again.",
                8 => $"The journal \"{path}\" cannot be written: the file or its folder is read-only.",
                10 => $"The journal \"{path}\" cannot be read or written: {e.Message}",
                SqliteDamaged => $"The journal \"{path}\" is damaged. It has not been changed; keep a copy of it before anything else.",
                13 => $"The disk is full: nothing more can be written to the journal \"{path}\". What was accepted before is kept.",
                14 => $"The journal \"{path}\" cannot be opened: there is no right to read and write it there, or it is a folder.",
                SqliteNotADatabase => $"The file \"{path}\" is not a Plumbmark journal. It has not been touched.",
                _ => $"The journal \"{path}\" cannot be used: {e.Message}",
            },
            e
        );

    private static SqliteConnection Connect(string path)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = false, // one connection lives as long as the shed; a pool would keep the file open after it
        };
        var connection = new SqliteConnection(text.ToString());
        connection.Open();
        return connection;
    }

    private static void RefuseDamaged(SqliteConnection connection)
    {
        if (connection.One("PRAGMA quick_check(1)") is not "ok")
        {
            throw new StoreUnusableException(
                $"The journal \"{connection.DataSource}\" is damaged. It has not been changed; keep a copy of it before anything else."
            );
        }
    }
}
